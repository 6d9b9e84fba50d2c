package org.benchleaf.privacy;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The bundled words that stand around names, and the ordinary words of English. */
final class NameWords {

    static final Set<String> TITLES;
    static final Set<String> HONOURS;
    static final Set<String> PARTICLES;
    static final Set<String> BEHIND_A_NAME;
    static final Set<String> JOINS;
    static final Set<String> COMPANIES;
    /** Of these, those in Chinese, Japanese and Korean signs, which are written to the name without a space; the longest first. */
    static final List<String> FORMS_WRITTEN_TO;
    static final Set<String> MAIDEN;
    static final List<String> HONORIFICS_AFTER;
    static final Set<String> GIVEN_NAMES;
    static final Set<String> FAMILY_FIRST;
    /** Folded words that tell, in front of a name, that something passed to or from whoever bears it. */
    static final List<String> PASSED_BY;
    /** How many zeros a word behind a number stands for. */
    static final Map<String, Integer> ZEROS;
    static final Pattern OF_THE_ESTATE;
    static final Pattern PROVENANCE_LINK;

    static {
        Properties words = new Properties();
        try (InputStream in = open("name-words.properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        TITLES = set(words, "titles");
        HONOURS = set(words, "honours");
        PARTICLES = set(words, "particles");
        BEHIND_A_NAME = set(words, "behind-a-name");
        JOINS = Set.of(words.getProperty("joins").trim().split("\\s+"));
        COMPANIES = set(words, "companies");
        FORMS_WRITTEN_TO = Arrays.stream(words.getProperty("companies").trim().split("\\s+")).filter(NameScripts::isEastAsian)
                .sorted(Comparator.comparingInt(String::length).reversed()).toList();
        MAIDEN = set(words, "maiden");
        GIVEN_NAMES = set(words, "given-names");
        FAMILY_FIRST = set(words, "family-first");
        PASSED_BY = Arrays.stream(words.getProperty("passed-by").split("\\|")).map(Folded::letters).toList();
        ZEROS = Arrays.stream(words.getProperty("zeros").trim().split("\\s+")).map(pair -> pair.split(":"))
                .collect(Collectors.toUnmodifiableMap(pair -> Folded.letters(pair[0]), pair -> Integer.valueOf(pair[1])));
        HONORIFICS_AFTER = List.of(words.getProperty("honorifics-after").trim().split("\\s+"));
        OF_THE_ESTATE = Pattern.compile("(?iu)^(?:" + alternatives(words, "of-the-estate") + ")\\s+");
        PROVENANCE_LINK = Pattern.compile("(?iu)(?<![\\p{L}\\d])(?:" + alternatives(words, "provenance-links")
                + "|" + String.join("|", words.getProperty("months").trim().split("\\s+"))
                + "|(?:1[0-9]|20)\\d\\d(?:-\\d\\d){0,2}|\\d{1,2}(?:st|nd|rd|th)?)(?![\\p{L}\\d])\\.?");
    }

    private NameWords() {
    }

    private static InputStream open(String name) {
        return NameWords.class.getResourceAsStream("/privacy/" + name);
    }

    private static Set<String> set(Properties words, String key) {
        return Arrays.stream(words.getProperty(key).trim().split("\\s+")).map(Folded::letters)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Longest first, so that "by descent to" is taken before "by descent". */
    private static String alternatives(Properties words, String key) {
        return Arrays.stream(words.getProperty(key).split("\\|")).map(String::trim)
                .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    /** Whether folded letters are an ordinary English word. */
    static boolean isOrdinary(String letters) {
        return Ordinary.WORDS.contains(letters);
    }

    /** Read only when a name is there to be asked about. */
    private static final class Ordinary {
        static final Set<String> WORDS = read();

        private static Set<String> read() {
            try (InputStream in = open("ordinary-words.txt")) {
                return Set.of(new String(in.readAllBytes(), StandardCharsets.US_ASCII).split("\n"));
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }
}
