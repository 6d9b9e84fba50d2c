package org.benchleaf.derive.classes;

import java.util.List;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/** Water with which the trays of a class are rinsed, put with what its baths take. */
record RinsingWater(CourseClass course, Bench bench) {

    /** The name of the figure of what one tray takes. */
    static final String NAME = "to-rinse-a-tray";

    /** Each filling is followed by a rinse with what the bath is made from, where that is bought. */
    void use(List<Step> steps) {
        steps.forEach(step -> step.part(Part.Bath.class).ifPresent(bath -> {
            String liquid = bench.source().solution(bath.of()).map(Solution::recipe).filter(Recipe.Adjust.class::isInstance)
                    .map(recipe -> ((Recipe.Adjust) recipe).liquid()).orElse(bath.of());
            if (bench.material(liquid).isPresent()) {
                Quantity each = bench.constant("rinsing-a-tray").value();
                Figure figure = bench.ledger().put(FigureKey.ofClass(course.id(), liquid, NAME), "water to rinse one tray", each,
                        "as-given", List.of(Ledger.given("amount", "usual amount", each, Job.USUAL)));
                bench.uses().add(new Uses.Use(liquid, step.id(), true, figure,
                        bench.scale().fillings(bath.baths(), bench.scale().trays(bath.sheets())), 1));
            }
        }));
    }
}
