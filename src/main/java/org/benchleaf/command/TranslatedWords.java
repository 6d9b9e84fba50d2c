package org.benchleaf.command;

import java.util.List;
import java.util.stream.Stream;

/**
 * Words of a translation with what its file has beside them.
 *
 * @param address of the text of the case; empty words may stand at it
 * @param words in the language of the translation
 * @param mark of the words of the case that they were made from; empty if the file has none
 * @param shown the words of the case that the file shows beside them; empty if it shows none
 * @param before the words of the case that they were made from, where the file shows these too; else empty
 * @param notes comments of the translator, each without its sign
 */
record TranslatedWords(String address, String words, String mark, String shown, String before, List<String> notes) {

    TranslatedWords {
        notes = List.copyOf(notes);
    }

    /** A text that nobody has translated yet. */
    static TranslatedWords none(String address, String mark) {
        return new TranslatedWords(address, "", mark, "", "", List.of());
    }

    boolean areThere() {
        return !words.isBlank();
    }

    /** The same words for a text at another address. */
    TranslatedWords at(String other) {
        return new TranslatedWords(other, words, mark, shown, before, notes);
    }

    /** The same words, said to be made from others of the case. */
    TranslatedWords madeFrom(String otherMark, String otherWords) {
        return new TranslatedWords(address, words, otherMark, shown, otherWords, notes);
    }

    TranslatedWords with(List<String> more) {
        return new TranslatedWords(address, words, mark, shown, before, Stream.concat(more.stream(), notes.stream()).toList());
    }
}
