package org.benchleaf.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/**
 * The end point of a washing, such as "two baths in a row stay clear", held against what was read in the baths. Its words are
 * the author's own: of what they ask, colour, conductivity and pH can be told; anything else cannot.
 */
final class EndPoint {

    private static final Pattern CLEAR =
            Pattern.compile("\\b(?:clear|colourless|no colour|fresh|no more yellow|no yellow|stops yellowing)\\b");
    private static final Pattern CONDUCTIVITY =
            Pattern.compile("\\bconductivity\\b[^.;]{0,60}?\\b(?:below|under|less than)\\s{0,3}([0-9.]{1,9}\\s?[µu]s/cm)");
    private static final Pattern ALKALINE = Pattern.compile(
            "\\bph\\s{0,3}([0-9.]{1,5}) or (?:more|above)|\\bph\\b[^.;]{0,30}?\\b(?:above|over|at least)\\s{0,3}([0-9.]{1,5})");
    private static final Pattern IN_A_ROW = Pattern.compile("\\b(two|three|four|[2-4])\\b[^.;]{0,60}?\\bbaths?\\b");
    private static final Map<String, Integer> NUMBERS = Map.of("two", 2, "three", 3, "four", 4, "2", 2, "3", 3, "4", 4);
    private static final List<String> CLEAR_WORDS = List.of("clear", "colourless", "none", "no colour", "as fresh", "like fresh");

    private final Step step;
    private final String wanted;
    private final List<Part.BathReading> last;
    private final int inARow;

    private EndPoint(Step step) {
        this.step = step;
        this.wanted = step.until().orElse("").toLowerCase(Locale.ROOT).replace('\u03bc', '\u00b5');
        Matcher row = IN_A_ROW.matcher(wanted);
        this.inARow = row.find() ? NUMBERS.get(row.group(1)) : 1;
        this.last = step.part(Part.Bath.class).map(Part.Bath::readings).orElse(List.of()).stream()
                .sorted(Comparator.comparingInt(Part.BathReading::bath).reversed()).toList();
    }

    /**
     * Whether the last baths read were as the end point asks; so too where the step is still to come. It cannot be told of a
     * step that was done if too little was read, or if its end point asks for something else.
     */
    static Judgement reached(Step step) {
        EndPoint end = new EndPoint(step);
        return end.last.isEmpty() && step.firstDay().isEmpty() ? Judgement.YES : end.judged();
    }

    private Judgement judged() {
        List<Judgement> all = new ArrayList<>();
        if (CLEAR.matcher(wanted).find()) {
            all.add(held(reading -> reading.colour().map(EndPoint::isClear), MissingFact.bathColour(step)));
        }
        limit(CONDUCTIVITY, Dimension.CONDUCTIVITY).ifPresent(limit -> all.add(held(reading -> reading.conductivity()
                .map(read -> read.to(limit.unit()).high() < limit.value()), MissingFact.bathReading(step, "conductivity"))));
        limit(ALKALINE, Dimension.ACIDITY).ifPresent(limit -> all.add(held(reading -> reading.phUsed()
                .map(read -> read.value() >= limit.value()), MissingFact.bathReading(step, "pH used"))));
        return all.isEmpty() ? Judgement.cannotTell(MissingFact.endPoint(step)) : Judgement.all(all.stream(), one -> one);
    }

    /** The limit that the words name; empty if they name none. */
    private Optional<Quantity> limit(Pattern pattern, Dimension dimension) {
        Matcher matcher = pattern.matcher(wanted);
        if (!matcher.find()) {
            return Optional.empty();
        }
        String text = matcher.group(1) != null || matcher.groupCount() < 2 ? matcher.group(1) : matcher.group(2);
        return QuantityReader.read(dimension == Dimension.ACIDITY ? "pH " + text : text.replace("s/cm", "S/cm"), dimension).quantity();
    }

    /** Whether the last of those that were read hold to it, as many as must in a row. */
    private Judgement held(Function<Part.BathReading, Optional<Boolean>> holds, MissingFact missing) {
        List<Boolean> read = last.stream().map(holds).flatMap(Optional::stream).toList();
        long kept = read.stream().takeWhile(Boolean::booleanValue).count();
        return kept < inARow && kept == read.size() ? Judgement.cannotTell(missing) : Judgement.of(kept >= inARow);
    }

    private static boolean isClear(String colour) {
        return CLEAR_WORDS.stream().anyMatch(word -> WordComparison.holds(colour, word)) && !WordComparison.holds(colour, "not");
    }
}
