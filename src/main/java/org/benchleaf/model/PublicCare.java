package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.quantity.Quantity;

/**
 * What is told to readers outside the trade: plain words for readings, and what to do with a sheet like the one treated.
 *
 * @param plainWords words for the readings of a measure
 * @param advice sentences for the owner of such a sheet, in the order in which they are told
 */
public record PublicCare(List<PlainWord> plainWords, List<Advice> advice) {

    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

    public PublicCare {
        plainWords = List.copyOf(plainWords);
        advice = List.copyOf(advice);
    }

    /** The key of the word for a set of readings; empty unless one word holds for every one of them. */
    public Optional<String> wordFor(String measure, List<Double> readings) {
        return readings.isEmpty() ? Optional.empty() : plainWords.stream().filter(word -> word.measure().equals(measure)
                && readings.stream().allMatch(word::holds)).map(PlainWord::key).findFirst();
    }

    /** The advice that is due for a sheet of which these words are told. */
    public List<Advice> adviceFor(List<String> told) {
        return keeping().stream().filter(row -> isTold(row.where(), told)).toList();
    }

    /** All advice on how to keep a sheet. */
    public List<Advice> keeping() {
        return advice.stream().filter(row -> !row.isOfAsking()).toList();
    }

    /** Where conservators are listed, by country, and how a price comes about. */
    public List<Advice> lists() {
        return advice.stream().filter(Advice::isOfAsking).toList();
    }

    /** Whether one of the words stands in what is told of a sheet, or none is asked for. */
    static boolean isTold(List<String> where, List<String> told) {
        List<String> plain = told.stream().map(PublicCare::spaced).toList();
        return where.isEmpty() || where.stream().map(PublicCare::spaced)
                .anyMatch(word -> plain.stream().anyMatch(text -> text.contains(word)));
    }

    /** In lower case, with one blank around each word, so that "ink" is not found in "shrinking". */
    private static String spaced(String text) {
        return " " + NO_WORD.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip() + " ";
    }

    /**
     * A plain word for readings between two ends.
     *
     * @param key of the word among the words of the interface
     * @param measure such as {@code pH}
     * @param from the least reading of which it is said; empty if there is none
     * @param below the reading from which on it is no longer said; empty if there is none
     * @param source where it was read
     */
    public record PlainWord(String key, String measure, Optional<Quantity> from, Optional<Quantity> below, String source) {

        private boolean holds(double reading) {
            return from.map(end -> reading >= end.value()).orElse(true) && below.map(end -> reading < end.value()).orElse(true);
        }
    }

    /**
     * One piece of advice for the owner of a sheet.
     *
     * @param key the row's own key
     * @param about {@code deciding}, {@code washing}, {@code cleaning}, {@code bleaching}, {@code hopes}, {@code handling}, {@code light},
     *     {@code framing}, {@code keeping}, {@code trouble}, {@code asking} or {@code price}
     * @param where words of which one must stand in what the case tells of the sheet, in lower case; empty if it is always due
     * @param sheets what such sheets are called where the advice stands without a case; empty if it is always due
     * @param words the advice
     * @param address of the list of conservators that it tells of; empty if it tells of none
     * @param source where it was read
     */
    public record Advice(String key, String about, List<String> where, String sheets, String words, Optional<String> address,
            String source) {
        /** What an advice is about that tells where conservators are listed. */
        public static final String ASKING = "asking";
        /** What an advice is about that tells how a price comes about. */
        public static final String PRICE = "price";

        public Advice {
            where = List.copyOf(where);
        }

        /** Whether it tells whom to ask, not how to keep a sheet. */
        boolean isOfAsking() {
            return about.equals(ASKING) || about.equals(PRICE);
        }
    }
}
