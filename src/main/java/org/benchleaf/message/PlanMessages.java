package org.benchleaf.message;

/** What can stand in the way of planning a class. */
public enum PlanMessages implements CatalogueEntry {
    NOT_COUNTED("PLAN-001", Severity.ERROR,
            "The class does not say how many there are of this: {thing}.",
            "The step '{step}' takes it, and a plan for a guessed number would not hold.",
            "Write {remedy}."),
    LIMIT_TOO_SHORT("PLAN-002", Severity.ERROR,
            "Between '{from}' and '{to}' {limit} are allowed, but what lies between them takes {between}.",
            "No plan can keep both.",
            "Allow {between} at least, or shorten the work between."),
    MORE_THAN_THERE_IS("PLAN-003", Severity.ERROR,
            "'{part}' takes {amount} at once of this: {thing}; the class has {count}.",
            "The work could never begin.",
            "Count again, or take fewer."),
    NEVER_ROOM("PLAN-004", Severity.ERROR,
            "There is no time at which '{part}' fits, even for one station alone.",
            "Working hours, breaks and limits leave no stretch of {minutes} for it.",
            "Begin at another time, move the break, or allow a longer wait before it."),
    RELEASE_TOO_SLOW("PLAN-005", Severity.ERROR,
            "{supervisors} cannot release {stations} stations within {limit} after '{from}': {most} is the most at {each} each.",
            "The sheets of the others would wait longer than allowed.",
            "{remedy}"),
    DAY_TOO_SHORT("PLAN-006", Severity.ERROR,
            "This class cannot end by {by}: {cause}.",
            "No order of the work can be shorter.",
            "{remedy}"),
    ENDS_TOO_LATE("PLAN-007", Severity.WARNING,
            "No plan was found that ends by {by}; the shortest found ends at {end}, none can end before {floor}.",
            "The last stations would still be at work.",
            "Begin earlier, take fewer stations, or look under 'more' what one more of a thing would give."),
    BEGINS_WHEN_CLOSED("PLAN-008", Severity.ERROR,
            "The class begins on {begins}, when nobody is in the studio.",
            "Trainees and supervisors are planned in the hours of studio.yaml: {hours}.",
            "Correct 'starts', or the hours of the studio."),
    TOO_MANY_TRAINEES("PLAN-009", Severity.ERROR,
            "{trainees} trainees are too many for {supervisors}; the studio gives {most} at most to each.",
            "Nobody can watch so many hands.",
            "Take fewer stations, or ask for another supervisor."),
    STEP_WITHOUT_MINUTES("PLAN-010", Severity.ERROR,
            "The step '{step}' does not say how long it takes.",
            "A plan that counts it as no time would be too short.",
            "Write 'takes:' at the step, or under 'uses:' of the class."),
    NO_PLAN("PLAN-011", Severity.ERROR,
            "There is no plan of this rhythm within {days} days.",
            "Hours, breaks, or a thing that stays in use for long stand in its way.",
            "Write another 'rhythm', move the break, or have one more of what stays in use longest."),
    ENDS_BEFORE_IT_BEGINS("PLAN-012", Severity.ERROR,
            "'ends by' is not after 'starts', or the last step comes before the first.",
            "The class would have no time or no work.",
            "Correct one of the two."),
    TOO_MANY_TO_STAND_BESIDE("PLAN-013", Severity.ERROR,
            "{supervisors} cannot stand beside {stations} stations that begin '{part}' together.",
            "A trainee does this only with the supervisor beside them, for {minutes} each.",
            "Write 'rhythm: shortest', so that they begin it one after another (all of them in {all} at least), or ask for as many "
                    + "supervisors as begin together ({more} more).");

    private final Entry entry;

    PlanMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
