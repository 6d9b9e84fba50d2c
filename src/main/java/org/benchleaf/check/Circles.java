package org.benchleaf.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what waits for itself; each circle is told once, at the first of its members that is asked for. */
final class Circles {

    private final Map<String, List<String>> waits;
    private final Set<String> told = new HashSet<>();

    Circles(Map<String, List<String>> waits) {
        this.waits = waits;
    }

    /** The shortest way from an id back to itself; empty if there is none or it was told already. */
    Optional<List<String>> through(String id) {
        if (told.contains(id)) {
            return Optional.empty();
        }
        Map<String, String> cameFrom = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            String here = open.poll();
            for (String next : waits.getOrDefault(here, List.of())) {
                if (next.equals(id)) {
                    return Optional.of(path(id, here, cameFrom));
                }
                if (waits.containsKey(next) && cameFrom.putIfAbsent(next, here) == null) {
                    open.add(next);
                }
            }
        }
        return Optional.empty();
    }

    private List<String> path(String id, String last, Map<String, String> cameFrom) {
        LinkedList<String> path = new LinkedList<>(List.of(id));
        for (String at = last; !at.equals(id); at = cameFrom.get(at)) {
            path.addFirst(at);
        }
        path.addFirst(id);
        told.addAll(path);
        return path;
    }
}
