package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand: 4.3 to 7.4 spans 3.1; a fifth is 0.62, so marks stand every 0.5 from 4 to 7.5. */
class ScaleTest {

    private static final Scale SCALE = Scale.holding(List.of(4.3, 7.4, 5.0), 100, 450);

    @Test
    void marks_are_round_and_hold_every_number() {
        assertThat(SCALE.marks()).first().isEqualTo(4.0);
        assertThat(SCALE.marks()).last().isEqualTo(7.5);
        assertThat(SCALE.marks()).contains(5.0, 6.5);
    }

    @Test
    void a_number_lies_in_proportion() {
        assertThat(SCALE.at(4.0)).isEqualTo(100, within(1e-9));
        assertThat(SCALE.at(7.5)).isEqualTo(450, within(1e-9));
        assertThat(SCALE.at(5.75)).isEqualTo(275, within(1e-9));
    }
}
