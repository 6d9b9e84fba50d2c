package org.benchleaf.words;

/** Fragments of a case file as sentences of a page. */
public final class WholeSentence {

    private WholeSentence() {
    }

    /** The text with a capital at its beginning and a stop at its end. */
    public static String of(String fragment) {
        String capital = Words.capital(fragment.strip());
        return capital.matches("(?s).*[.!?]") ? capital : capital + ".";
    }
}
