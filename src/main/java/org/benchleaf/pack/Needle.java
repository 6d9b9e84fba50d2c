package org.benchleaf.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/**
 * One spelling of a private value that is looked for, in folded letters.
 *
 * @param letters what is looked for
 * @param caseId the case it belongs to
 * @param field the private field
 * @param how when a find counts
 */
record Needle(String letters, String caseId, String field, How how) {

    /** When a find counts. */
    enum How {
        /** Anywhere, even inside a longer word. */
        ANYWHERE,
        /** Only where it is not part of a longer word. */
        WHOLE_WORDS,
        /** A whole number that stands near a word of money. */
        NEAR_MONEY
    }

    /** Shorter values turn up inside other words by chance. */
    static final int LONG_ENOUGH = 8;
    /** Many cases have the same days. */
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final int BOTH_ORDERS = 2;
    private static final Pattern NAME_PART = Pattern.compile("\\p{Lu}[\\p{L}\\p{M}'’.-]*");
    private static final Pattern NUMBER = Pattern.compile("\\d(?:[\\d ,.'’\\u00A0\\u2009\\u202F]*\\d)?");
    private static final Set<String> FORMS_OF_ADDRESS = Set.of("mr", "mrs", "ms", "miss", "mx", "dr", "prof",
            "professor", "sir", "lady", "lord", "dame", "herr", "frau", "sr", "sra", "señor", "señora", "don", "doña",
            "mme", "madame", "monsieur");
    private static final List<String> BEHIND_A_NAME = List.of("family", "collection", "estate", "papers", "bequest");

    /** Every spelling of a private value that the site is searched for. */
    static List<Needle> of(String caseId, Confidential.Secret secret) {
        Set<Needle> needles = new LinkedHashSet<>();
        String value = secret.value().strip();
        add(needles, caseId, secret.field(), value, false);
        names(value).forEach(spelling -> add(needles, caseId, secret.field(), spelling, true));
        parts(value).forEach(part -> add(needles, caseId, secret.field(), part, true));
        numbers(value).forEach(number ->
                needles.add(new Needle(number, caseId, secret.field(), How.NEAR_MONEY)));
        return List.copyOf(needles);
    }

    /**
     * The spellings that belong to nobody else: a person's name in either order, a value with a number in it, and one of
     * several words. Who worked on an object is left out, since the same people work on many and are named elsewhere.
     */
    static List<Needle> whole(String caseId, Confidential.Secret secret) {
        String value = secret.value().strip();
        List<String> names = names(value).stream().limit(BOTH_ORDERS).toList();
        boolean telling = !names.isEmpty() || value.matches(".*\\d.*") || value.split("\\s+").length > 2;
        if (secret.field().equals(Confidential.PEOPLE) || !telling || DAY.matcher(value).matches()) {
            return List.of();
        }
        Set<Needle> needles = new LinkedHashSet<>();
        add(needles, caseId, secret.field(), value, true);
        names.forEach(spelling -> add(needles, caseId, secret.field(), spelling, true));
        return needles.stream().filter(needle -> needle.letters().length() >= LONG_ENOUGH).toList();
    }

    private static void add(Set<Needle> needles, String caseId, String field, String spelling, boolean whole) {
        String letters = Folded.letters(spelling);
        if (!letters.isEmpty()) {
            needles.add(new Needle(letters, caseId, field,
                    whole || letters.length() < LONG_ENOUGH ? How.WHOLE_WORDS : How.ANYWHERE));
        }
    }

    /** Other ways of writing a person's name; none for a value that is no name. */
    private static List<String> names(String value) {
        List<String> parts = new ArrayList<>(Arrays.asList(value.replace(",", " ").strip().split("\\s+")));
        if (value.matches("[^,]+,[^,]+")) {
            // "Surname, First" is turned round first.
            parts.add(parts.remove(0));
        }
        parts.removeIf(part -> FORMS_OF_ADDRESS.contains(part.replace(".", "").toLowerCase(Locale.ROOT)));
        if (parts.size() < 2 || parts.size() > 4 || !parts.stream().allMatch(NAME_PART.asMatchPredicate())) {
            return List.of();
        }
        String last = parts.get(parts.size() - 1);
        List<String> first = parts.subList(0, parts.size() - 1);
        StringBuilder initials = new StringBuilder();
        first.forEach(part -> initials.append(part.charAt(0)));
        List<String> spellings = new ArrayList<>(List.of(String.join(" ", parts), last + " " + String.join(" ", first),
                initials + " " + last, last + " " + initials, first.get(0) + " " + last));
        FORMS_OF_ADDRESS.stream().sorted().forEach(address -> spellings.add(address + " " + last));
        BEHIND_A_NAME.forEach(word -> spellings.add(last + " " + word));
        if (Folded.letters(last).length() >= LONG_ENOUGH) {
            spellings.add(last);
        }
        return spellings;
    }

    /** The pieces between commas that say something by themselves: two words, or a digit among letters. */
    private static List<String> parts(String value) {
        return Arrays.stream(value.split("[,;/|]")).map(String::strip)
                .filter(part -> !part.equals(value) && part.length() > 2)
                .filter(part -> part.matches(".*\\p{L}.*") && part.contains(" ")).toList();
    }

    /** Numbers of four digits and more, and so also a price and the tail of a telephone number. */
    private static List<String> numbers(String value) {
        List<String> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(value);
        while (number.find()) {
            String digits = Folded.letters(number.group());
            if (digits.length() >= 4) {
                numbers.add(digits);
            }
        }
        return numbers;
    }
}
