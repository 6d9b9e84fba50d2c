package org.benchleaf.privacy;

/**
 * Where a word was found in a text.
 *
 * @param text the whole of it
 * @param start where the word's first letter stands
 * @param end behind its last
 */
record Spot(String text, int start, int end) {

    private static final char AFTER_LATIN = 0x0250;
    private static final char LATIN_ADDITIONS = 0x1E00;
    private static final char AFTER_LATIN_ADDITIONS = 0x1F00;
    /** Signs of vowels carry the word in the scripts of India; in all others marks are accents. */
    private static final char FIRST_INDIC = 0x0900;
    private static final char LAST_INDIC = 0x0DFF;

    /** Whether the word stands alone: no letter goes on before or after it. */
    boolean isWhole() {
        return isEdge(start - 1, start) && isEdge(end - 1, end);
    }

    /** The part of the same word that stands before it; empty if the word begins here. */
    String prefix() {
        int from = start;
        while (!isEdge(from - 1, from)) {
            from--;
        }
        return text.substring(from, start);
    }

    /** The part of the same word that stands behind it; empty if the word ends here. */
    String suffix() {
        int to = end;
        while (!isEdge(to - 1, to)) {
            to++;
        }
        return text.substring(end, to);
    }

    /** What stands near the word, itself included. */
    String around(int reach) {
        return text.substring(Math.max(0, start - reach), Math.min(text.length(), end + reach));
    }

    /** The word with all that stands between its letters. */
    String written() {
        return text.substring(start, end);
    }

    /**
     * Whether a word ends between two neighbours: at a sign, or where small letter meets capital, letter meets digit or Latin another
     * script.
     */
    private boolean isEdge(int left, int right) {
        if (left < 0 || right >= text.length()) {
            return true;
        }
        char a = text.charAt(left);
        char b = text.charAt(right);
        return !isOfWord(a) || !isOfWord(b)
                || Character.isLowerCase(a) && Character.isUpperCase(b)
                || Character.isDigit(a) != Character.isDigit(b)
                || isLatin(a) != isLatin(b) && Character.isLetter(a) && Character.isLetter(b);
    }

    private static boolean isLatin(char letter) {
        return letter < AFTER_LATIN || letter >= LATIN_ADDITIONS && letter < AFTER_LATIN_ADDITIONS;
    }

    /** Whether a sign is part of a word: a letter, a digit, or a sign of a vowel in a script of India. */
    static boolean isOfWord(char c) {
        return Character.isLetterOrDigit(c) || c >= FIRST_INDIC && c <= LAST_INDIC && isMark(c);
    }

    private static boolean isMark(char c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }
}
