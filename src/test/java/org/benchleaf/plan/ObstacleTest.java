package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected values worked by hand. */
class ObstacleTest {

    private static final List<WorkPart> PARTS = List.of(new WorkPart("mist", 8), new WorkPart("release", 4),
            new WorkPart("lower", 4));
    private static final List<SharedThing> ONE = List.of(new SharedThing("supervisor", 1, SharedThing.Kind.STAFF));

    private static List<Obstacle> obstacles(List<Claim> claims, int limit, List<Closure> closures) {
        Station station = new Station("station 1", 0, PARTS, claims, List.of(new TimeLimit(0, 2, limit, true)));
        return Obstacle.of(new Classroom(ONE, List.of(station), closures, 60));
    }

    @Test
    void a_class_with_room_for_everything_has_none() {
        assertThat(obstacles(List.of(SmallClass.during(1, 0, 1)), 4, List.of())).isEmpty();
    }

    /** Between mist and lowering the release takes 4 min, and 3 are allowed. */
    @Test
    void a_limit_shorter_than_what_lies_in_it_is_a_contradiction() {
        assertThat(obstacles(List.of(), 3, List.of())).singleElement()
                .isInstanceOfSatisfying(Obstacle.Contradiction.class, found -> {
                    assertThat(found.between()).isEqualTo(4);
                    assertThat(found.limit().minutes()).isEqualTo(3);
                });
    }

    @Test
    void a_part_that_takes_more_than_there_is_is_named() {
        assertThat(obstacles(List.of(SmallClass.during(1, 0, 2)), 15, List.of())).singleElement()
                .isInstanceOfSatisfying(Obstacle.TooMuch.class, found -> {
                    assertThat(found.part()).isEqualTo(1);
                    assertThat(found.amount()).isEqualTo(2);
                });
    }

    /** The supervisor is away from minute 10 on, so that a release after 8 min of mist is never over. */
    @Test
    void a_part_for_which_nobody_is_ever_there_is_named() {
        assertThat(obstacles(List.of(SmallClass.during(1, 0, 1)), 15, List.of(new Closure(0, 10, 60)))).singleElement()
                .isInstanceOfSatisfying(Obstacle.NoRoom.class, found -> assertThat(found.part()).isEqualTo(1));
    }
}
