package org.benchleaf.derive.time;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Earliest and latest times of steps that wait for one another.
 *
 * <p>Method: forward and backward pass of the critical path method. Source: Kelley and Walker (1959),
 * Critical-path planning and scheduling, Proc. Eastern Joint Computer Conference, 160-173.
 */
public final class CriticalPath {

    private final Map<String, Double> start = new LinkedHashMap<>();
    private final Map<String, Double> end = new LinkedHashMap<>();
    private final Map<String, Double> latestEnd = new HashMap<>();
    private final double total;

    /**
     * Works out the times.
     *
     * @param lengths how long each step takes, in the order of the case
     * @param waits how long each step waits after those before it; none where it has no entry
     * @param after for each step those that must be finished first, without a circle
     */
    CriticalPath(Map<String, Double> lengths, Map<String, Double> waits, Map<String, List<String>> after) {
        List<String> order = order(after);
        for (String step : order) {
            double ready = after.get(step).stream().mapToDouble(end::get).max().orElse(0)
                    + waits.getOrDefault(step, 0.0);
            start.put(step, ready);
            end.put(step, ready + lengths.get(step));
        }
        total = end.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        order.forEach(step -> latestEnd.put(step, total));
        for (int i = order.size() - 1; i >= 0; i--) {
            double begin = latestEnd.get(order.get(i)) - lengths.get(order.get(i))
                    - waits.getOrDefault(order.get(i), 0.0);
            after.get(order.get(i)).forEach(before -> latestEnd.merge(before, begin, Math::min));
        }
    }

    double start(String step) {
        return start.get(step);
    }

    double end(String step) {
        return end.get(step);
    }

    /** How much later the step could begin without moving the end. */
    double slack(String step) {
        return Math.max(0, latestEnd.get(step) - end.get(step));
    }

    double total() {
        return total;
    }

    /**
     * The names in an order in which each comes after those it waits for; of several that could be next, the one
     * written first. Names on a circle are left out.
     */
    public static List<String> order(Map<String, List<String>> after) {
        List<String> order = new ArrayList<>();
        Set<String> left = new LinkedHashSet<>(after.keySet());
        boolean moved = true;
        while (moved) {
            moved = false;
            for (String name : List.copyOf(left)) {
                if (order.containsAll(after.get(name))) {
                    order.add(name);
                    left.remove(name);
                    moved = true;
                    break;
                }
            }
        }
        return order;
    }

    /** The names that wait for themselves, directly or through others. */
    public static Set<String> circle(Map<String, List<String>> after) {
        Set<String> circle = new LinkedHashSet<>();
        for (String name : after.keySet()) {
            if (reaches(name, name, after, new LinkedHashSet<>())) {
                circle.add(name);
            }
        }
        return circle;
    }

    private static boolean reaches(String from, String wanted, Map<String, List<String>> after, Set<String> seen) {
        for (String next : after.getOrDefault(from, List.of())) {
            if (next.equals(wanted) || seen.add(next) && reaches(next, wanted, after, seen)) {
                return true;
            }
        }
        return false;
    }
}
