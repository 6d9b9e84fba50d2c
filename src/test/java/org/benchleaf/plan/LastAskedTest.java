package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LastAskedTest {

    private final List<String> made = Collections.synchronizedList(new ArrayList<>());
    private final LastAsked<String, String> two = new LastAsked<>(2);

    private String ask(String key) {
        return two.of(key, asked -> {
            made.add(asked);
            return "of " + asked;
        });
    }

    @Test
    void where_one_is_too_many_that_goes_which_was_not_asked_for_the_longest() {
        List.of("one", "two", "one", "three", "one", "three").forEach(key -> assertThat(ask(key)).isEqualTo("of " + key));
        assertThat(made).containsExactly("one", "two", "three");
        ask("two");
        ask("three");
        assertThat(made).containsExactly("one", "two", "three", "two");
    }

    @Test
    void what_many_threads_ask_for_is_made_once() {
        assertThat(IntStream.range(0, 100).parallel().mapToObj(number -> ask("one"))).containsOnly("of one");
        assertThat(made).containsExactly("one");
    }

    @Test
    void what_could_not_be_made_is_tried_again() {
        assertThatThrownBy(() -> two.of("one", asked -> {
            throw new IllegalArgumentException(asked);
        })).hasMessage("one");
        assertThat(ask("one")).isEqualTo("of one");
    }
}
