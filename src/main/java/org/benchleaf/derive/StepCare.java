package org.benchleaf.derive;

import java.util.List;

/**
 * What one step needs for the protection of the person.
 *
 * @param step id
 * @param wear codes of protective equipment, such as {@code EYE}; the table of equipment has the words
 * @param cautions keys of the table of cautions
 * @param materials ids of the hazardous solutions and materials used
 * @param exposure ids of the figures that tell how much vapour there may be
 * @param chemical whether it is a chemical step, before which the briefing must stand
 */
public record StepCare(String step, List<String> wear, List<String> cautions, List<String> materials,
        List<String> exposure, boolean chemical) {

    public StepCare {
        wear = List.copyOf(wear);
        cautions = List.copyOf(cautions);
        materials = List.copyOf(materials);
        exposure = List.copyOf(exposure);
    }
}
