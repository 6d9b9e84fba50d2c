package org.benchleaf.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.model.Step;

/** The steps in the order in which they are done: as written, but never before a step named under {@code after}. */
final class StepOrder {

    private final List<Step> inOrder = new ArrayList<>();

    StepOrder(List<Step> written) {
        List<Step> left = new ArrayList<>(written);
        Set<String> done = new HashSet<>();
        Set<String> open = new HashSet<>();
        written.forEach(step -> open.add(step.id()));
        while (!left.isEmpty()) {
            Step next = left.stream().filter(step -> ready(step, done, open)).findFirst()
                    // A circle of steps is an error of its own; here the written order stands in for it.
                    .orElse(left.get(0));
            left.remove(next);
            done.add(next.id());
            inOrder.add(next);
        }
    }

    private static boolean ready(Step step, Set<String> done, Set<String> known) {
        return step.after().stream().allMatch(id -> done.contains(id) || !known.contains(id));
    }

    List<Step> all() {
        return inOrder;
    }

    List<Step> before(Step step) {
        return inOrder.subList(0, inOrder.indexOf(step));
    }

    List<Step> after(Step step) {
        return inOrder.subList(inOrder.indexOf(step) + 1, inOrder.size());
    }
}
