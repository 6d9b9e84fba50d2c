package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.PassageMaker;
import org.benchleaf.compose.part.Resolution;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.StatedWords;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Result;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.KeyNumbers;
import org.benchleaf.words.Words;

/** Picks from the results what the public page tells: one change a measure, and what was not measured. */
final class ResultNumbers {

    private static final List<String> WHOLE = List.of("change", "along-change", "across-change", "carbonate", "ceiling-carbonate");
    private static final Set<String> SIDES = Set.of(WorkedResult.HEIGHT_WITHIN_ONE_STEP, WorkedResult.WIDTH_WITHIN_ONE_STEP);
    private static final List<String> COUNTED = List.of("total-before", "total-after");
    private static final List<String> PER_SPOT = List.of("lightness", "de2000", "de94", "de76");

    private final Sheet sheet;
    private final CaseDesk desk;

    ResultNumbers(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The numbers, each with what must be said beside it. */
    List<KeyNumbers.Item> items() {
        List<KeyNumbers.Item> items = new ArrayList<>();
        for (WorkedResult result : desk.worked().results()) {
            for (Figure figure : headlines(result)) {
                items.add(new KeyNumbers.Item(new WorkingMaker(sheet).onceOrLink(figure), measured(sheet, result.source()),
                        cautions(result, figure)));
            }
        }
        return items;
    }

    private static List<Figure> headlines(WorkedResult result) {
        List<Figure> chosen = new ArrayList<>();
        whole(result).forEach(name -> Optional.ofNullable(result.figures().get(name)).ifPresent(chosen::add));
        PER_SPOT.forEach(name -> largest(result, name).ifPresent(chosen::add));
        return chosen;
    }

    /** The names of the figures that sum a result up; things counted in the same places are told as counts. */
    static List<String> whole(WorkedResult result) {
        return result.figures().containsKey("left") ? COUNTED : WHOLE;
    }

    /** Of a measure taken at several spots the public page tells the spot where most happened. */
    private static Optional<Figure> largest(WorkedResult result, String name) {
        return result.figures().values().stream().filter(figure -> figure.key().name().equals(name) && !Resolution.isMeanOfSpots(figure))
                .max(Comparator.comparingDouble(figure -> Math.abs(figure.value().value())));
    }

    /** What was measured, and how. */
    static String measured(Sheet sheet, Result result) {
        String measure = sheet.words().measure(result.measure());
        return result instanceof Result.Readings readings ? measured(sheet, measure, readings.method())
                : result instanceof Result.Stated stated ? measured(sheet, measure, stated.method()) : measure;
    }

    private static String measured(Sheet sheet, String measure, String method) {
        return MissingValue.read(method).isPresent() ? sheet.words().say("result.method-missing", "measure", measure,
                "told", sheet.words().told(method)) : sheet.words().list(List.of(measure, method));
    }

    /** A result in words, with its place on the scale where there is one. */
    static String rank(Words words, Result.Words result, Optional<String> told) {
        if (told.isEmpty()) {
            return words.notRecorded();
        }
        int rank = result.ranks().indexOf(told.get()) + 1;
        return MissingValue.read(told.get()).map(words::missing).orElse(rank == 0 ? told.get()
                : words.say("result.rank", "word", told.get(), "rank", rank, "of", result.ranks().size()));
    }

    private List<String> cautions(WorkedResult result, Figure figure) {
        return result.cautions().stream().filter(caution -> concerns(caution, figure))
                .map(caution -> sheet.words().say("caution." + caution)).toList();
    }

    /** Whether a caution belongs beside a figure: one about a side of the sheet does only beside the change of that side. */
    private boolean concerns(String caution, Figure figure) {
        boolean turned = desk.treatment().object().support().grain().filter("along the width"::equals).isPresent();
        String side = figure.key().name().equals("across-change") == turned ? WorkedResult.HEIGHT_WITHIN_ONE_STEP
                : WorkedResult.WIDTH_WITHIN_ONE_STEP;
        return !SIDES.contains(caution) || caution.equals(side);
    }

    /** Results told in words, and those not measured with the reason; empty if there are none. */
    Optional<Facts> inWords(List<Result> results) {
        List<Fact> facts = new ArrayList<>();
        results.forEach(result -> inWords(result).ifPresent(facts::add));
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Facts(facts));
    }

    /** What is told of one result that is told in words; empty of one told in numbers. */
    Optional<Fact> inWords(Result result) {
        return result.ask(new Told()).map(fact -> cited(result, fact));
    }

    /** What is told of a result, with the place in the publication from which it was taken. */
    private Fact cited(Result result, Fact fact) {
        return desk.treatment().sources().of(result).map(passage -> new Fact(fact.name(), fact.value().then(" (")
                .then(new PassageMaker(sheet).place(passage)).then(")"))).orElse(fact);
    }

    private final class Told implements Result.Kinds<Optional<Fact>> {
        @Override
        public Optional<Fact> readings(Result.Readings result) {
            return Optional.empty();
        }

        @Override
        public Optional<Fact> colour(Result.Colour result) {
            return Optional.empty();
        }

        @Override
        public Optional<Fact> size(Result.Size result) {
            return Optional.empty();
        }

        @Override
        public Optional<Fact> reserve(Result.Reserve result) {
            return Optional.empty();
        }

        @Override
        public Optional<Fact> stated(Result.Stated result) {
            StatedWords stated = new StatedWords(sheet.words(), sheet.numbers(), result.unit());
            return Optional.of(fact(measured(sheet, result), result.before().map(stated::of), result.after().map(stated::of)));
        }

        @Override
        public Optional<Fact> words(Result.Words result) {
            Words words = sheet.words();
            return Optional.of(fact("result.words-from-to", words.measure(result.measure()),
                    result.before().map(told -> rank(words, result, Optional.of(told))),
                    result.after().map(told -> rank(words, result, Optional.of(told)))));
        }

        private Fact fact(String measure, Optional<String> before, Optional<String> after) {
            return fact("result.from-to", measure, before, after);
        }

        private Fact fact(String both, String measure, Optional<String> before, Optional<String> after) {
            String told = before.isPresent() && after.isPresent()
                    ? sheet.words().say(both, "before", before.get(), "after", after.get())
                    : after.or(() -> before).orElse(sheet.words().notRecorded());
            return new Fact(measure, sheet.linked(told));
        }

        @Override
        public Optional<Fact> notMeasured(Result.NotMeasured result) {
            return Optional.of(Fact.of(sheet.words().measure(result.measure()),
                    sheet.words().say("result.not-measured", "because", result.because())));
        }
    }
}
