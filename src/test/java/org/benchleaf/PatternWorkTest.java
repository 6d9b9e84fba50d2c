package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.quantity.QuantityReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sonarsource.analyzer.commons.regex.MatchType;
import org.sonarsource.analyzer.commons.regex.RegexParseResult;
import org.sonarsource.analyzer.commons.regex.RegexParser;
import org.sonarsource.analyzer.commons.regex.ast.FlagSet;
import org.sonarsource.analyzer.commons.regex.finders.RedosFinder;
import org.sonarsource.analyzer.commons.regex.java.JavaRegexSource;

/**
 * No regular expression of the program takes more than its share of work on a long text, wherever it stands: in a field, at
 * a call, in a schema. Work is counted in letters that the matcher asks for, so that the machine's speed has no part in it: a
 * text of four times the length may cost six times the work, never sixteen times.
 */
class PatternWorkTest {

    /** Longer than the bound of any pattern that says how far it looks, so that such a bound has shown itself. */
    private static final int SHORT = 400;
    private static final double MOST_GROWTH = 6;
    /** So much work a letter is no growth, however it is distributed. */
    private static final long FREE_WORK_A_LETTER = 60;

    /** What is repeated: what the patterns look for, begun and never ended. */
    private static final List<String> PUMPS = List.of("1", "1.", "1.1", "1,", "1 ", "1,1 ", "12.5 ", "1:", "1e", "1+1", " ", "\t",
            "\n", "a", "a ", "A.", "Aa ", "Aa-", "a-", "1+", "-", "--", "- ", ".", ",", "a,", "{", "{a", "{#a", "[", "[a", "(", "<",
            "<!--", "<a ", "/*", "&", "&#", "&#1", "%", "%4", "\\", "\\u0", "#", "/", "a/", "a=", "a:", "pH ", "pH 1", "to ", "1 to ",
            "1 – ", "1 ± ", "% ", "1 % ", "v/v", "£", "£1", "£1,000", "é", "e\u0301", "\u00A0", "\u200B", "|", "`", "con.", "0");
    private static final List<String> ENDS = List.of("", "!", "\n", "}");

    /** Where the rest is not waited for. */
    private static final long MOST_WORK_A_LETTER = 2000;
    /** No author's line that a pattern meets is longer. */
    private static final int DEEP = 100_000;

    private static final String LOOKS_BEHIND = "looks behind first, so that a run is tried at its beginning alone";

    /** Methods that make a pattern of words which are data, and why that is no steeper than the words are many. */
    private static final Map<String, String> COMPUTED = Map.of(
            "org.benchleaf.check.ClaimChecks.pattern", "words of the table of claims, each as it stands",
            "org.benchleaf.check.ClaimChecks.endsWith", "the 40 letters before a claim",
            "org.benchleaf.check.ClaimChecks.written", "the found words as they stand, in one line at a time",
            "org.benchleaf.compose.part.ForeignWords.<clinit>", "units as they stand",
            "org.benchleaf.words.QuantityRuns.<clinit>", "units as they stand; the field is tried as the others are",
            "org.benchleaf.compose.part.GlossaryTerms.made", "words of the glossary, each as it stands",
            "org.benchleaf.words.UnitSpaces.<clinit>", "units as they stand; the field is tried as the others are",
            "org.benchleaf.privacy.NameWords.<clinit>", "words of the program; the fields are tried as the others are");

    /** Patterns that the library takes for steep, and why they are not. */
    private static final Map<String, String> MISJUDGED = Map.of(
            "org.benchleaf.words.NumberText.LONG_NUMBER", LOOKS_BEHIND,
            "org.benchleaf.privacy.FactReader.EDGES", LOOKS_BEHIND,
            "org.benchleaf.publish.SitePublisher.firstSentence", LOOKS_BEHIND);
    private static final Map<PatternFinder.Use, List<MatchType>> MATCHES = Map.of(
            PatternFinder.Use.WHOLE, List.of(MatchType.FULL), PatternFinder.Use.ANY_PLACE, List.of(MatchType.PARTIAL),
            PatternFinder.Use.BOTH, List.of(MatchType.FULL, MatchType.PARTIAL));
    private static final PatternFinder FINDER = PatternFinder.look();

