package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The closed words for the results of spot tests, and how an author's words are read as one of them.
 *
 * @param sets the sets of words; the first is that of liquids and materials
 */
public record TestWords(List<WordSet> sets) {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}?±/]+");
    private static final Pattern NEGATED = Pattern.compile(
            "^(does not|do not|did not|doesn t|didn t|is not|was not|not|no longer|no|without|nothing|never) (.+)");
    private static final Set<String> NONE = Set.of("no", "without");
    private static final Pattern SOFTENED = Pattern.compile(
            "^(?:very |only )?(?:slightly|slight|faintly|faint|a little|weakly|weak|minimal|minimally) (.+)"
            + "|^(.+) (?:slightly|faintly|a little|weakly|minimally)");

    public TestWords {
        sets = List.copyOf(sets);
    }

    /**
     * Words that belong together.
     *
     * @param name what is tested with, in words
     * @param with the indicators whose results they are; liquids and materials belong to the first set
     * @param kinds kinds of material that belong here, such as an indicator that the studio entered itself
     */
    public record WordSet(String name, List<Indicator> with, List<String> kinds, List<Word> words) {
        public WordSet {
            with = List.copyOf(with);
            kinds = List.copyOf(kinds);
            words = List.copyOf(words);
        }

        /** The names of the indicators. */
        public List<String> indicators() {
            return with.stream().map(Indicator::name).toList();
        }

        /** The result that an author's words mean; empty if they are none of the list. */
        public Optional<TestResult> read(String written) {
            String plain = plain(written);
            return exact(plain).or(() -> negated(plain)).or(() -> softened(plain))
                    .map(word -> new TestResult(written.strip(), word.word(), word.group()));
        }

        private Optional<Word> exact(String plain) {
            return words.stream().filter(word -> word.isWritten(plain)).findFirst();
        }

        /**
         * "does not bleed" is no change; "no longer stable" is a change. Of a little change, "no trace" is no change, while "not
         * slight" may as well be much: that is none of the list.
         */
        private Optional<Word> negated(String plain) {
            Matcher matcher = NEGATED.matcher(plain);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            boolean none = NONE.contains(matcher.group(1));
            return exact(matcher.group(2)).flatMap(word -> switch (word.group()) {
                case CHANGE -> first(TestResult.Group.NO_CHANGE);
                case SOME_CHANGE -> first(TestResult.Group.NO_CHANGE).filter(any -> none);
                case NO_CHANGE -> first(TestResult.Group.CHANGE);
                default -> Optional.empty();
            });
        }

        private Optional<Word> softened(String plain) {
            Matcher matcher = SOFTENED.matcher(plain);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            return exact(Optional.ofNullable(matcher.group(1)).orElse(matcher.group(2)))
                    .filter(word -> word.group() == TestResult.Group.CHANGE
                            || word.group() == TestResult.Group.SOME_CHANGE)
                    .flatMap(word -> first(TestResult.Group.SOME_CHANGE));
        }

        private Optional<Word> first(TestResult.Group group) {
            return words.stream().filter(word -> word.group() == group).findFirst();
        }
    }

    /**
     * What a test may be made with that is neither a solution nor a material.
     *
     * @param name as it is written under {@code with}
     * @param means what it is and what it shows, in a few words
     */
    public record Indicator(String name, String means) {
    }

    /**
     * One word of the list.
     *
     * @param means in a few words
     * @param also what else the trade writes for it
     */
    public record Word(String word, TestResult.Group group, String means, List<String> also) {
        public Word {
            also = List.copyOf(also);
        }

        private boolean isWritten(String plain) {
            return Stream.concat(Stream.of(word), also.stream()).map(TestWords::plain).anyMatch(plain::equals);
        }
    }

    /** What a test may be made with that is neither a solution nor a material. */
    public List<String> indicators() {
        return sets.stream().flatMap(set -> set.indicators().stream()).toList();
    }

    /**
     * The set of words for a test.
     *
     * @param with what it is made with
     * @param kind the kind of material that this is, if it is one
     */
    public WordSet of(String with, Optional<String> kind) {
        return sets.stream().filter(set -> set.indicators().contains(with)
                || kind.filter(set.kinds()::contains).isPresent()).findFirst().orElse(sets.get(0));
    }

    private static String plain(String text) {
        return BETWEEN_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }
}
