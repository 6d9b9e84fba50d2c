package org.benchleaf.pack;

/**
 * Where a word was found in a text.
 *
 * @param text the whole of it
 * @param start where the word's first letter stands
 * @param end behind its last
 */
record Spot(String text, int start, int end) {

    /** Whether the word stands alone: no letter goes on before or after it. */
    boolean isWhole() {
        return isEdge(start - 1, start) && isEdge(end - 1, end);
    }

    /** What stands near the word, itself included. */
    String around(int reach) {
        return text.substring(Math.max(0, start - reach), Math.min(text.length(), end + reach));
    }

    /** The word with all that stands between its letters. */
    String written() {
        return text.substring(start, end);
    }

    /** Whether a word ends between two neighbours: at a sign, or where small letter meets capital or letter meets digit. */
    private boolean isEdge(int left, int right) {
        if (left < 0 || right >= text.length()) {
            return true;
        }
        char a = text.charAt(left);
        char b = text.charAt(right);
        return !Character.isLetterOrDigit(a) || !Character.isLetterOrDigit(b)
                || Character.isLowerCase(a) && Character.isUpperCase(b)
                || Character.isDigit(a) != Character.isDigit(b);
    }
}
