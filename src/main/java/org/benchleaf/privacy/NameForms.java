package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.model.Confidential;

/** Makes the forms in which people write a person or an organisation. */
final class NameForms {

    private static final int SHORTEST_HALF = 2;
    private static final int SHORTEST_STEM = 4;
    private static final int SHORTEST_WORD = 3;
    private static final Pattern POSSESSIVE = Pattern.compile("['’]s$");

    private final Confidential.Secret secret;
    private final Needles needles;

    NameForms(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
    }

    void person(Who.Person person) {
        forms(person, false);
        NameSpellings.umlauts(person).forEach(other -> forms(other, true));
    }

    /** The author is asked about the name as it was written, not about another spelling of it. */
    private boolean isAlone(String letters, boolean isSingle, boolean isOther) {
        boolean isAsked = NameWords.isOrdinary(letters) && !needles.isAnswered(letters);
        return !(isOther && isAsked) && needles.isLookedForAlone(secret, letters, isSingle);
    }

    private void forms(Who.Person person, boolean isOther) {
        List<String> given = person.given().stream().map(Folded::letters).filter(name -> !name.isEmpty()).toList();
        String family = stem(String.join(" ", person.family()));
        family(given, family, person.family().size(), isAlone(family, given.isEmpty(), isOther));
        gaelic(given, person);
        halves(given, family, person);
        given.stream().skip(1).filter(name -> name.length() > 2).forEach(middle ->
                family(given.subList(0, 1), middle, 1, false));
        if (!person.particles().isEmpty()) {
            String whole = Folded.letters(String.join("", person.particles())) + family;
            family(given, whole, person.particles().size() + person.family().size(), true);
        }
        if (!given.isEmpty()) {
            joined(given, person);
            texts(person);
        }
    }

    private void gaelic(List<String> given, Who.Person person) {
        String family = String.join(" ", person.family());
        String whole = Folded.letters(String.join("", person.particles()) + family);
        NameSpellings.sonOf(whole).forEach(other ->
                family(given, other, person.family().size() + 1, isAlone(other, given.isEmpty(), true)));
        String rest = NameSpellings.withoutGrandson(family);
        if (!rest.equals(family)) {
            String letters = Folded.letters(rest);
            family(given, letters, person.family().size(), letters.length() >= SHORTEST_STEM && isAlone(letters, false, true));
        }
    }

    private void halves(List<String> given, String family, Who.Person person) {
        for (String half : String.join(" ", person.family()).split("[\\s‐‑-]+")) {
            String letters = stem(half);
            boolean isPart = NameWords.PARTICLES.contains(letters);
            if (letters.length() >= SHORTEST_HALF && !isPart && !letters.equals(family)) {
                boolean alone = letters.length() >= Needle.LONG_ENOUGH && !NameWords.isOrdinary(letters);
                family(given, letters, 1, alone);
            }
        }
    }

    private void texts(Who.Person person) {
        String given = String.join(" ", person.given());
        List<String> names = new ArrayList<>(person.particles());
        names.addAll(person.family());
        String family = String.join(" ", names);
        needles.text(secret, given + " " + family);
        needles.text(secret, NameScripts.isEastAsian(family) ? family + given : family + ", " + given);
    }

    /** Names in either order, also run together as in the name of a file. */
    private void joined(List<String> given, Who.Person person) {
        boolean others = !secret.field().equals(Confidential.PEOPLE);
        String family = Folded.letters(String.join("", person.family()));
        String particles = Folded.letters(String.join("", person.particles()));
        String all = String.join("", given);
        for (String names : new LinkedHashSet<>(List.of(all + family, family + all, given.get(0) + family,
                family + given.get(0), all + particles + family, particles + family + all,
                given.get(0) + particles + family))) {
            if (names.length() > family.length() + 1 || NameScripts.isEastAsian(names)) {
                boolean isLong = names.length() >= Needle.LONG_ENOUGH;
                needles.put(secret, names, others && isLong, isLong && names.charAt(0) < 0x80
                        ? spot -> true : new NameEvidence(List.of(), true, given.size() + person.family().size() + 1));
            }
        }
    }

    private void family(List<String> given, String letters, int words, boolean alone) {
        needles.put(secret, letters, false, new NameEvidence(given, alone, words));
    }

    /** The part that stays when the name is declined: in Greek and Russian the ending changes. */
    private static String stem(String name) {
        String letters = Folded.letters(name);
        String stem = letters.isEmpty() || !NameScripts.isInflected(letters.charAt(0)) ? letters
                : letters.replaceFirst("(?:ე|ი|ა|ος|οσ|ησ|ασ|ου|η|α|ο|ии|ыи|ои|ая|яя|а|я|и|ь|о)$", "");
        return stem.length() >= SHORTEST_STEM ? stem : letters;
    }

    /** An organisation: its own words without those of its form, each two neighbours of them, and each that is no ordinary word. */
    void organisation(List<String> words) {
        List<Integer> own = IntStream.range(0, words.size()).filter(at -> isOwn(words.get(at))).boxed().toList();
        String core = own.stream().map(words::get).map(Folded::letters).collect(Collectors.joining());
        if (own.size() > 1) {
            phrase(core, words.size() + 1);
            for (int at = 0; at + 1 < own.size(); at++) {
                neighbours(words.subList(own.get(at), own.get(at + 1) + 1));
            }
            own.forEach(at -> distinctive(words.get(at)));
        } else if (!core.isEmpty()) {
            needles.put(secret, core, false, new NameEvidence(List.of(), needles.isLookedForAlone(secret, core, true), 1));
            distinctive(words.get(own.get(0)));
        }
    }

    /** A word of an organisation's name by itself, without "'s" or the form written to it, in any spelling of its umlauts. */
    private void distinctive(String word) {
        for (String part : NameParser.withoutForm(POSSESSIVE.matcher(word).replaceFirst("")).split("[‐‑-]")) {
            for (String letters : new LinkedHashSet<>(List.of(Folded.letters(part), Folded.letters(NameSpellings.spelt(part))))) {
                if (letters.length() >= (NameScripts.isEastAsian(word) ? 2 : SHORTEST_WORD) && isOwn(letters)) {
                    needles.put(secret, letters, false, new NameEvidence(List.of(), isAlone(letters, false, true), 1));
                }
            }
        }
    }

    /** Two own words with what stands between them: as written, without it, and with any word for "and". */
    private void neighbours(List<String> words) {
        String first = Folded.letters(words.get(0));
        String second = Folded.letters(words.get(words.size() - 1));
        String between = words.subList(1, words.size() - 1).stream().filter(word -> !NameWords.JOINS.contains(word))
                .map(Folded::letters).collect(Collectors.joining());
        phrase(first + second, words.size() + 1);
        for (String join : NameWords.JOINS) {
            phrase(first + Folded.letters(join) + between + second, words.size() + 1);
        }
    }

    private static boolean isOwn(String word) {
        String letters = Folded.letters(word);
        return !letters.isEmpty() && !NameWords.COMPANIES.contains(letters) && !NameWords.JOINS.contains(word)
                && !NameWords.PARTICLES.contains(letters);
    }

    private void phrase(String letters, int words) {
        needles.put(secret, letters, false, new NameEvidence(List.of(), true, words));
    }
}
