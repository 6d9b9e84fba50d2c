package org.benchleaf.compose;

/** Fragments of a case file as sentences of a page. */
final class WholeSentence {

    private WholeSentence() {
    }

    /** The text with a capital at its beginning and a stop at its end. */
    static String of(String fragment) {
        String capital = Words.capital(fragment.strip());
        return capital.matches("(?s).*[.!?]") ? capital : capital + ".";
    }
}
