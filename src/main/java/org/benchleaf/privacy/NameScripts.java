package org.benchleaf.privacy;

/** What the script of a name tells about the way it is written. */
final class NameScripts {

    private NameScripts() {
    }

    /** Whether a name is written in Chinese, Japanese or Korean signs. */
    static boolean isEastAsian(String written) {
        Character.UnicodeScript script = Character.UnicodeScript.of(written.codePointAt(0));
        return script == Character.UnicodeScript.HAN || script == Character.UnicodeScript.HANGUL
                || script == Character.UnicodeScript.KATAKANA || script == Character.UnicodeScript.HIRAGANA;
    }

    /** Whether names change their ending by case in the script of a letter. */
    static boolean isInflected(char letter) {
        Character.UnicodeScript script = Character.UnicodeScript.of(letter);
        return script == Character.UnicodeScript.CYRILLIC || script == Character.UnicodeScript.GREEK
                || script == Character.UnicodeScript.DEVANAGARI || script == Character.UnicodeScript.GEORGIAN;
    }

    /** Whether a letter is the small one of a pair; the letters of some scripts, such as Georgian, count as small and begin names. */
    static boolean isSmall(int letter) {
        return Character.isLowerCase(letter) && Character.toTitleCase(letter) != letter;
    }
}
