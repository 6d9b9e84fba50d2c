package org.benchleaf.rule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;

/** The steps in the order in which they are done: as written, but never before a step named under {@code after}. */
final class StepOrder {

    private static final Set<StepKind> DRYING = EnumSet.of(StepKind.DRYING, StepKind.FLATTENING, StepKind.EQUILIBRATION);

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

    /** The steps that come before, and after the last of them in which the sheet dried. */
    List<Step> sinceDrying(Step step) {
        List<Step> before = before(step);
        int from = before.size();
        while (from > 0 && !dries(before.get(from - 1))) {
            from--;
        }
        return before.subList(from, before.size());
    }

    /** Whether the sheet dries in a step. */
    static boolean dries(Step step) {
        return DRYING.contains(step.kind()) || step.part(Part.Blotters.class).isPresent();
    }

    /** The steps that come after and wait for this one; one that names others alone stands beside it. */
    List<Step> following(Step step) {
        return after(step).stream().filter(later -> waits(later, step, new HashSet<>())).toList();
    }

    private boolean waits(Step later, Step step, Set<String> seen) {
        if (!seen.add(later.id())) {
            return false;
        }
        List<Step> named = inOrder.stream().filter(other -> later.after().contains(other.id())).toList();
        return named.isEmpty() || named.contains(step) || named.stream().anyMatch(other -> inOrder.indexOf(other)
                > inOrder.indexOf(step) && waits(other, step, seen));
    }

    List<Step> after(Step step) {
        return inOrder.subList(inOrder.indexOf(step) + 1, inOrder.size());
    }
}
