package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What is shown of a run's progress, by a clock that the test sets. */
class ProgressTest {

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private long seconds;

    @Test
    void a_run_of_less_than_a_second_says_nothing() {
        try (Progress progress = shown(false).of("Cases", 3)) {
            progress.step();
            progress.step();
            progress.step();
        }
        assertThat(said()).isEmpty();
    }

    @Test
    void where_there_is_no_terminal_each_tenth_is_a_line() {
        try (Progress progress = shown(false).of("Cases", 40)) {
            seconds = 2;
            for (int done = 0; done < 40; done++) {
                progress.step();
            }
        }
        assertThat(said().lines()).hasSize(10).startsWith("Cases: 4 of 40", "Cases: 8 of 40").endsWith("Cases: 40 of 40");
    }

    @Test
    void on_a_terminal_a_bar_tells_how_many_how_fast_and_how_long_still() {
        try (Progress progress = shown(true).of("Files", 40)) {
            seconds = 5;
            for (int done = 0; done < 10; done++) {
                progress.step();
            }
            // The bar is drawn by a thread of its own, at the latest when it is taken away.
        }
        assertThat(said()).contains("Files", "10/40", "15 s left");
        assertThat(said().substring(said().lastIndexOf('\r'))).as("taken away").isBlank();
    }

    @Test
    void a_bar_that_was_never_drawn_before_it_is_taken_away_leaves_nothing_either() {
        for (int run = 0; run < 50; run++) {
            said.reset();
            try (Progress progress = shown(true).of("Files", 4)) {
                seconds += 5;
                progress.step();
            }
            assertThat(said().substring(said().lastIndexOf('\r') + 1)).as("run " + run).isEmpty();
        }
    }

    @Test
    void what_is_drawn_after_the_bar_was_taken_away_is_dropped() {
        TerminalLine line = new TerminalLine(new PrintStream(said, true, StandardCharsets.UTF_8), 20);
        line.accept("Files 1/4");
        line.remove();
        String before = said();
        line.accept("Files 2/4");
        line.close();
        assertThat(said()).isEqualTo(before).endsWith("\r");
    }

    private Progress.Shown shown(boolean terminal) {
        return new Progress.Shown(new PrintStream(said, true, StandardCharsets.UTF_8), terminal, 80, () -> seconds * 1_000_000_000L);
    }

    private String said() {
        return said.toString(StandardCharsets.UTF_8);
    }
}
