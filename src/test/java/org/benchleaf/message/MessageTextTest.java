package org.benchleaf.message;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a terminal shows of names and lines that hold signs nobody sees. */
class MessageTextTest {

    /** Escape (U+001B) moves the cursor; U+202E turns the direction of letters (Unicode Standard Annex 9, section 2.2). */
    @Test
    void signs_that_nobody_sees_are_spelt_out_in_names_and_hidden_in_excerpts() {
        String name = "a\u001B[2Jb\u202Ecod.txt";
        SourceText text = new SourceText(name, "the\u202E line\u001B");
        String told = MessageText.of(ReadingMessages.CASE_NAME.at(Place.at(text, 1, 1), "name", name));
        assertThat(told).contains("a<U+001B>[2Jb<U+202E>cod.txt:1:1: error READ-018", "1 | the· line·");
        assertThat(told.replace("\n", "")).doesNotContainPattern("[\\p{Cc}\\u202E]");
    }
}
