package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand: 4.3 to 7.4 spans 3.1; a fifth is 0.62, so marks stand every 0.5 from 4 to 7.5. */
class AxisScaleTest {

    private static final AxisScale SCALE = AxisScale.holding(List.of(4.3, 7.4, 5.0), 100, 450);

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

    @Test
    void a_scale_across_the_zero_marks_it() {
        AxisScale scale = AxisScale.holding(List.of(-68.8, -11.7, 0.0), 0, 100);
        assertThat(scale.marks()).contains(0.0);
        assertThat(scale.at(0)).isBetween(0.0, 100.0);
    }

    @Test
    void readings_that_are_all_alike_still_have_a_scale() {
        AxisScale scale = AxisScale.holding(List.of(7.0, 7.0), 0, 100);
        assertThat(scale.at(7.0)).isBetween(0.0, 100.0);
        assertThat(scale.marks()).hasSizeGreaterThan(1);
    }

    @Test
    void marks_are_told_with_the_decimals_that_keep_them_apart() {
        assertThat(SCALE.decimals()).isEqualTo(1);
        assertThat(AxisScale.holding(List.of(0.0, 60.0), 0, 1).decimals()).isZero();
        assertThat(AxisScale.holding(List.of(7.01, 7.06), 0, 1).decimals()).isEqualTo(2);
    }
}
