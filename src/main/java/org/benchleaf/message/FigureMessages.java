package org.benchleaf.message;

/** What can stand in the way of working out figures, times and preparations. */
public enum FigureMessages implements Message.Id {
    UNKNOWN_FIGURE("FIG-001", Severity.ERROR,
            "The text cites the figure '{figure}', and the case has none of that name.",
            "A cited figure is printed from the sums, so that the story cannot contradict the sheet.",
            "{hint}"),
    SOLUTIONS_IN_A_CIRCLE("FIG-002", Severity.ERROR,
            "Solution '{solution}' is made, directly or through others, from itself: {circle}.",
            "Amounts are worked out from what uses a solution back to what it is made from; a circle has no beginning.",
            "Name the bought material that the first of them is made from."),
    REFUSED("FIG-003", Severity.ERROR,
            "'{figure}' cannot be worked out by '{calculation}': {refusal}",
            "The formula holds only in its range, and nothing is guessed beyond it.",
            "Correct the value in the file; 'calculate {calculation}' lists what goes in."),
    MISSING_INPUT("FIG-004", Severity.ERROR,
            "'{figure}' cannot be worked out, because {missing} is missing.",
            "The figure follows from it, and nothing is guessed.",
            "Write {missing}: {where}."),
    NO_TRAY_LARGE_ENOUGH("FIG-005", Severity.WARNING,
            "No tray of the studio holds the sheet of step '{step}' with its margin: {height} × {width} is needed.",
            "A sheet that touches the tray's walls creases or tears when it is lifted.",
            "Use a smaller margin, or add a tray of that size to studio.yaml."),
    DEEPER_THAN_TRAY("FIG-006", Severity.WARNING,
            "The bath of step '{step}' is {depth} deep, but the trays large enough for the sheet hold {tray} at most.",
            "A tray filled to the brim spills when it is moved or when the sheet goes in.",
            "Plan a shallower bath, or add a deeper tray to studio.yaml."),
    STEP_WITHOUT_TIME("FIG-007", Severity.WARNING,
            "Step '{step}' does not say how long it takes, and none of its parts does.",
            "Its time is shown as not recorded, and everything after it only as 'at least'.",
            "Write 'takes:', such as 'takes: 20 min to 40 min'; or 'takes: not known' if nobody recorded it."),
    STEP_LONGER_THAN_ALLOWED("FIG-008", Severity.WARNING,
            "Step '{step}' takes {takes} even when it goes quickly, but may last {limit} at most.",
            "Whoever follows the sheet cannot keep both.",
            "Shorten the step or raise 'at most'."),
    NIGHT_WITHOUT_HANDS_ON("FIG-009", Severity.ADVICE,
            "Step '{step}' runs on overnight, but does not say how much of it needs a person.",
            "Without it all of its time counts as work of the hands.",
            "Write 'hands-on:', such as 'hands-on: 60 min'."),
    HANDS_ON_LONGER_THAN_STEP("FIG-010", Severity.WARNING,
            "Step '{step}' needs a person for {hands}, but takes only {takes}.",
            "The work of the hands is a part of the whole time.",
            "Correct 'hands-on' or 'takes'."),
    LESS_THAN_NEEDED("FIG-011", Severity.ERROR,
            "'make' of solution '{solution}' is {make}, but {needed} is used.",
            "The bench would run out in the middle of a step.",
            "Raise 'make', or leave it out and let the amount follow from the steps."),
    MADE_TOO_EARLY("FIG-012", Severity.WARNING,
            "Solution '{solution}' was made on {made} and keeps {keeps}, but step '{step}' uses it on {used}.",
            "It may have weakened, spoiled or changed its pH by then.",
            "Make it later, or give the recipe's own shelf life with its source."),
    NOT_YET_READY("FIG-013", Severity.WARNING,
            "Solution '{solution}' was made on {made} and needs {ready} to be ready, but step '{step}' uses it on {used}.",
            "Soaking, settling and cooling take their time.",
            "Correct 'made on', or begin it earlier."),
    USED_LONGER_THAN_IT_KEEPS("FIG-014", Severity.ADVICE,
            "Solution '{solution}' keeps {keeps}, but its uses lie {apart} apart.",
            "One batch does not last from the first use to the last.",
            "Plan to make it again for step '{step}'."),
    NOTHING_TO_MAKE("FIG-015", Severity.ADVICE,
            "Nothing says how much of solution '{solution}' is needed.",
            "Without an amount the preparation sheet can only name it.",
            "Write 'make:' or 'least:' for the solution, or the amount in the part that uses it."),
    SURFACE_AND_EXTRACT("FIG-016", Severity.ADVICE,
            "pH was measured by '{one}' and by '{other}'.",
            "A surface electrode and an extract of the pulp answer different questions, so the two are not compared.",
            "Give before and after by one method, and do not subtract one from the other in the text."),
    OTHER_HUMIDITY("FIG-017", Severity.WARNING,
            "The size was measured at {before} before and {after} after treatment.",
            "Paper grows with the humidity of the room, so that the change is not the treatment's alone.",
            "Measure both at the same humidity, or say so beside the result."),
    RESTRAINED_TOO_LATE("FIG-018", Severity.WARNING,
            "In step '{step}' the sheet went under restraint at {solids} solids.",
            "Paper begins to cockle when solids pass about 60 % to 66 %.",
            "Check the weighings; next time restrain it before its mass falls to {mass}."),
    MORE_THAN_THE_CEILING("FIG-019", Severity.ADVICE,
            "Bath {bath} of step '{step}' took {added} of '{stock}', more than the ceiling of {ceiling}.",
            "The ceiling counts water in balance with the air of a busy room: this water held more carbon dioxide or acid, or the stock was weak.",
            "Check the reading, and write beside it what the water was."),
    CHANGE_WHEN_NOBODY_IS_THERE("FIG-020", Severity.ADVICE,
            "In step '{step}' {moment} {number} falls outside working hours and waits until {until}.",
            "The sheet stays longer between damp blotters than planned.",
            "Begin the step earlier in the day, or plan that change as 'overnight'."),
    EARLIER_THAN_POSSIBLE("FIG-021", Severity.ADVICE,
            "Step '{step}' is recorded on {on}, but by the times stated it could not begin before {earliest}.",
            "Either a time is longer than it was in fact, or a day is wrong.",
            "Check 'on' of this step and 'takes' of the steps before it."),
    CANNOT_BE_MEASURED("FIG-022", Severity.WARNING,
            "Nothing that the studio owns can measure {amount} of '{of}' for solution '{solution}'.",
            "An amount that cannot be measured cannot be made right.",
            "Make a larger batch ('least:'), or add what measures it to studio.yaml."),
    SIZE_NOT_ON_RECORD("FIG-024", Severity.ADVICE,
            "'{figure}' cannot be worked out, because the size of the sheet is not on record.",
            "The figure follows from the size, and nothing is guessed.",
            "Nothing, if nobody recorded it; else write 'size:' under 'object:'."),
    UNLIKE_KINDS("FIG-023", Severity.ERROR,
            "Solution '{solution}' is to have {wanted}, but its stock '{stock}' is stated as {found}.",
            "Shares by volume, by mass and mass per volume cannot be turned into one another without more knowledge.",
            "State both strengths in the same way."),
    NO_DENSITY("FIG-040", Severity.ERROR,
            "How much of solution '{solution}' to make cannot be worked out, because {why}.",
            "It is mixed by mass and used by volume; only a density turns one into the other, and none is guessed.",
            "Write 'make:' in grams, or give the density in content/reference/substances.yaml with its source.");

    private final String code;
    private final Severity severity;
    private final String what;
    private final String why;
    private final String fix;

    FigureMessages(String code, Severity severity, String what, String why, String fix) {
        this.code = code;
        this.severity = severity;
        this.what = what;
        this.why = why;
        this.fix = fix;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String what() {
        return what;
    }

    @Override
    public String why() {
        return why;
    }

    @Override
    public String fix() {
        return fix;
    }
}
