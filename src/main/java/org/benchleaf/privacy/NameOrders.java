package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The other names of a person that may be the family's, where the order of the words does not tell. */
final class NameOrders {

    private static final int SHORTEST_MIDDLE = 4;
    private static final int LONGEST_EAST_ASIAN = 3;
    /** A father's name in Russian, Ukrainian or Belarusian; where it stands last, the family's name stands first (from memory). */
    private static final Pattern PATRONYMIC = Pattern.compile("(?iu)(?:вич|вна|чна|івна|їч|ovich|evich|ovna|evna|ichna)$");
    private static final Pattern LATIN = Pattern.compile("[\\p{IsLatin}\\p{M}'’‐‑-]+");

    private NameOrders() {
    }

    /** The person once more for each such name, with the other words as given names. */
    static List<Who.Person> of(List<String> words) {
        if (words.size() == 1) {
            return NameScripts.isEastAsian(words.get(0)) ? unspaced(words.get(0)) : List.of();
        }
        List<Who.Person> others = new ArrayList<>();
        if (isFamilyFirst(words)) {
            others.add(person(words.subList(1, words.size()), words.get(0)));
        }
        for (int at = 1; at + 1 < words.size(); at++) {
            if (mayBeFamily(words.get(at))) {
                others.add(person(words.subList(0, at), words.get(at)));
            }
        }
        return others;
    }

    private static Who.Person person(List<String> others, String family) {
        return new Who.Person(others.stream().filter(word -> !NameScripts.isSmall(word.codePointAt(0))).toList(),
                List.of(family), List.of());
    }

    private static boolean isFamilyFirst(List<String> words) {
        return words.size() > 2 && PATRONYMIC.matcher(words.get(words.size() - 1)).find()
                && !NameWords.GIVEN_NAMES.contains(Folded.letters(words.get(0)))
                || NameWords.FAMILY_FIRST.contains(Folded.letters(words.get(0)));
    }

    /** Whether a word in the middle may be the first of two family names: it is no common given name and no ordinary word. */
    private static boolean mayBeFamily(String word) {
        String letters = Folded.letters(word);
        return letters.length() >= SHORTEST_MIDDLE && LATIN.matcher(word).matches() && !NameScripts.isSmall(word.codePointAt(0))
                && !NameWords.PARTICLES.contains(letters) && !NameWords.isOrdinary(letters) && !NameWords.GIVEN_NAMES.contains(letters)
                && !PATRONYMIC.matcher(word).find();
    }

    /** A name without a space in Chinese, Japanese or Korean signs: family names have up to three signs. */
    private static List<Who.Person> unspaced(String name) {
        boolean isKorean = Character.UnicodeScript.of(name.codePointAt(0)) == Character.UnicodeScript.HANGUL;
        List<Who.Person> others = new ArrayList<>();
        for (int signs = 1; signs <= LONGEST_EAST_ASIAN && signs < name.length(); signs++) {
            boolean isUsual = signs == 1 || name.length() > 2 && !isKorean || name.length() > LONGEST_EAST_ASIAN && signs == 2;
            if (isUsual && !Character.isSurrogate(name.charAt(signs))) {
                others.add(new Who.Person(List.of(name.substring(signs)), List.of(name.substring(0, signs)), List.of()));
            }
        }
        return others;
    }
}
