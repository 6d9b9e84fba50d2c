package org.benchleaf.compose.part;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.tartarus.snowball.SnowballStemmer;
import org.tartarus.snowball.ext.danishStemmer;
import org.tartarus.snowball.ext.dutchStemmer;
import org.tartarus.snowball.ext.englishStemmer;
import org.tartarus.snowball.ext.finnishStemmer;
import org.tartarus.snowball.ext.frenchStemmer;
import org.tartarus.snowball.ext.germanStemmer;
import org.tartarus.snowball.ext.hungarianStemmer;
import org.tartarus.snowball.ext.italianStemmer;
import org.tartarus.snowball.ext.norwegianStemmer;
import org.tartarus.snowball.ext.portugueseStemmer;
import org.tartarus.snowball.ext.romanianStemmer;
import org.tartarus.snowball.ext.russianStemmer;
import org.tartarus.snowball.ext.spanishStemmer;
import org.tartarus.snowball.ext.swedishStemmer;
import org.tartarus.snowball.ext.turkishStemmer;

/**
 * The stems of the words of a text, by the Snowball stemmer of its language; a language without one keeps its words whole.
 *
 * <p>A stem that its own word does not begin with, as "studi" of "study", is cut to what both share, so that the page can find
 * each stem at the beginning of what a reader types. The script of the search spells words in the same way.
 */
public final class Stems {

    private static final Map<String, Supplier<SnowballStemmer>> STEMMERS = Map.ofEntries(
            Map.entry("da", danishStemmer::new), Map.entry("de", germanStemmer::new), Map.entry("en", englishStemmer::new),
            Map.entry("es", spanishStemmer::new), Map.entry("fi", finnishStemmer::new), Map.entry("fr", frenchStemmer::new),
            Map.entry("hu", hungarianStemmer::new), Map.entry("it", italianStemmer::new), Map.entry("nl", dutchStemmer::new),
            Map.entry("no", norwegianStemmer::new), Map.entry("pt", portugueseStemmer::new), Map.entry("ro", romanianStemmer::new),
            Map.entry("ru", russianStemmer::new), Map.entry("sv", swedishStemmer::new), Map.entry("tr", turkishStemmer::new));
    private static final int MARKS =
            1 << Character.NON_SPACING_MARK | 1 << Character.COMBINING_SPACING_MARK | 1 << Character.ENCLOSING_MARK;
    private static final int NUMBERS =
            1 << Character.DECIMAL_DIGIT_NUMBER | 1 << Character.LETTER_NUMBER | 1 << Character.OTHER_NUMBER;
    private static final Pattern SIGNS = Pattern.compile("\\p{M}+");
    /** Letters that are written in two ways, one of which has no parts in Unicode that could be left out. */
    private static final Map<String, String> SPELLINGS = Map.of("œ", "oe", "æ", "ae", "\u0640", "", "ى", "ي", "ة", "ه");
    /**
     * The Arabic article, alone or behind what is written together with it: Larkey, Ballesteros and Connell (2002), Improving stemming
     * for Arabic information retrieval, SIGIR 2002, table 2, light8 (from memory).
     */
    private static final List<String> ARTICLES = List.of("وال", "بال", "كال", "فال", "ال");
    private static final int SHORTEST = 3;
    private static final int LONGEST = 40;
    /** Short words that are looked for all the same. */
    private static final Set<String> SHORT = Set.of("ph");
    /** English words that stand on every page and tell nothing (from memory of the list of the Snowball project). */
    private static final Set<String> UNSEARCHED = Set.of("the", "and", "that", "this", "with", "for", "are", "was", "were", "has",
            "have", "had", "not", "but", "its", "from", "they", "them", "their", "there", "then", "than", "which", "who", "whom",
            "what", "when", "where", "into", "been", "being", "does", "did", "will", "would", "can", "could", "may", "must", "any",
            "all", "each", "one", "other", "others", "only", "also", "more", "most", "some", "such", "you", "your", "how", "why",
            "out", "off", "over", "under", "after", "before", "between", "per", "here", "these", "those", "his", "her", "our");

    private final SnowballStemmer stemmer;
    private final boolean english;
    private final Map<String, String> found = new HashMap<>();

    private Stems(String language) {
        stemmer = STEMMERS.containsKey(language) ? STEMMERS.get(language).get() : null;
        english = language.equals("en");
    }

    /** The stems of a language by its BCP 47 tag; for one thread. */
    public static Stems in(String tag) {
        return new Stems(Locale.forLanguageTag(tag).getLanguage());
    }

    /** The stems of a text in its order, as often as they stand in it; numbers and very common words are left out. */
    public List<String> of(String text) {
        List<String> stems = new ArrayList<>();
        int length = text.length();
        for (int from = 0; from < length;) {
            int to = from;
            while (to < length && isOfWord(text.codePointAt(to))) {
                to += Character.charCount(text.codePointAt(to));
            }
            if (to > from) {
                String stem = found.computeIfAbsent(text.substring(from, to), this::counted);
                if (!stem.isEmpty()) {
                    stems.add(stem);
                }
            }
            from = to == length ? to : to + Character.charCount(text.codePointAt(to));
        }
        return stems;
    }

    /** Whether it is part of a word: a letter, a digit, or a sign on one. */
    private static boolean isOfWord(int point) {
        return Character.isLetter(point) || isNumber(point) || (1 << Character.getType(point) & MARKS) != 0;
    }

    private static boolean isNumber(int point) {
        return (1 << Character.getType(point) & NUMBERS) != 0;
    }

    /** The stem of a word as it is written; empty if it is left out. */
    private String counted(String word) {
        String bare = withoutArticle(plain(word));
        return counts(bare) ? stem(bare) : "";
    }

    /** The letters of a text as they are looked for: small, without signs, in one spelling. */
    public static String plain(String text) {
        String plain = SIGNS.matcher(Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)).replaceAll("");
        for (Map.Entry<String, String> spelling : SPELLINGS.entrySet()) {
            plain = plain.replace(spelling.getKey(), spelling.getValue());
        }
        return plain;
    }

    private static String withoutArticle(String word) {
        for (String article : ARTICLES) {
            if (word.startsWith(article) && word.length() - article.length() >= SHORTEST) {
                return word.substring(article.length());
            }
        }
        return word;
    }

    private boolean counts(String word) {
        return (word.length() >= SHORTEST && word.length() <= LONGEST || SHORT.contains(word))
                && !word.codePoints().allMatch(Stems::isNumber) && !(english && UNSEARCHED.contains(word));
    }

    private String stem(String word) {
        if (stemmer == null) {
            return word;
        }
        stemmer.setCurrent(word);
        stemmer.stem();
        String stem = stemmer.getCurrent();
        int shared = 0;
        while (shared < stem.length() && shared < word.length() && stem.charAt(shared) == word.charAt(shared)) {
            shared++;
        }
        return shared < SHORTEST ? word : word.substring(0, shared);
    }
}
