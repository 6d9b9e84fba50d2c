package org.benchleaf.pack;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;

/**
 * A text brought down to what makes a word the same word: small letters without accents, and digits; nothing else.
 *
 * <p>Every spelling of a name ("Brändreth-Voss", "BRANDRETH VOSS", "brandreth_voss") becomes the same letters, and
 * each letter remembers where it stood, so that whole words can be told from parts of words.
 */
final class Folded {

    private static final Map<Character, String> SPECIAL = Map.of('ß', "ss", 'æ', "ae", 'œ', "oe", 'ø', "o", 'ł', "l",
            'đ', "d", 'ð', "d", 'þ', "th", 'ı', "i");

    private final String source;
    private char[] found;
    private int[] origins;
    private int count;
    private String letters = "";

    private Folded(String source) {
        this.source = source;
        this.found = new char[Math.max(16, source.length())];
        this.origins = new int[found.length];
    }

    /** The folded form of a text. */
    static Folded of(String source) {
        Folded folded = new Folded(source);
        for (int at = 0; at < source.length(); at++) {
            char c = source.charAt(at);
            if (c < 0x80) {
                folded.ascii(c, at);
            } else {
                folded.other(c, at);
            }
        }
        folded.close();
        return folded;
    }

    /** The folded letters of a value, for use as a needle. */
    static String letters(String value) {
        return of(value).letters;
    }

    String letters() {
        return letters;
    }

    /** Whole files are folded: what was set aside for more letters than there are is given back. */
    private void close() {
        letters = new String(found, 0, count);
        found = new char[0];
        origins = Arrays.copyOf(origins, count);
    }

    /** Where in the source the letter stood. */
    int origin(int index) {
        return origins[index];
    }

    /** Whether the letters from start to end (exclusive) stand alone: no letter goes on before or after them. */
    boolean isWhole(int start, int end) {
        return isEdge(origins[start] - 1, origins[start]) && isEdge(origins[end - 1], origins[end - 1] + 1);
    }

    /** The part of the source around the letters, for looking at what stands near. */
    String around(int start, int end, int reach) {
        return source.substring(Math.max(0, origins[start] - reach),
                Math.min(source.length(), origins[end - 1] + 1 + reach));
    }

    /** What the source has from the first letter to the last. */
    String written(int start, int end) {
        return source.substring(origins[start], origins[end - 1] + 1);
    }

    private void ascii(char c, int at) {
        if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
            add(c, at);
        } else if (c >= 'A' && c <= 'Z') {
            add((char) (c + 32), at);
        }
    }

    private void other(char c, int at) {
        char small = Character.toLowerCase(c);
        String plain = SPECIAL.getOrDefault(small, String.valueOf(small));
        String decomposed = plain.equals(String.valueOf(small))
                ? Normalizer.normalize(plain, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT) : plain;
        for (int i = 0; i < decomposed.length(); i++) {
            if (Character.isLetterOrDigit(decomposed.charAt(i))) {
                add(decomposed.charAt(i), at);
            }
        }
    }

    private void add(char letter, int at) {
        if (count == found.length) {
            found = Arrays.copyOf(found, count * 2);
            origins = Arrays.copyOf(origins, count * 2);
        }
        origins[count] = at;
        found[count++] = letter;
    }

    /** Whether a word ends between two neighbours: at a sign, or where small letter meets capital or letter meets digit. */
    private boolean isEdge(int left, int right) {
        if (left < 0 || right >= source.length()) {
            return true;
        }
        char a = source.charAt(left);
        char b = source.charAt(right);
        return !Character.isLetterOrDigit(a) || !Character.isLetterOrDigit(b)
                || Character.isLowerCase(a) && Character.isUpperCase(b)
                || Character.isDigit(a) != Character.isDigit(b);
    }
}
