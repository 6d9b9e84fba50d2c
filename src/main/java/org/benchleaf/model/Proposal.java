package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * What was proposed to the owner and agreed.
 *
 * @param aims what the treatment is for
 * @param options what else was considered, with the reason against it
 * @param approved the day it was agreed in writing
 * @param steps the kinds of step that were agreed
 * @param risks what may go wrong, by kind of step
 * @param amendments what was agreed later
 */
public record Proposal(List<String> aims, List<Option> options, Optional<LocalDate> approved, List<StepKind> steps,
        Map<StepKind, String> risks, List<Amendment> amendments, Place place) {

    public Proposal {
        aims = List.copyOf(aims);
        options = List.copyOf(options);
        steps = List.copyOf(steps);
        risks = Map.copyOf(risks);
        amendments = List.copyOf(amendments);
    }

    /** Something considered and not done. */
    public record Option(String option, String whyNot) {
    }

    /** A later agreement in writing. */
    public record Amendment(LocalDate on, List<StepKind> adds, String why) {
        public Amendment {
            adds = List.copyOf(adds);
        }
    }
}
