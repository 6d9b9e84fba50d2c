package org.benchleaf.derive.classes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.classes.ClassSupplies.Clear;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Into what a class draws off the clear part of what was shaken with a solid. It keeps in bottles that it fills to the top, for air
 * takes lime out of limewater; so they hold less than was made, of which the part with the solid stays behind.
 */
record ClearBottles(CourseClass course, Bench bench) {

    /** So many bottles of a kind, and what is in them when they are full. */
    private record Full(ClassStores.Vessel vessel, int count, Quantity all) {
    }

    /** The fewest bottles that are full with less than is made and hold what is needed; empty where the class names none. */
    Optional<Clear> of(Preparation preparation) {
        String id = preparation.solution();
        Quantity needed = bench.ledger().value("batch", Inputs.none().with("needed", preparation.needed(), ofNeeded(id))
                .with("batches", Quantity.count(preparation.batches()), Origin.Place.CLASS), "batch").orElseThrow();
        return course.stores().vessels().stream().flatMap(vessel -> full(needed, vessel).stream())
                .filter(full -> full.all().highIn(Unit.LITRE) < preparation.batch().lowIn(Unit.LITRE))
                .min(Comparator.comparingInt(Full::count).thenComparingDouble(full -> full.vessel().holds().in(Unit.LITRE)))
                .map(full -> clear(id, needed, full));
    }

    private static Origin ofNeeded(String id) {
        return new Origin.OfFigure(FigureKey.ofSolution(id, "needed"));
    }

    private Optional<Full> full(Quantity needed, ClassStores.Vessel vessel) {
        return bench.ledger().value("containers", Inputs.none().with("volume", needed, Job.CASE_FILE)
                .with("holds", vessel.holds(), Origin.Place.CLASS), "count").flatMap(count -> bench.ledger().value("sum", Inputs.none()
                        .with("amounts", List.of(vessel.holds()), Origin.Place.CLASS)
                        .with("times", List.of(Quantity.number(count.value())), Origin.Place.CLASS), "total")
                        .map(all -> new Full(vessel, (int) count.value(), all)));
    }

    private Clear clear(String id, Quantity needed, Full full) {
        Quantity holds = full.vessel().holds();
        bench.ledger().one(new Job("containers", course.place()).given("volume", needed, ofNeeded(id))
                .given("holds", holds, Origin.Place.CLASS).gives("count", key(id, "clear-vessels"), "vessels of the clear part"));
        Optional<Figure> all = bench.ledger().one(new Job("sum", course.place()).given("amounts", holds, Origin.Place.CLASS)
                .given("times", Quantity.number(full.count()), Origin.Place.CLASS)
                .gives("total", key(id, "clear"), "clear part, drawn off"));
        return new Clear(full.vessel().kind(), holds, full.count(), all.map(Figure::value));
    }

    private FigureKey key(String of, String name) {
        return FigureKey.ofClass(course.id(), of, name);
    }
}
