package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReleasesTest {

    /** Worked by hand for 4 min each within 15 min: ⌊15 / 4⌋ = 3 at once for each supervisor. */
    @ParameterizedTest
    @CsvSource({"1, 15, 4, 3", "2, 15, 4, 6", "1, 3, 4, 0", "1, 4, 4, 1"})
    void so_many_are_released_at_once(int supervisors, int within, int each, int expected) {
        assertThat(new Releases(supervisors, within, each).atOnce()).isEqualTo(expected);
    }

    /**
     * Worked by hand for groups of three, 4 min each within 15 min, one supervisor: the second group 2 · 12 − 15 = 9 min
     * later at least; of eight groups, (8 · 12 − 15) / 7 = 11.57, so 12 min.
     */
    @ParameterizedTest
    @CsvSource({"1, 3, 2, 9", "1, 3, 8, 12", "2, 6, 2, 9", "1, 1, 2, 0", "1, 3, 1, 0"})
    void groups_come_so_far_apart(int supervisors, int size, int groups, int expected) {
        assertThat(new Releases(supervisors, 15, 4).apart(size, groups)).isEqualTo(expected);
    }
}
