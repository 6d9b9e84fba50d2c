package org.benchleaf.privacy;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/**
 * A text brought down to what makes a word the same word: small letters without accents, and digits; nothing else.
 *
 * <p>Every spelling of a name ("Brändreth-Voss", "BRANDRETH VOSS", "brandreth_voss") becomes the same letters, and the
 * place of each in the text can be told, so that whole words can be told from parts of words. May be used from several threads;
 * {@link Places} are of one search.
 */
final class Folded {

    private static final Map<Character, String> SPECIAL = Map.ofEntries(Map.entry('ß', "ss"), Map.entry('æ', "ae"),
            Map.entry('œ', "oe"), Map.entry('ø', "o"), Map.entry('ł', "l"), Map.entry('đ', "d"), Map.entry('ð', "d"),
            Map.entry('þ', "th"), Map.entry('ı', "i"),
            // The last letter of a Greek word, and the stroke that only stretches an Arabic one.
            Map.entry('ς', "σ"), Map.entry('\u0640', ""));
    private static final int ASCII = 0x80;
    /** The letters of each sign beyond ASCII, found once: many pages are full of dashes and narrow spaces. */
    private static final String[] OTHERS = new String[Character.MAX_VALUE + 1];

    private final String source;
    private final String letters;

    private Folded(String source, String letters) {
        this.source = source;
        this.letters = letters;
    }

    /** The folded form of a text. */
    static Folded of(String source) {
        return new Folded(source, letters(source));
    }

    /** The folded letters of a value, for use as a needle; they take the place of signs already read. */
    static String letters(String value) {
        char[] signs = value.toCharArray();
        int count = 0;
        for (int at = 0; at < signs.length; at++) {
            char c = signs[at];
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                signs[count++] = c;
            } else if (c >= 'A' && c <= 'Z') {
                signs[count++] = (char) (c + 32);
            } else if (c >= ASCII) {
                String others = others(c);
                if (count + others.length() > at + 1) {
                    return grown(signs, count, at);
                }
                others.getChars(0, others.length(), signs, count);
                count += others.length();
            }
        }
        return new String(signs, 0, count);
    }

    /** Goes on where the letters need more room than the signs they come from, as those of "ß" may. */
    private static String grown(char[] signs, int count, int from) {
        StringBuilder letters = new StringBuilder(signs.length + 16).append(signs, 0, count);
        for (int at = from; at < signs.length; at++) {
            char c = signs[at];
            if (c >= ASCII) {
                letters.append(others(c));
            } else if (count(c) > 0) {
                letters.append(Character.toLowerCase(c));
            }
        }
        return letters.toString();
    }

    String letters() {
        return letters;
    }

    /** The places of the letters in the text, for one search. */
    Places places() {
        return new Places(source);
    }

    /** Tells where letters stand in their text. Counted when asked for, since few are; for one thread. */
    static final class Places {

        private final String source;
        /** The place asked for last, and how many letters stand before it: places are asked for in order. */
        private int at;
        private int lettersBefore;

        private Places(String source) {
            this.source = source;
        }

        /** Where in the text the letters from start to end (exclusive) stand. */
        Spot spot(int start, int end) {
            if (start < lettersBefore) {
                at = 0;
                lettersBefore = 0;
            }
            while (lettersBefore + count(source.charAt(at)) <= start) {
                lettersBefore += count(source.charAt(at++));
            }
            int last = at;
            for (int letters = lettersBefore + count(source.charAt(at)); letters < end; letters += count(source.charAt(last))) {
                last++;
            }
            return new Spot(source, at, last + 1);
        }
    }

    private static int count(char c) {
        return c >= ASCII ? others(c).length()
                : c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' ? 1 : 0;
    }

    private static String others(char c) {
        String known = OTHERS[c];
        if (known == null) {
            known = decomposed(c);
            OTHERS[c] = known;
        }
        return known;
    }

    private static String decomposed(char c) {
        char small = Character.toLowerCase(c);
        String special = SPECIAL.get(small);
        String plain = special != null ? special
                : Normalizer.normalize(String.valueOf(small), Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        StringBuilder letters = new StringBuilder(2);
        for (int i = 0; i < plain.length(); i++) {
            if (Spot.isOfWord(plain.charAt(i))) {
                letters.append(Character.isDigit(plain.charAt(i))
                        ? (char) ('0' + Character.digit(plain.charAt(i), 10)) : plain.charAt(i));
            }
        }
        return letters.toString();
    }
}
