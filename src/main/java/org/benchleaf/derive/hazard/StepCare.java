package org.benchleaf.derive.hazard;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.Reference;

/**
 * What one step needs for the protection of the person.
 *
 * @param step id
 * @param wear codes of protective equipment, such as {@code EYE}; the table of equipment has the words
 * @param cautions keys of the table of cautions
 * @param subjects ids of what each caution speaks of, by its key; only cautions that follow from something that is used
 * @param materials ids of the hazardous solutions and materials used
 * @param exposure ids of the figures that tell how much vapour there may be
 * @param chemical whether it is a chemical step, before which the briefing must stand
 * @param access who may use what the step handles, by id of the solution or material
 * @param meetings what comes together at the step and must not, as the publication of a retold case tells it
 */
public record StepCare(String step, List<String> wear, List<String> cautions, Map<String, List<String>> subjects,
        List<String> materials, List<String> exposure, boolean chemical, Map<String, Hazards.Access> access,
        List<Meeting> meetings) {

    public StepCare {
        wear = List.copyOf(wear);
        cautions = List.copyOf(cautions);
        subjects = Map.copyOf(subjects);
        materials = List.copyOf(materials);
        exposure = List.copyOf(exposure);
        meetings = List.copyOf(meetings);
        access = Collections.unmodifiableMap(new LinkedHashMap<>(access));
    }

    /** The same with what comes together there and must not. */
    StepCare with(List<Meeting> met) {
        return new StepCare(step, wear, cautions, subjects, materials, exposure, chemical, access, met);
    }

    /** Why a supervisor must stand beside whoever does the step; empty if none has to. */
    public List<String> supervision() {
        return access.values().stream().flatMap(one -> one.why().stream())
                .filter(row -> row.trainee() == Reference.Trainee.SUPERVISED).map(Reference.Access::why).distinct()
                .toList();
    }
}
