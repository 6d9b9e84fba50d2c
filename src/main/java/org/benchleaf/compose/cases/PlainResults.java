package org.benchleaf.compose.cases;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.Resolution;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Result;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells results in sentences for readers outside the trade, no finer than they were read. */
final class PlainResults {

    /** More is one click away (common practice, no source). */
    private static final int MOST = 3;
    /** What was not read in one way is not told in one sentence. */
    private static final Set<String> APART = Set.of("method-not-known", "methods-differ", "surface-and-extract-not-compared");

    private final Sheet sheet;
    private final Words words;
    /** Whether the grain runs along the width, so that what is across it is the height. */
    private final boolean turned;

    PlainResults(Sheet sheet, PrintObject object) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.turned = object.support().grain().filter("along the width"::equals).isPresent();
    }

    /** One sentence for each measure of which numbers are known, in the order of the case, at most three with those told already. */
    List<RichText> sentences(List<WorkedResult> results, int told) {
        return results.stream().flatMap(result -> sentence(result).stream()).limit(Math.max(0, MOST - told)).toList();
    }

    /** The sentence for one result; empty where no numbers of it are known that can be told in one. */
    Optional<RichText> sentence(WorkedResult result) {
        return Optional.of(result).filter(one -> one.cautions().stream().noneMatch(APART::contains))
                .flatMap(one -> one.source().ask(new Sentence(one))).map(sheet::linked);
    }

    private final class Sentence implements Result.Kinds<Optional<String>> {
        private final WorkedResult worked;

        Sentence(WorkedResult worked) {
            this.worked = worked;
        }

        @Override
        public Optional<String> readings(Result.Readings result) {
            if (worked.figures().containsKey("left")) {
                return Optional.of(words.count("plain.counted", result.before().size(), "measure", measure(result),
                        "before", amount("total-before"), "after", amount("total-after")));
            }
            Optional<String> before = side(result, "mean-before", result.before());
            Optional<String> after = side(result, "mean-after", result.after());
            if (before.isEmpty() && after.isEmpty()) {
                return Optional.empty();
            }
            String key = before.isEmpty() ? "after-only" : after.isEmpty() ? "before-only" : "readings";
            return Optional.of(words.say("plain." + key, "subject", subject(result), "before", before.orElse(""),
                    "after", after.orElse(""), "read", read(result)) + doubt()
                    + (before.isPresent() && after.isPresent() ? scale(result) : ""));
        }

        /** The mean of one side with the word for it, if one holds for all its readings. */
        private Optional<String> side(Result.Readings result, String figure, List<Double> readings) {
            return Optional.ofNullable(worked.figures().get(figure)).map(mean -> {
                String number = (isPh(result) ? "pH " : "") + asRead(mean);
                return sheet.library().reference().publicCare().wordFor(result.measure().word(), readings)
                        .map(word -> words.say("plain.worded", "word", words.say("plain-word." + word), "value", number))
                        .orElse(number);
            });
        }

        private String asRead(Figure mean) {
            return Resolution.stepAsRead(mean).map(step -> sheet.numbers().shownBy(mean.value(), step).text())
                    .orElseGet(() -> sheet.amount(mean).text());
        }

        private String subject(Result.Readings result) {
            return isPh(result) && worked.cautions().contains("surface-only")
                    ? words.say("plain.subject-surface") : isPh(result)
                    ? words.say("plain.subject-sheet") : words.say("plain.subject", "measure", measure(result));
        }

        private String read(Result.Readings result) {
            int before = result.before().size();
            int after = result.after().size();
            if (before != after && before > 0 && after > 0) {
                return words.say("plain.average");
            }
            return words.count(result.places().isEmpty() ? "plain.of-readings" : "plain.of-places", Math.max(before, after));
        }

        /** What a step of a scale means, where a change along it was read. */
        private String scale(Result.Readings result) {
            return isPh(result) ? " " + words.say("plain.scale-of-pH") : "";
        }

        /** What keeps a reader from taking the difference for the work of the treatment. */
        private String doubt() {
            Optional<Quantity> change = Optional.ofNullable(worked.figures().get("change")).map(Figure::value);
            boolean mayBeChance = change.filter(value -> value.spread() == Quantity.Spread.TOLERANCE && value.low() <= 0
                    && value.high() >= 0).isPresent();
            return mayBeChance ? " " + words.say("plain.may-be-chance")
                    : change.isPresent() && worked.cautions().contains("fewer-than-three") ? " " + words.say("plain.too-few") : "";
        }

        @Override
        public Optional<String> colour(Result.Colour result) {
            return worked.figures().values().stream().filter(figure -> figure.key().name().equals("lightness"))
                    .max(Comparator.comparingDouble(figure -> Math.abs(figure.value().value())))
                    .map(figure -> figure.value().low() <= 0 && figure.value().high() >= 0
                            ? words.count("plain.lightness-same", result.spots().size()) : lightness(figure, result));
        }

        private String lightness(Figure change, Result.Colour result) {
            Result.ColourSpot spot = result.spots().stream().filter(one -> one.after().size() == one.before().size()
                    && change.key().isOfSpot(one.id())).findFirst().orElseThrow();
            return words.say(change.value().value() > 0 ? "plain.lighter" : "plain.darker", "at", spot.at(),
                    "before", sheet.numbers().number(spot.before().get(0)), "after", sheet.numbers().number(spot.after().get(0)));
        }

        @Override
        public Optional<String> size(Result.Size result) {
            return List.of("change", "across-change").stream().map(worked.figures()::get).filter(figure -> figure != null)
                    .max(Comparator.comparingDouble(figure -> Math.abs(figure.value().value())))
                    .map(figure -> figure.value().value() == 0 ? words.say("plain.size-same") : side(figure, otherOf(figure)))
                    .map(said -> worked.cautions().contains(WorkedResult.HEIGHT_WITHIN_ONE_STEP)
                            || worked.cautions().contains(WorkedResult.WIDTH_WITHIN_ONE_STEP)
                            ? said + " " + words.say("plain.rule") : said);
        }

        /** The change of the side that changed less, if it was read. */
        private Optional<Figure> otherOf(Figure change) {
            return Optional.ofNullable(worked.figures().get(change.key().name().equals("change") ? "across-change" : "change"));
        }

        private String side(Figure change, Optional<Figure> other) {
            String across = change.key().name().equals("across-change") ? "across-" : "";
            boolean height = change.key().name().equals("across-change") == turned;
            boolean still = other.filter(one -> one.value().value() == 0).isPresent();
            return words.say(still ? "plain.size-other-same" : "plain.size",
                    "side", words.say(height ? "plain.side-height" : "plain.side-width"),
                    "other", words.say(height ? "plain.other-width" : "plain.other-height"),
                    "before", length(change, across + "before"), "after", length(change, across + "after"));
        }

        private String length(Figure change, String input) {
            return change.inputs().stream().filter(given -> given.key().equals(input)).findFirst()
                    .map(given -> sheet.numbers().written(given.values().get(0)).text()).orElseThrow();
        }

        @Override
        public Optional<String> reserve(Result.Reserve result) {
            return Optional.ofNullable(worked.figures().get("carbonate"))
                    .map(figure -> words.say("plain.reserve", "amount", sheet.amount(figure).text()))
                    .or(() -> Optional.ofNullable(worked.figures().get("ceiling-carbonate"))
                            .map(figure -> words.say("plain.ceiling", "amount", sheet.amount(figure).text())));
        }

        @Override
        public Optional<String> stated(Result.Stated result) {
            return Optional.empty();
        }

        @Override
        public Optional<String> words(Result.Words result) {
            return Optional.empty();
        }

        @Override
        public Optional<String> notMeasured(Result.NotMeasured result) {
            return Optional.empty();
        }

        private static boolean isPh(Result result) {
            return result.measure().word().equals("pH");
        }

        private String measure(Result result) {
            return Words.capital(words.measure(result.measure()));
        }

        private String amount(String figure) {
            return sheet.amount(worked.figures().get(figure)).text();
        }
    }
}
