package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.model.BenchNeed;
import org.benchleaf.model.Library;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;

/** Lists what doing steps and making solutions need, though the case does not name it. */
public final class NeededThings {

    private NeededThings() {
    }

    /**
     * For how many there is each thing.
     *
     * @param stations how many stations there are; each has its own of what is not shared
     * @param sinks how many sinks are in use at once
     * @param meters how many pH meters are in use at once
     * @param places tells at how many stations some steps are done at one time
     */
    public record Users(int stations, int sinks, int meters, ToIntFunction<Collection<String>> places) {

        /** One person at one place. */
        public static final Users ONE = new Users(1, 1, 1, any -> 1);
    }

    /**
     * One row a thing, in the order of the table.
     *
     * @param preparations what is made before the work, for the steps in which it is used
     * @param users for how many there is each
     */
    public static List<LaidOut> of(TreatmentCase treatment, List<Step> steps, List<Preparation> preparations, Library library,
            Users users) {
        Map<String, LaidOut> things = new LinkedHashMap<>();
        for (BenchNeed need : library.reference().needs()) {
            Set<String> using = new LinkedHashSet<>();
            steps.stream().filter(step -> need.isNeeded(BenchNeed.work(step)) && !isNamed(need, step, library)).map(Step::id)
                    .forEach(using::add);
            preparations.stream().filter(one -> treatment.solution(one.solution()).filter(made ->
                    need.isNeeded(BenchNeed.work(made.recipe()))).isPresent()).forEach(one -> using.addAll(usedIn(one, steps)));
            if (!using.isEmpty()) {
                things.merge(need.name(), thing(need, List.copyOf(using), users), NeededThings::both);
            }
        }
        return List.copyOf(things.values());
    }

    /** One of each thing that other work needs: words of it, with the steps for which it is done. */
    static List<LaidOut> besides(Map<String, List<String>> work, Library library) {
        return library.reference().needs().stream().flatMap(need -> work.entrySet().stream()
                .filter(one -> need.forWork().contains(one.getKey())).map(one -> thing(need, one.getValue(), Users.ONE))).toList();
    }

    /** The steps of the work that use a solution; one of which no step tells an amount is made for those that name it. */
    private static List<String> usedIn(Preparation made, List<Step> steps) {
        return steps.stream().filter(step -> made.usedIn().isEmpty() ? UsedThings.of(step).contains(made.solution())
                : made.usedIn().contains(step.id())).map(Step::id).toList();
    }

    /** A tool of the studio that the step names stands on the list already. */
    private static boolean isNamed(BenchNeed need, Step step, Library library) {
        return UsedThings.of(step).stream().map(library.materials()::get).anyMatch(tool -> tool != null && need.isReplacedBy(tool.name()));
    }

    private static LaidOut thing(BenchNeed need, List<String> using, Users users) {
        Optional<Quantity> each = Optional.of(Quantity.count(need.each()));
        return switch (need.per()) {
            case STATION -> new LaidOut(need.name(), Kind.VESSEL, each, Optional.of(Quantity.count((long) need.each() * users.stations())),
                    need.words(), using);
            case PLACE -> inTheRoom(need, Quantity.count((long) need.each() * users.places().applyAsInt(using)), using);
            case SINK -> inTheRoom(need, Quantity.count((long) need.each() * users.sinks()), using);
            case METER -> inTheRoom(need, Quantity.count((long) need.each() * users.meters()), using);
            case ROOM -> inTheRoom(need, Quantity.count(need.each()), using);
        };
    }

    private static LaidOut inTheRoom(BenchNeed need, Quantity all, List<String> using) {
        return new LaidOut(need.name(), Kind.MAKING, Optional.empty(), Optional.of(all), need.words(), using);
    }

    /** The same thing for other work too. */
    private static LaidOut both(LaidOut one, LaidOut other) {
        Set<String> seen = new HashSet<>(one.steps());
        List<String> steps = new ArrayList<>(one.steps());
        other.steps().stream().filter(seen::add).forEach(steps::add);
        return new LaidOut(one.id(), one.kind(), one.station(), one.all(), one.words(), steps);
    }
}
