package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.Origin;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/** What the steps and the recipes of a case use up: the edges of the graph from print size to powder. */
public final class Uses {

    /**
     * One use.
     *
     * @param of id of the solution or material
     * @param by id of the step or solution that uses it
     * @param step whether a step uses it
     * @param figure the amount used at one go
     * @param times how often, for sheets and spare
     * @param fillings in how many fresh fillings the amount is used; 1 but for baths
     */
    public record Use(String of, String by, boolean step, Figure figure, double times, int fillings) {

        /** The same, so often. */
        public Use counted(int often) {
            return new Use(of, by, step, figure, often, fillings);
        }

        /** A share of it, from 0 to 1. */
        public Use part(double share) {
            return new Use(of, by, step, figure, times * share, fillings);
        }
    }

    /** The sum of several uses, each counted as often as it happens; its output is named by who asks. */
    public static Job sum(List<Use> uses, Place place) {
        Job job = new Job("sum", place).each("amounts", uses.stream().map(use -> Ledger.given(use.figure())).toList());
        return uses.stream().allMatch(use -> use.times() == 1) ? job : job.given("times",
                uses.stream().map(use -> Quantity.number(use.times())).toList(), Origin.Place.SHEETS);
    }

    private final List<Use> list = new ArrayList<>();

    public void add(Use use) {
        list.add(use);
    }

    public List<Use> of(String id) {
        return list.stream().filter(use -> use.of().equals(id)).toList();
    }

    /** Ids of all that is used, in the order of first use. */
    List<String> ids() {
        return List.copyOf(new LinkedHashSet<>(list.stream().map(Use::of).toList()));
    }
}
