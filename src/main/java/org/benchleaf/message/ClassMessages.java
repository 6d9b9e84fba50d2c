package org.benchleaf.message;

/** What can be the matter with the file of a class. */
public enum ClassMessages implements CatalogueEntry {
    OBJECT_WITHOUT_PERMISSION("CLASS-001", Severity.ERROR,
            "The class works on the object, but no permission of the case '{case}' allows teaching on {day}.",
            "An owner agrees to each use by its name.",
            "Write 'sheets: {are: practice}', or add the permission for teaching to the case."),
    NAME_FOR_CODE("CLASS-002", Severity.ERROR,
            "'{found}' looks like a name; trainees stand here by codes of one to three letters or digits.",
            "What a trainee did and how well belongs to the trainee and the teacher.",
            "Write a code such as A or B2; names are written on the printed record by hand."),
    ISSUE_NOT_HIGHER("CLASS-003", Severity.ERROR,
            "Issue {number} replaces issue {replaces}.",
            "Whoever holds two papers goes by the higher number.",
            "Give this issue a higher number than the one that it replaces."),
    ISSUE_OUT_OF_DATE("CLASS-004", Severity.ERROR,
            "The issue is valid until {until}; the class begins on {starts}.",
            "Nobody may work from a paper that is out of date.",
            "Look the class over, issue it again, and state until when it holds."),
    NOT_APPROVED("CLASS-005", Severity.ADVICE,
            "Nobody has approved issue {number}.",
            "Its pages are printed as a draft.",
            "Write 'approved by:' with a role, such as 'head of studio', when it has been looked over."),
    UNSEEN_OUTCOME("CLASS-006", Severity.ADVICE,
            "Nobody can see whether a trainee '{will}'.",
            "An assessor marks what can be observed.",
            "Begin with what the trainee does, such as 'lowers the sheet on its carrier'."),
    OUTCOME_WITHOUT_CRITERION("CLASS-007", Severity.ADVICE,
            "The outcome '{will}' does not say what must be seen.",
            "Two assessors would mark it differently.",
            "Write 'met when:' with what can be seen or measured."),
    CODES_AND_PLACES("CLASS-008", Severity.ERROR,
            "There are {codes} codes of trainees for {places} places.",
            "Each place at a station is one trainee's.",
            "Write as many codes as stations times 'trainees each', or leave them out."),
    TOO_MUCH_VAPOUR("CLASS-009", Severity.ERROR,
            "At step '{step}', {stations} stations bring the vapour in the room to {share} % of the limit for a working day.",
            "Above {limit} % nobody should be taught in it.",
            "{remedy}"),
    ORDER_TOO_LATE("CLASS-010", Severity.WARNING,
            "{material} would have to be ordered by {by}; the class is issued on {issued}.",
            "{missing} are missing, and would not be in the house when they are needed.",
            "Issue the class earlier, order at once from somebody who is quicker, or state what stands on the shelf under 'stock:'."),
    BEGUN_TOO_LATE("CLASS-011", Severity.WARNING,
            "'{solution}' has to be begun by {by}; the class is issued on {issued}.",
            "The technician learns of it too late.",
            "Issue the class earlier, or begin it later."),
    CHANGED_SINCE_ISSUE("CLASS-012", Severity.WARNING,
            "Issue {number} was handed out on {on}, and the class has changed since.",
            "Whoever holds the issued papers works from other amounts, times or words; the pages say that they differ.",
            "Give the class a higher number, state 'replaces: {number}', and run 'benchleaf issue {class}'."),
    LOWER_THAN_ISSUED("CLASS-013", Severity.ERROR,
            "This is issue {number}, but issue {last} was handed out already.",
            "Whoever holds two papers goes by the higher number.",
            "Give this issue a higher number than {last}."),
    ISSUES_OF_NO_CLASS("CLASS-014", Severity.ERROR,
            "Issues of a class '{class}' are kept here, but there is no such class.",
            "What was handed out would be compared with nothing.",
            "Name the file as the class is named, or take it out of the folder 'classes'."),
    BENCH_TOO_SHORT("CLASS-015", Severity.ERROR,
            "{stations} stations of {each} each find no room along {there} of bench.",
            "Crowded benches are where wet sheets and sharp tools are knocked into.",
            "Stations that would do: {places}. Teach in two groups, or find more bench."),
    ROOM_GIVES_LESS("CLASS-016", Severity.ERROR,
            "At {when} the stations come to {kind} of {most} at once, and the room is stated with {gives}.",
            "A fuse that blows, a tap that runs dry or a room too loud to hear a warning stops the class with wet sheets on the bench.",
            "{remedy}"),
    NOT_FRESH("CLASS-017", Severity.WARNING,
            "A batch of '{solution}' is made by {made} at the latest and keeps {keeps}, but the first to draw from it uses it until "
                    + "{until}.",
            "It may have weakened, spoiled or changed its pH by then; nobody is in the studio to make it later.",
            "Begin the class later in the day, or give the recipe's own shelf life with its source.");

    private final Entry entry;

    ClassMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
