package org.benchleaf.model;

import java.util.List;
import java.util.Optional;

/** The bench work that a class's steps are cut into, where a step says only how long it takes in all. */
public enum ClassWork {
    HOLD("hold"),
    MAKING_A_BATH("making a bath"),
    LOWERING("lowering"),
    BATH_CHANGE("bath change"),
    READING_A_BATH("reading a bath"),
    CHECKING_A_BATH("checking a bath"),
    EMPTYING_A_TRAY("emptying a tray"),
    WEIGHING("weighing"),
    DRAINING("draining"),
    LAYING_IN("laying in"),
    BLOTTER_CHANGE("blotter change"),
    TAKING_OUT("taking out"),
    MOVING_A_WET_SHEET("moving a wet sheet"),
    RINSING_THE_METER("rinsing the meter"),
    LOOK("look"),
    BRIEFING("briefing"),
    LAYING_OUT("laying out"),
    CLEARING_AWAY("clearing away");

    private final String word;

    ClassWork(String word) {
        this.word = word;
    }

    /** The name of the constant that tells how long it usually takes. */
    public String usual() {
        return word.replace(' ', '-');
    }

    /** The work written with that word. */
    public static Optional<ClassWork> of(String word) {
        return List.of(values()).stream().filter(work -> work.word.equals(word)).findFirst();
    }
}
