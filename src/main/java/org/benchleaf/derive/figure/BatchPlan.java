package org.benchleaf.derive.figure;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Solution;

/**
 * In how many batches a solution is made, so that each is fresh when it is used.
 *
 * @param drawn what is used from each batch, the first to be used first
 */
public record BatchPlan(List<List<Uses.Use>> drawn) {

    public BatchPlan {
        drawn = drawn.stream().map(List::copyOf).toList();
    }

    /** How many batches there are. */
    public int batches() {
        return drawn.size();
    }

    /** Plans the batches of solutions; asked for a solution after all that it goes into. */
    public interface Planner {

        /** Nothing is told of when solutions are drawn. */
        Planner NONE = solution -> Optional.empty();

        /** The batches of a solution; empty where nobody knows when it is drawn, or its tray is filled where it is used. */
        Optional<BatchPlan> of(Solution solution);
    }
}