    @Test
    void a_text_longer_than_any_quantity_is_refused_before_it_is_looked_through() {
        QuantityReader.Reading reading = QuantityReader.read("1." + "0".repeat(70_000) + " to x");
        assertThat(reading.slip()).contains(QuantityReader.Slip.NOT_A_NUMBER);
        assertThat(reading.found()).hasSizeLessThan(300);
        assertThat(QuantityReader.read("0." + "1".repeat(190) + " mL").quantity()).isPresent();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void work_grows_with_the_text_and_not_faster(PatternFinder.Found each) {
        assertThat(pumps(each.pattern()).flatMap(pump -> ENDS.stream().map(end -> growth(each, pump, end)))
                .flatMap(Optional::stream).findFirst()).isEmpty();
    }

    /** A group that is repeated may take a frame of the stack for each time. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void a_long_text_does_not_exhaust_the_stack(PatternFinder.Found each) {
        for (String pump : pumps(each.pattern()).sorted(Comparator.comparing(pump -> -work(each, text(pump, "", 100))))
                .limit(4).toList()) {
            assertThatCode(() -> work(each, text(pump, "!", DEEP))).as(pump).doesNotThrowAnyException();
        }
    }

    /** What a pattern may meet as a whole and at any place is asked both ways. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void no_pattern_is_of_a_form_that_is_known_to_be_steep(PatternFinder.Found each) {
        RegexParseResult parsed = new RegexParser(new JavaRegexSource(inJava(each.pattern().pattern())),
                new FlagSet(each.pattern().flags())).parse();
        assertThat(parsed.getSyntaxErrors()).isEmpty();
        List<String> steep = new ArrayList<>();
        for (MatchType way : MATCHES.get(each.use())) {
            new SteepForms().checkRegex(parsed, way, (place, message, cost, others) -> steep.add(way + " " + message));
        }
        assertThat(steep.isEmpty()).as("%s", steep).isNotEqualTo(MISJUDGED.containsKey(each.where()));
    }

    private static String inJava(String pattern) {
        return pattern.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n").replace("\r", "\\r");
    }

    /** What is linear with the matcher of Java 9 and later is none. */
    private static final class SteepForms extends RedosFinder {

        @Override
        protected Optional<String> message(BacktrackingType kind, boolean optimised) {
            return Set.of(BacktrackingType.NO_ISSUE, BacktrackingType.LINEAR_WHEN_OPTIMIZED).contains(kind)
                    ? Optional.empty() : Optional.of(kind.name());
        }
    }

    @Test
    void a_pattern_made_of_words_that_are_data_has_a_reason() {
        assertThat(new TreeSet<>(FINDER.computed())).isEqualTo(new TreeSet<>(COMPUTED.keySet()));
    }

    static Stream<PatternFinder.Found> patterns() {
        return FINDER.found().stream();
    }

    /** What is repeated: the usual, and words and signs that stand in the pattern itself. */
    private static Stream<String> pumps(Pattern pattern) {
        Stream<String> own = Pattern.compile("\\p{L}{2,20}|[^\\p{L}\\d\\s]").matcher(pattern.pattern()).results()
                .map(MatchResult::group).distinct().limit(12)
                .flatMap(word -> Stream.of("", " ", "1", "(", ":", "=", "'", "\"").map(word::concat));
        return Stream.concat(PUMPS.stream(), own).distinct();
    }

    private static Optional<String> growth(PatternFinder.Found each, String pump, String end) {
        long small = work(each, text(pump, end, SHORT));
        long large = work(each, text(pump, end, 4 * SHORT));
        boolean steep = large > MOST_GROWTH * small && large > FREE_WORK_A_LETTER * 4 * SHORT;
        return steep ? Optional.of("'" + pump + "'… '" + end + "': " + small + " → "
                + work(each, text(pump, end, 2 * SHORT)) + " → " + large) : Optional.empty();
    }

    private static String text(String pump, String end, int length) {
        return pump.repeat(length / pump.length()) + end;
    }

    private static long work(PatternFinder.Found each, String text) {
        Counted counted = new Counted(text, new long[1], MOST_WORK_A_LETTER * text.length());
        Matcher matcher = each.pattern().matcher(counted);
        if (each.use() != PatternFinder.Use.ANY_PLACE) {
            matcher.matches();
            matcher.reset();
        }
        while (each.use() != PatternFinder.Use.WHOLE && matcher.find()) {
            // Each place counts.
        }
        return counted.asked()[0];
    }

    /** A text that counts how often a letter is asked for. */
    private record Counted(String text, long[] asked, long most) implements CharSequence {

        @Override
        public int length() {
            return text.length();
        }

        @Override
        public char charAt(int index) {
            if (++asked[0] > most) {
                throw new IllegalStateException("more than " + MOST_WORK_A_LETTER + " times the text");
            }
            return text.charAt(index);
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            return text.substring(start, end);
        }

        @Override
        public String toString() {
            return text;
        }
    }
}
