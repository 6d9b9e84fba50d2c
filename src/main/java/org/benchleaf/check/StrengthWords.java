package org.benchleaf.check;

import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.Reference;

/** Finds strengths that are written with numbers in running text. */
final class StrengthWords {

    private static final String NUMBER = "\\d[\\d.,]{0,20}+\\h{0,9}+";
    /** Bounded, so that a long row of digits is not gone through again from each of its digits. */
    private static final Pattern WITH_UNIT = Pattern.compile(
            NUMBER + "(?:%\\h{0,9}+(?:[vmw]/[vmw])|m?mol/(?:L|kg)|[mµ]?g/m?L)(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE);
    /** The sign of mol/L in older papers, in its own letter: a small m is a metre. */
    private static final Pattern MOLAR = Pattern.compile(NUMBER + "[mµ]?M(?![\\p{L}\\p{N}])");
    private static final String AMOUNT = NUMBER + "(?:[mµk]?g|[mµ]?L)";
    /** An amount in an amount: "to" is left out, since it makes a range. */
    private static final Pattern AMOUNT_IN_AMOUNT = Pattern.compile(
            AMOUNT + "\\h{1,9}+(?:in|into|per|for\\h(?:each|every))\\h{1,9}+" + AMOUNT + "(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE);
    private static final Pattern RATIO = Pattern.compile(
            NUMBER + "(?:parts?\\h|[:+]\\h{0,9}+\\d{1,9}+\\h{0,9}+(?:,\\h{0,9}+)?(?:by\\h+(?:volume|mass|weight)|[vmw]/[vmw]|parts?\\b))",
            Pattern.CASE_INSENSITIVE);
    /** A percentage alone may be of anything: of a colour that went, of the air's humidity. */
    private static final Pattern PER_CENT = Pattern.compile(NUMBER + "(?:%|per\\h?cent\\b)(?!\\h{0,9}+[vmw]/[vmw])",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}-]+");
    private static final List<String> LINKS = List.of("of", "at", "in", "with");
    private static final String WATER = "water";
    private static final int LONGEST_NAME = 3;

    private StrengthWords() {
    }

    /**
     * Each strength as it is written: with its unit, as parts, as an amount in an amount, or as a percentage beside the name of a substance
     * other than water.
     */
    static List<String> in(String text, Reference reference) {
        Stream<String> plain = Stream.of(WITH_UNIT, RATIO, MOLAR, AMOUNT_IN_AMOUNT).flatMap(pattern -> pattern.matcher(text).results())
                .map(MatchResult::group);
        Matcher perCent = PER_CENT.matcher(text);
        Stream<String> beside = perCent.results().filter(found -> isBesideSubstance(text, found, reference)).map(MatchResult::group);
        return Stream.concat(plain, beside).map(String::strip).toList();
    }

    private static boolean isBesideSubstance(String text, MatchResult found, Reference reference) {
        List<String> after = words(text.substring(found.end(), Math.min(text.length(), found.end() + 80)));
        List<String> before = words(text.substring(Math.max(0, found.start() - 80), found.start()));
        boolean linked = !before.isEmpty() && LINKS.contains(before.get(before.size() - 1));
        int from = !after.isEmpty() && LINKS.contains(after.get(0)) ? 1 : 0;
        return IntStream.rangeClosed(1, LONGEST_NAME).anyMatch(length ->
                isSubstance(part(after, from, from + length), reference)
                        || linked && isSubstance(part(before, before.size() - 1 - length, before.size() - 1), reference));
    }

    private static List<String> words(String text) {
        return Arrays.stream(BETWEEN.split(text)).filter(word -> !word.isEmpty()).toList();
    }

    private static String part(List<String> words, int from, int to) {
        return from < 0 || to > words.size() ? "" : String.join(" ", words.subList(from, to));
    }

    private static boolean isSubstance(String name, Reference reference) {
        return !name.isEmpty() && !name.equalsIgnoreCase(WATER) && reference.substanceCalled(name).isPresent();
    }
}
