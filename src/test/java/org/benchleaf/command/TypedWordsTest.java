package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Words that a poor locale has damaged are read again as they were typed. */
class TypedWordsTest {

    @Test
    void the_last_words_of_the_command_line_are_those_that_were_typed() {
        byte[] line = "java\0-jar\0benchleaf.jar\0calculate\0temperature=25 °C\0\0".getBytes(StandardCharsets.UTF_8);
        assertThat(TypedWords.last(new String[] {"calculate", "temperature=25 \uFFFD\uFFFDC", ""}, line))
                .containsExactly("calculate", "temperature=25 °C", "");
    }

    @Test
    void a_command_line_that_is_too_short_changes_nothing() {
        String[] words = {"a", "b\uFFFD", "c"};
        assertThat(TypedWords.last(words, "java\0".getBytes(StandardCharsets.UTF_8))).isSameAs(words);
    }

    @Test
    void undamaged_words_are_taken_as_handed_over() {
        String[] words = {"calculate", "temperature=25 °C"};
        assertThat(TypedWords.of(words)).isSameAs(words);
    }
}
