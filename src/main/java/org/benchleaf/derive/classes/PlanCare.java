package org.benchleaf.derive.classes;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;

/**
 * What the care of its steps asks of the plan of a class.
 *
 * @param supervised ids of the steps at which the supervisor stands: those that a trainee does only so, and the supervisor's own
 * @param turn what the stations take turns at, by the id of the step
 */
record PlanCare(Set<String> supervised, Map<String, String> turn) {

    /** Of a class and its steps, by the tables of access and of cautions. */
    static PlanCare of(CourseClass course, List<Step> steps, Map<String, StepCare> care, Reference reference) {
        Set<String> supervised = new LinkedHashSet<>();
        Map<String, String> turn = new LinkedHashMap<>();
        for (Step step : steps) {
            Optional<StepCare> due = Optional.ofNullable(care.get(step.id()));
            ClassDay.Doer doer = course.doer(step);
            boolean taught = doer == ClassDay.Doer.TRAINEE || doer == ClassDay.Doer.PAIR;
            if (doer == ClassDay.Doer.SUPERVISOR || taught && due.filter(any -> !any.supervision().isEmpty()).isPresent()) {
                supervised.add(step.id());
            }
            due.stream().flatMap(any -> any.cautions().stream()).map(reference.cautions()::get)
                    .flatMap(caution -> caution.turn().stream()).findFirst().ifPresent(one -> turn.put(step.id(), one));
        }
        return new PlanCare(supervised, turn);
    }

    boolean isSupervised(Step step) {
        return supervised.contains(step.id());
    }

    Optional<String> turn(Step step) {
        return Optional.ofNullable(turn.get(step.id()));
    }

    Set<String> turns() {
        return new LinkedHashSet<>(turn.values());
    }
}
