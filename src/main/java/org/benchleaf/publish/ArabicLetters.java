package org.benchleaf.publish;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Arabic letters in the shapes in which they join, as a layout needs them that knows no rules of joining.
 *
 * <p>A letter has up to four shapes; which of them stands is told by whether the letters beside it join it. Source: The Unicode Standard,
 * chapter 9, Arabic, cursive joining, and the block Arabic Presentation Forms-B, whose names and compatibility decompositions the
 * running Java knows.
 */
final class ArabicLetters {

    private static final int FIRST = 0xFE80;
    private static final int LAST = 0xFEFC;
    private static final char STRETCH = '\u0640';
    private static final int LETTERS_OF_LIGATURE = 2;

    /** The shapes of a letter, or of the two letters of a ligature; nought where it has none. */
    private static final class Shapes {
        private char alone;
        private char first;
        private char middle;
        private char last;
    }

    private static final Map<String, Shapes> SHAPES = shapes();

    private ArabicLetters() {
    }

    private static Map<String, Shapes> shapes() {
        Map<String, Shapes> shapes = new HashMap<>();
        for (int at = FIRST; at <= LAST; at++) {
            String name = Character.getName(at);
            Shapes of = shapes.computeIfAbsent(Normalizer.normalize(Character.toString(at), Normalizer.Form.NFKD), any -> new Shapes());
            // The decomposition of a letter with hamza or madda is two characters; its composed form is the letter as it is typed.
            if (name.endsWith("ISOLATED FORM")) {
                of.alone = (char) at;
            } else if (name.endsWith("INITIAL FORM")) {
                of.first = (char) at;
            } else if (name.endsWith("MEDIAL FORM")) {
                of.middle = (char) at;
            } else {
                of.last = (char) at;
            }
        }
        Map<String, Shapes> typed = new HashMap<>();
        shapes.forEach((letters, of) -> typed.put(Normalizer.normalize(letters, Normalizer.Form.NFC), of));
        return typed;
    }

    /** Whether a letter has shapes here. */
    static boolean has(int letter) {
        return letter == STRETCH || SHAPES.containsKey(Character.toString(letter));
    }

    /** A text with its Arabic letters in their shapes, in the order in which it is read; ligatures of lam and alif are one letter. */
    static String shaped(String text) {
        StringBuilder shaped = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            int next = after(text, at);
            String pair = next < text.length() ? "" + text.charAt(at) + text.charAt(next) : "";
            boolean isLigature = next == at + 1 && pair.length() == LETTERS_OF_LIGATURE && SHAPES.containsKey(pair);
            String letters = isLigature ? pair : String.valueOf(text.charAt(at));
            Shapes shapes = SHAPES.get(letters);
            shaped.append(shapes == null ? text.charAt(at) : shape(shapes, joinsNext(text, before(text, at)),
                    joins(text, isLigature ? after(text, at + 1) : next)));
            at += letters.length();
        }
        return shaped.toString();
    }

    private static char shape(Shapes of, boolean isJoined, boolean joinsNext) {
        char both = isJoined && joinsNext ? of.middle : 0;
        char joined = both != 0 ? both : isJoined ? of.last : joinsNext ? of.first : 0;
        return joined != 0 ? joined : of.alone;
    }

    /** Whether the letter there can be joined by the one before it. */
    private static boolean joins(String text, int at) {
        Shapes shapes = at < text.length() ? SHAPES.get(String.valueOf(text.charAt(at))) : null;
        return at < text.length() && (text.charAt(at) == STRETCH || shapes != null && shapes.last != 0);
    }

    /** Whether the letter there joins the one after it. */
    private static boolean joinsNext(String text, int at) {
        Shapes shapes = at >= 0 ? SHAPES.get(String.valueOf(text.charAt(at))) : null;
        return at >= 0 && (text.charAt(at) == STRETCH || shapes != null && shapes.first != 0);
    }

    private static int before(String text, int at) {
        int before = at - 1;
        while (before >= 0 && isMark(text.charAt(before))) {
            before--;
        }
        return before;
    }

    private static int after(String text, int at) {
        int after = at + 1;
        while (after < text.length() && isMark(text.charAt(after))) {
            after++;
        }
        return after;
    }

    /** A mark above or below a letter stands between no letters. */
    private static boolean isMark(char letter) {
        return Character.getType(letter) == Character.NON_SPACING_MARK;
    }
}
