package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.science.Colour;
import org.benchleaf.science.SeriesSummary;
import org.benchleaf.science.WhitePoint;

/** Binds the names of the calculations about readings taken before and after to their formulas. */
final class ReadingFormulas {

    private ReadingFormulas() {
    }

    static void bindTo(Map<String, Function<Args, Answers>> formulas) {
        formulas.put("summary", ReadingFormulas::summary);
        formulas.put("reach", args -> new Answers().number("range", SeriesSummary.of(args.list("readings")).reach()));
        formulas.put("activity-mean", args -> new Answers().number("ph", SeriesSummary.activityMean(args.list("readings"))));
        formulas.put("place-changes", args -> new Answers().number("range",
                SeriesSummary.changes(args.list("before"), args.list("after"))));
        formulas.put("activity-ratio", args -> new Answers().number("ratio", SeriesSummary.activityRatio(args.one("change"))));
        formulas.put("share-left", ReadingFormulas::left);
        formulas.put("yellowness", ReadingFormulas::yellowness);
    }

    private static Answers summary(Args args) {
        SeriesSummary series = SeriesSummary.of(args.list("readings"));
        return new Answers().number("count", series.count()).number("mean", series.mean())
                .number("sd", series.sd(), Clause.of("a single reading has no scatter"));
    }

    private static Answers left(Args args) {
        SeriesSummary.LeftAndRemoved share = SeriesSummary.left(args.one("before"), args.one("after"));
        return new Answers().number("left", share.left()).number("removed", share.removed());
    }

    private static Answers yellowness(Args args) {
        WhitePoint white = WhitePoint.named(args.word("white")).orElseThrow();
        List<Quantity> lab = args.three("lab");
        return new Answers().number("yellowness", white.yellowness(
                Colour.of("lab", lab.get(0), lab.get(1), lab.get(2)).tristimulus(white.white())));
    }
}
