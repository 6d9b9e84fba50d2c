package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decides whether a family's name that was found stands for the person: by a title, a given name or initials beside it, a
 * possessive, a word such as "collection" behind it, or by itself if it is no ordinary word.
 */
final class NameEvidence implements Needle.Evidence {

    private static final int REACH = 60;
    private static final int WORDS_BETWEEN = 3;
    private static final Pattern TAG = Pattern.compile("<[^<>]{0,200}>|^[^<>]{0,60}>|<[^<>]{0,60}$");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}]+|\\d+");
    private static final Pattern CAMEL = Pattern.compile("(?<=\\p{Ll})(?=\\p{Lu})");
    private static final Pattern POSSESSIVE = Pattern.compile("^['’`]s?\\b");
    private static final Pattern INITIALS = Pattern.compile("\\p{Lu}{1,4}");
    private static final Set<String> SEMITIC_PREFIXES = Set.of("ו", "ה", "ב", "ל", "מ", "ש", "כ", "ول", "وب", "ال", "وال", "بال",
            "لل", "و", "ف", "ب", "ل", "ك");
    private static final int LONGEST_ENDING = 3;

    private final String given;
    private final Set<String> names;
    private final String initials;
    private final boolean alone;
    private final int words;

    /**
     * Prepares to judge.
     *
     * @param given given names and initials, folded
     * @param alone whether the name by itself counts
     * @param words of how many words the name is made
     */
    NameEvidence(List<String> given, boolean alone, int words) {
        this.given = given.isEmpty() ? "" : given.get(0);
        this.names = Set.copyOf(given.stream().filter(name -> name.length() > 1).toList());
        StringBuilder first = new StringBuilder();
        given.forEach(name -> first.appendCodePoint(name.codePointAt(0)));
        this.initials = first.toString();
        this.alone = alone;
        this.words = words;
    }

    @Override
    public boolean counts(Spot spot) {
        if (!isOneName(spot) || !begins(spot) || !ends(spot)) {
            return false;
        }
        if (alone || !names.isEmpty() && isJoined(spot)) {
            return true;
        }
        List<String> before = before(spot);
        List<String> after = after(spot);
        return titled(spot, before) || named(before, after) || initialled(spot, before, after)
                || isCapital(spot) && (passedBy(spot) || possessive(spot) || plural(spot) || !after.isEmpty()
                && NameWords.BEHIND_A_NAME.contains(Folded.letters(after.get(0))));
    }

    /** The name beside a title, a given name or initials; by itself, or as an owner's, it may be another's. */
    @Override
    public Optional<Needle.Evidence> amongOthers() {
        return Optional.of(spot -> isOneName(spot) && begins(spot) && ends(spot) && isOfThisPerson(spot));
    }

    private boolean isOfThisPerson(Spot spot) {
        if (!names.isEmpty() && isJoined(spot)) {
            return true;
        }
        List<String> before = before(spot);
        List<String> after = after(spot);
        return titled(spot, before) || isCapital(spot) && (!wordBefore(spot).equalsIgnoreCase("the") && isNextToGiven(before, after)
                || initialled(spot, before, after) && isAbbreviated(spot, before, after));
    }

    /** With no word between but an initial: "Will the Brown paper" names nobody. */
    private boolean isNextToGiven(List<String> before, List<String> after) {
        return named(before.subList(0, Math.min(1, before.size())), after.subList(0, Math.min(1, after.size())))
                || before.size() > 1 && isInitial(before.get(0)) && isGiven(before.get(1));
    }

    /** A single letter counts with its stop, as "A Brown spot" names nobody. */
    private boolean isAbbreviated(Spot spot, List<String> before, List<String> after) {
        boolean several = !before.isEmpty() && isInitial(before.get(0)) && before.get(0).length() > 1;
        return several || wordBefore(spot).endsWith(".") || !after.isEmpty() && isInitial(after.get(0));
    }

    /** A find that runs over several words is chance, unless the name has as many or was broken at the end of a line. */
    private boolean isOneName(Spot spot) {
        String written = spot.written();
        int gaps = 0;
        for (int at = 0; at < written.length(); at++) {
            boolean broken = at > 0 && "-‐‑\u00AD".indexOf(written.charAt(at - 1)) >= 0;
            boolean gap = Character.isWhitespace(written.charAt(at)) || Character.isSpaceChar(written.charAt(at));
            if (gap && !broken && !(at > 0 && Character.isWhitespace(written.charAt(at - 1)))) {
                gaps++;
            }
        }
        return gaps < words || NameScripts.isEastAsian(written);
    }

    private boolean begins(Spot spot) {
        String prefix = Folded.letters(spot.prefix());
        return prefix.isEmpty() || NameScripts.isEastAsian(spot.written()) || SEMITIC_PREFIXES.contains(prefix)
                || isBeside(prefix) || NameWords.PARTICLES.contains(prefix);
    }

    private boolean ends(Spot spot) {
        String suffix = spot.suffix();
        String letters = Folded.letters(suffix);
        if (letters.isEmpty() || NameScripts.isEastAsian(spot.written()) || isBeside(letters)) {
            return true;
        }
        boolean inflected = NameScripts.isInflected(spot.written().charAt(0)) && letters.length() <= LONGEST_ENDING;
        return inflected || (letters.equals("s") || letters.equals("es")) && isCapital(spot);
    }

    /** Whether letters that touch the name, as in "zbrandreth", are those of the given names. */
    private boolean isBeside(String letters) {
        return names.contains(letters) || !initials.isEmpty() && (letters.equals(initials) || initials.startsWith(letters));
    }

    private boolean isJoined(Spot spot) {
        return names.contains(Folded.letters(spot.prefix())) || names.contains(Folded.letters(spot.suffix()));
    }

    private boolean titled(Spot spot, List<String> before) {
        String behind = spot.text().substring(spot.end(), Math.min(spot.text().length(), spot.end() + REACH)).stripLeading();
        return (!before.isEmpty() && NameWords.TITLES.contains(Folded.letters(before.get(0)))
                || NameWords.TITLES.contains(Folded.letters(wordBefore(spot)))) && isCapital(spot)
                || NameWords.HONORIFICS_AFTER.stream().anyMatch(behind::startsWith);
    }

    /** What stands between the name and the space before it and the space before that; a title may hold a sign, as "Dott.ssa". */
    private static String wordBefore(Spot spot) {
        String before = spot.text().substring(Math.max(0, spot.start() - REACH), spot.start()).stripTrailing();
        int from = before.length();
        while (from > 0 && !Character.isWhitespace(before.charAt(from - 1)) && before.charAt(from - 1) != '>') {
            from--;
        }
        return before.substring(from);
    }

    private boolean named(List<String> before, List<String> after) {
        return before.stream().limit(WORDS_BETWEEN).anyMatch(this::isGiven)
                || after.stream().limit(WORDS_BETWEEN).anyMatch(this::isGiven);
    }

    private boolean isGiven(String word) {
        String letters = Folded.letters(word);
        return names.contains(letters) || NameScripts.isInflected(word.charAt(0)) && given.length() > LONGEST_ENDING
                && letters.startsWith(given.substring(0, given.length() - 1)) && letters.length() <= given.length() + 2;
    }

    /** "Z. Brandreth", "ZM Brandreth", "Brandreth, Z." and "Brandreth Z."; the capital and the stop tell it from a word. */
    private boolean initialled(Spot spot, List<String> before, List<String> after) {
        if (initials.isEmpty() || !isCapital(spot)) {
            return false;
        }
        boolean stopped = spot.text().startsWith(",", spot.end()) || spot.around(REACH).contains(".");
        return before.stream().limit(WORDS_BETWEEN).takeWhile(this::isInitial).count() > 0
                || stopped && !after.isEmpty() && isInitial(after.get(0));
    }

    private boolean isInitial(String word) {
        return INITIALS.matcher(word).matches() && (initials.startsWith(Folded.letters(word))
                || initials.contains(Folded.letters(word)));
    }

    private static boolean possessive(Spot spot) {
        return POSSESSIVE.matcher(spot.text().substring(spot.end(), Math.min(spot.text().length(), spot.end() + 3))).find();
    }

    private static boolean plural(Spot spot) {
        return Folded.letters(spot.suffix()).endsWith("s") && wordBefore(spot).equalsIgnoreCase("the");
    }

    /** Whether words such as "lent by" stand before it. */
    private static boolean passedBy(Spot spot) {
        String before = Folded.letters(TAG.matcher(spot.text().substring(Math.max(0, spot.start() - REACH), spot.start())).replaceAll(" "));
        return NameWords.PASSED_BY.stream().anyMatch(before::endsWith);
    }

    private static boolean isCapital(Spot spot) {
        return !NameScripts.isSmall(spot.written().codePointAt(0));
    }

    /** The words before it, the nearest first, particles left out. */
    private static List<String> before(Spot spot) {
        List<String> words = words(spot.text().substring(Math.max(0, spot.start() - REACH), spot.start()));
        java.util.Collections.reverse(words);
        return words;
    }

    private static List<String> after(Spot spot) {
        return words(spot.text().substring(spot.end(), Math.min(spot.text().length(), spot.end() + REACH)));
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(TAG.matcher(text).replaceAll(" "));
        while (word.find()) {
            for (String part : CAMEL.split(word.group())) {
                String letters = Folded.letters(part);
                boolean isSmall = part.length() == 1 && Character.isLowerCase(part.charAt(0));
                if (!letters.isEmpty() && (!NameWords.PARTICLES.contains(letters) || part.length() == 1 && !isSmall)
                        && !(isSmall && letters.equals("s"))) {
                    words.add(part);
                }
            }
        }
        return words;
    }
}
