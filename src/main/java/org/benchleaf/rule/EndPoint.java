package org.benchleaf.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/** An end point such as "two baths in a row stay clear", held against what was read in the baths. */
final class EndPoint {

    private static final Pattern IN_A_ROW = Pattern.compile(
            "\\b(two|three|four|[2-4])\\b[^.;]{0,60}?\\bbaths?\\b[^.;]{0,80}?\\b(?:clear|colourless|no colour|fresh)");
    private static final Map<String, Integer> NUMBERS = Map.of("two", 2, "three", 3, "four", 4, "2", 2, "3", 3, "4", 4);
    private static final List<String> CLEAR = List.of("clear", "colourless", "none", "no colour", "as fresh", "like fresh");

    private EndPoint() {
    }

    /**
     * Whether the last baths read were clear as often as the end point asks; so too where it asks for no such number, and
     * where the step is still to come. It cannot be told of a step that was done if too few colours were read.
     */
    static Judgement reached(Step step) {
        Matcher matcher = IN_A_ROW.matcher(step.until().orElse("").toLowerCase(Locale.ROOT));
        List<Part.BathReading> read = step.part(Part.Bath.class).map(Part.Bath::readings).orElse(List.of()).stream()
                .filter(reading -> reading.colour().isPresent())
                .sorted(Comparator.comparingInt(Part.BathReading::bath).reversed()).toList();
        if (!matcher.find() || read.isEmpty() && step.on().isEmpty()) {
            return Judgement.YES;
        }
        long clear = read.stream().takeWhile(EndPoint::isClear).count();
        boolean reached = clear >= NUMBERS.get(matcher.group(1));
        return !reached && clear == read.size() ? Judgement.cannotTell(MissingFact.bathColour(step)) : Judgement.of(reached);
    }

    private static boolean isClear(Part.BathReading reading) {
        return reading.colour().filter(colour -> CLEAR.stream().anyMatch(word -> WordComparison.holds(colour, word))
                && !WordComparison.holds(colour, "not")).isPresent();
    }
}
