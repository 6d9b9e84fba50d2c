package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FloorTest {

    /**
     * Worked by hand. Before the wax 20 + 15 + 25 = 60 min, 8 min of wax a station, after it 5 + 25 + 4 + 3 + 6 + 8 + 3 + 4 +
     * 20 + 5 + 3 + 20 + 5 + 3 + 20 + 10 + 2 + 10 = 156 min: six stations on one plate 60 + 48 + 156 = 264, twelve 60 + 96 +
     * 156 = 312. On two plates the hood decides: 20 + 6 · 15 / 2 + 189 = 254. For 24 stations the meter: 105 before its
     * work, 24 · 12 = 288 at it, 42 after it, 435.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 1, 264, hot plate, 60, 48, 156",
        "6, 2, 254, hood, 20, 90, 189",
        "12, 1, 312, hot plate, 60, 96, 156",
        "24, 1, 435, pH meter, 105, 288, 42",
    })
    void the_floor_is_the_one_worked_by_hand(int stations, int plates, int minutes, String thing, int before, int work,
            int after) {
        Classroom classroom = WashingClass.of(stations, 1, plates, List.of());
        Floor floor = Floor.of(classroom);
        assertThat(floor.minutes()).isEqualTo(minutes);
        assertThat(classroom.things().get(floor.thing().orElseThrow()).name()).isEqualTo(thing);
        assertThat(List.of(floor.before(), floor.work(), floor.after())).containsExactly(before, work, after);
    }

    /** Worked by hand: the parts of one station are 60 + 8 + 156 = 224 min long. */
    @Test
    void a_station_alone_takes_as_long_as_its_parts() {
        Floor floor = Floor.of(WashingClass.of(1, 1));
        assertThat(floor.minutes()).isEqualTo(224);
        assertThat(floor.thing()).isEmpty();
    }

    /** Worked by hand: with two meters, 24 stations share two sinks for 26 min each after 105 min: 105 + 24 · 26 / 2 = 417. */
    @Test
    void a_second_meter_leaves_the_sinks_to_decide() {
        Classroom classroom = WashingClass.of(24, 1).withOneMore(1);
        Floor floor = Floor.of(classroom);
        assertThat(floor.minutes()).isEqualTo(417);
        assertThat(classroom.things().get(floor.thing().orElseThrow()).name()).isEqualTo("sink");
    }

    /** Worked by hand: (360 − 105 − 42) / 12 = 17.75, so that 17 stations fit into six hours on one meter. */
    @Test
    void seventeen_stations_fit_into_six_hours() {
        Classroom classroom = WashingClass.of(24, 1);
        assertThat(IntStream.rangeClosed(1, 24).filter(count -> Floor.of(classroom.withFirst(count)).minutes() <= 360)
                .max()).hasValue(17);
    }

    /** Worked by hand: of 24 min of work, 20 lie before the break from 20 to 40 and 4 after it: 44. */
    @Test
    void a_break_moves_the_work_of_people_behind_it() {
        Station wax = new Station("wax", 0, List.of(new WorkPart("wax", 8)),
                List.of(SmallClass.during(0, 0, 1)), List.of());
        Classroom classroom = new Classroom(List.of(new SharedThing("technician", 1, SharedThing.Kind.STAFF)),
                List.of(wax, wax, wax), List.of(new Closure(0, 20, 40)), 100);
        assertThat(Floor.of(classroom).minutes()).isEqualTo(44);
    }

    @Test
    void hours_beyond_the_horizon_and_before_the_class_change_nothing() {
        Classroom classroom = WashingClass.of(6, 1, 1, List.of(new Closure(4, -60, -10), new Closure(4, 2000, 3000)));
        assertThat(Floor.of(classroom).minutes()).isEqualTo(264);
    }
}
