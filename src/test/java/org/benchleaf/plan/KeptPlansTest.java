package org.benchleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeptPlansTest {

    @Test
    void the_same_class_gets_the_same_plan_and_another_its_own() {
        Classroom six = WashingClass.of(6, 1);
        Optional<Timetable> plan = KeptPlans.plan(six, Floor.of(six));
        assertThat(plan).isEqualTo(Planner.plan(six, Floor.of(six)));
        assertThat(KeptPlans.plan(WashingClass.of(6, 1), Floor.of(six))).isSameAs(plan);
        Classroom more = WashingClass.of(6, 2);
        assertThat(KeptPlans.plan(more, Floor.of(more))).isEqualTo(Planner.plan(more, Floor.of(more)));
        assertThat(KeptPlans.gains(plan.orElseThrow())).isEqualTo(Planner.gains(plan.orElseThrow()))
                .isSameAs(KeptPlans.gains(plan.orElseThrow()));
    }
}
