package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Breaks the way people write owners into persons and organisations. */
final class NameParser {

    private static final int MOST_WORDS = 7;
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}.'’׳״\"-]+");
    private static final Pattern EAST_ASIAN = Pattern.compile("[\\p{IsHan}\\p{IsHiragana}\\p{IsKatakana}\\p{IsHangul}ー]+");
    private static final Pattern ATTACHED_PARTICLE = Pattern.compile("(?iu)^(?:(?:al|el|ad|ar|as|an|at)[-‐‑]|[dl]['’])(?=\\p{L})");

    private NameParser() {
    }

    /** Those named in a text; empty if it holds words that no name has. */
    static Optional<List<Who>> parse(String text) {
        String bare = bare(text);
        if (isOrganisation(bare)) {
            return Optional.of(List.of(new Who.Organisation(words(bare))));
        }
        List<String> parts = Arrays.stream(bare.split(",")).map(String::strip).filter(part -> !part.isEmpty()).toList();
        if (parts.size() == 2 && isInverted(parts)) {
            return person(words(parts.get(1) + " " + parts.get(0))).map(who ->
                    List.of(person(withoutTitles(words(parts.get(1))), words(parts.get(0)))));
        }
        List<Who> all = new ArrayList<>();
        for (String part : parts) {
            Optional<List<Who>> some = joined(words(part));
            if (some.isEmpty() || parts.size() > 1 && some.get().stream().anyMatch(NameParser::isOneWord)) {
                return Optional.empty();
            }
            all.addAll(some.get());
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }

    private static String bare(String text) {
        String bare = text.strip();
        for (String before = ""; !before.equals(bare);) {
            before = bare;
            bare = NameWords.OF_THE_ESTATE.matcher(bare).replaceFirst("").strip();
        }
        return bare;
    }

    /** "Surname, First": what stands before the comma is one name, what stands behind it is no second person. */
    private static boolean isInverted(List<String> parts) {
        List<String> before = words(parts.get(0));
        before.removeIf(word -> NameWords.PARTICLES.contains(Folded.letters(word)));
        return before.size() <= 2 && !before.isEmpty() && !isTitle(before.get(0))
                && words(parts.get(1)).stream().noneMatch(NameWords.JOINS::contains);
    }

    private static boolean isOneWord(Who who) {
        return who instanceof Who.Person person && person.given().isEmpty() && person.family().size() == 1;
    }

    static boolean isOrganisation(String text) {
        List<String> words = words(text);
        return words.stream().map(Folded::letters).anyMatch(NameWords.COMPANIES::contains)
                && !NameScripts.isSmall(text.strip().codePointAt(0))
                || words.stream().anyMatch(word -> !withoutForm(word).equals(word));
    }

    /** A name in Chinese, Japanese or Korean signs without the word for the kind of organisation that is written to it. */
    static String withoutForm(String word) {
        String bare = word;
        if (!word.isEmpty() && NameScripts.isEastAsian(word)) {
            for (String form : NameWords.FORMS_WRITTEN_TO) {
                boolean isLonger = bare.length() > form.length();
                bare = isLonger && bare.endsWith(form) ? bare.substring(0, bare.length() - form.length())
                        : isLonger && bare.startsWith(form) ? bare.substring(form.length()) : bare;
            }
        }
        return bare;
    }

    /** Persons with "and" between them; one without a family's name has that of the next. */
    private static Optional<List<Who>> joined(List<String> words) {
        List<List<String>> groups = new ArrayList<>(List.of(new ArrayList<>()));
        for (int at = 0; at < words.size(); at++) {
            if (joins(words, at)) {
                groups.add(new ArrayList<>());
            } else {
                groups.get(groups.size() - 1).add(words.get(at));
            }
        }
        List<Who> all = new ArrayList<>();
        List<String> family = List.of();
        for (int at = groups.size() - 1; at >= 0; at--) {
            List<String> group = new ArrayList<>(groups.get(at));
            if (withoutTitles(group).size() <= 1 && !family.isEmpty()) {
                group.addAll(family);
            }
            Optional<Who> one = person(group);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            Who.Person person = (Who.Person) one.get();
            family = new ArrayList<>(person.particles());
            family.addAll(person.family());
            all.addAll(0, NameOrders.of(withoutTitles(group)));
            all.add(0, person);
        }
        return Optional.of(all);
    }

    /**
     * "Ana y Juan Gil" are two, "José Ortega y Gasset" is one: what may stand inside a name joins only whole names, and none
     * between two particles, as in "von und zu".
     */
    private static boolean joins(List<String> words, int at) {
        String word = words.get(at);
        boolean isInside = at > 0 && at + 1 < words.size() && isParticle(words.get(at - 1)) && isParticle(words.get(at + 1));
        return NameWords.JOINS.contains(word) && !isInside && (!NameWords.PARTICLES.contains(Folded.letters(word))
                || at + 2 < words.size() || !Character.isLetter(word.charAt(0)) || word.length() > 1);
    }

    private static List<String> withoutTitles(List<String> words) {
        List<String> left = new ArrayList<>(words);
        while (!left.isEmpty() && isTitle(left.get(0)) || left.size() > 1 && isParticle(left.get(0)) && isTitle(left.get(1))) {
            left.remove(0);
        }
        while (left.size() > 1 && NameWords.HONOURS.contains(Folded.letters(left.get(left.size() - 1)))) {
            left.remove(left.size() - 1);
        }
        return left;
    }

    private static boolean isTitle(String word) {
        return NameWords.TITLES.contains(Folded.letters(word));
    }

    private static Optional<Who> person(List<String> written) {
        List<String> words = withoutTitles(written);
        if (words.isEmpty() || words.size() > MOST_WORDS || !words.stream().allMatch(NameParser::isName)) {
            return Optional.empty();
        }
        if (EAST_ASIAN.matcher(words.get(0)).matches()) {
            return Optional.of(new Who.Person(words.subList(1, words.size()), words.subList(0, 1), List.of()));
        }
        int last = words.size() - 1;
        int first = last;
        while (first > 0 && isParticle(words.get(first - 1))) {
            first--;
        }
        if (NameScripts.isSmall(words.get(last).codePointAt(0)) && isParticle(words.get(last))) {
            return Optional.empty();
        }
        return Optional.of(person(words.subList(0, first), words.subList(first, last + 1)));
    }

    /** A person whose names are known apart. */
    static Who.Person person(List<String> given, List<String> family) {
        int first = 0;
        while (first + 1 < family.size() && isParticle(family.get(first))) {
            first++;
        }
        List<String> names = new ArrayList<>(family.subList(first, family.size()));
        names.set(0, withoutParticle(names.get(0)));
        List<String> before = given.stream().filter(word -> !isParticle(word)
                && !isTitle(word) && !NameWords.MAIDEN.contains(Folded.letters(word))).toList();
        return new Who.Person(before, names, family.subList(0, first));
    }

    /** A word without a particle that is written to it, as in "al-Rashid" or "d'Amico". */
    private static String withoutParticle(String word) {
        String bare = ATTACHED_PARTICLE.matcher(word).replaceFirst("");
        return bare.substring(0, 1).toUpperCase(Locale.ROOT) + bare.substring(1);
    }

    private static boolean isParticle(String word) {
        return NameWords.PARTICLES.contains(Folded.letters(word)) && !isInitial(word);
    }

    private static boolean isInitial(String word) {
        return Folded.letters(word).length() == 1 && Character.isUpperCase(word.charAt(0));
    }

    private static boolean isName(String word) {
        return isParticle(word) || NameWords.MAIDEN.contains(Folded.letters(word)) || WORD.matcher(word).matches()
                && !Folded.letters(word).isEmpty()
                && (!NameScripts.isSmall(word.codePointAt(0)) || ATTACHED_PARTICLE.matcher(word).lookingAt());
    }

    /** Words with initials that were written together ("J.R.") taken apart. */
    static List<String> words(String text) {
        return new ArrayList<>(Arrays.stream(text.replaceAll("(?<=\\b\\p{Lu}\\.)(?=\\p{L})", " ").replace(",", " ").strip()
                .split("\\s+")).filter(word -> !word.isEmpty()).toList());
    }
}
