package org.benchleaf.privacy;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Other spellings of a name in the same letters: "Müller" and "Mueller", "MacGill" and "McGill", "O'Shea" and "Shea". */
final class NameSpellings {

    private static final Map<String, String> SPELT_OUT = Map.of("ä", "ae", "ö", "oe", "ü", "ue", "å", "aa", "ø", "oe",
            "Ä", "Ae", "Ö", "Oe", "Ü", "Ue");
    private static final Pattern SHORTENED = Pattern.compile("(?i)([aou])e(?=[b-df-hj-np-tv-z])");
    private static final Pattern SON_OF = Pattern.compile("^(?:mac|mc)(?=\\p{L}{4})");
    private static final Pattern GRANDSON_OF = Pattern.compile("^(?i:o|ó)['’‘`´]");

    private NameSpellings() {
    }

    /** The whole name with its umlauts spelt out, and with letters that may be such put together. */
    static Set<Who.Person> umlauts(Who.Person person) {
        Set<Who.Person> others = new LinkedHashSet<>();
        others.add(new Who.Person(spelt(person.given()), spelt(person.family()), person.particles()));
        others.add(new Who.Person(shortened(person.given()), shortened(person.family()), person.particles()));
        others.remove(person);
        return others;
    }

    /** A word with its umlauts spelt out. */
    static String spelt(String word) {
        String other = Normalizer.normalize(word, Normalizer.Form.NFC);
        for (Map.Entry<String, String> letter : SPELT_OUT.entrySet()) {
            other = other.replace(letter.getKey(), letter.getValue());
        }
        return other;
    }

    private static List<String> spelt(List<String> words) {
        return words.stream().map(NameSpellings::spelt).toList();
    }

    private static List<String> shortened(List<String> words) {
        return words.stream().map(word -> SHORTENED.matcher(word).replaceAll("$1")).toList();
    }

    /** A folded Gaelic name with each form of "son of" in front of it; empty if it has none. */
    static List<String> sonOf(String letters) {
        Matcher son = SON_OF.matcher(letters);
        return son.find() ? List.of(son.replaceFirst("mac"), son.replaceFirst("mc"), son.replaceFirst("m")) : List.of();
    }

    /** A family name without the Irish "grandson of". */
    static String withoutGrandson(String family) {
        return GRANDSON_OF.matcher(family).replaceFirst("");
    }
}
