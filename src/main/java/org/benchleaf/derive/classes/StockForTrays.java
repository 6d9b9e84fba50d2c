package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * How much stock brings a bath to its pH that stations make in their trays, by what the case added to each of its own.
 *
 * @param bath id
 * @param stock id
 * @param each what one filling takes
 * @param ofEachTray one filling at each station
 * @param ofAll all fillings of the class
 */
public record StockForTrays(String bath, String stock, Quantity each, Figure ofEachTray, Figure ofAll) {

    static List<StockForTrays> of(CourseClass course, Bench bench, List<Preparation> preparations) {
        List<StockForTrays> all = new ArrayList<>();
        preparations.forEach(made -> bench.source().solution(made.solution()).map(Solution::recipe)
                .filter(Recipe.Adjust.class::isInstance).map(Recipe.Adjust.class::cast)
                .ifPresent(adjust -> added(bench, made.solution()).ifPresent(each ->
                        times(course, bench, adjust.with(), each, "in-each-tray", course.stations()).ifPresent(once ->
                                times(course, bench, adjust.with(), each, "in-all-fillings", made.batches()).ifPresent(often ->
                                        all.add(new StockForTrays(made.solution(), adjust.with(), each, once, often)))))));
        return all;
    }

    private static Optional<Quantity> added(Bench bench, String bath) {
        List<Quantity> added = bench.source().steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .filter(part -> part.of().equals(bath)).flatMap(part -> part.readings().stream())
                .flatMap(reading -> reading.added().stream()).toList();
        return added.isEmpty() ? Optional.empty() : Optional.of(Quantity.range(
                added.stream().mapToDouble(one -> one.lowIn(Unit.MILLILITRE)).min().orElseThrow(),
                added.stream().mapToDouble(one -> one.highIn(Unit.MILLILITRE)).max().orElseThrow(), Unit.MILLILITRE).exact());
    }

    private static Optional<Figure> times(CourseClass course, Bench bench, String stock, Quantity each, String name, int times) {
        return bench.ledger().one(new Job("sum", course.place()).given("amounts", each, Job.CASE_FILE)
                .given("times", Quantity.number(times), Origin.Place.CLASS)
                .gives("total", FigureKey.ofClass(course.id(), stock, name), "stock for the baths").readable());
    }
}
