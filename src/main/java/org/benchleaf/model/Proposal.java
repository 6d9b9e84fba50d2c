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
public record Proposal(List<Aim> aims, List<Option> options, Optional<LocalDate> approved, List<StepKind> steps,
        Map<StepKind, String> risks, List<Amendment> amendments, Place place) {

    public Proposal {
        aims = List.copyOf(aims);
        options = List.copyOf(options);
        steps = List.copyOf(steps);
        risks = Map.copyOf(risks);
        amendments = List.copyOf(amendments);
    }

    /** Whether the case ties a result to one of the aims at least. */
    public boolean isAnswered() {
        return aims.stream().anyMatch(aim -> !aim.answers().isEmpty());
    }

    /** Whether a result tells of one of the aims. */
    public boolean isAnsweredBy(Result result) {
        return aims.stream().anyMatch(aim -> aim.answer(result).isPresent());
    }

    /**
     * What the treatment is for.
     *
     * @param words in which it was agreed
     * @param answers the results and trials that tell of it; empty if none does
     */
    public record Aim(String words, List<Answer> answers) {
        public Aim {
            answers = List.copyOf(answers);
        }

        /** What ties a result to it; empty if the case does not. */
        public Optional<Answer> answer(Result result) {
            return answers.stream().filter(answer -> answer.result().equals(result.place())).findFirst();
        }

        /** Whether the case ties a trial to it. */
        public boolean isAnsweredBy(Trial trial) {
            return answers.stream().anyMatch(answer -> answer.result().equals(trial.place()));
        }
    }

    /**
     * A result, or a trial, that tells of an aim.
     *
     * @param result where it stands
     * @param howFar what it can tell of the aim and what not, in the author's words
     */
    public record Answer(Place result, Optional<String> howFar) {
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
