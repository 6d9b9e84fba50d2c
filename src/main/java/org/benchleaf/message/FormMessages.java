package org.benchleaf.message;

/** What is said when a file can be read but does not hold what it should. */
public enum FormMessages implements MessageId {
    UNKNOWN_KEY("FORM-001", Severity.ERROR,
            "'{key}' is not a key that belongs here.",
            "What stands under it would be lost unseen.",
            "{remedy}"),
    MISSING("FORM-002", Severity.ERROR,
            "'{key}' is missing here.",
            "{why}",
            "Add '{key}:', for example '{example}'."),
    WRONG_SHAPE("FORM-003", Severity.ERROR,
            "Here stands {found}, where {wanted} is needed.",
            "What is written cannot be understood in another shape.",
            "Write it like this: {example}"),
    NOT_ONE_OF("FORM-004", Severity.ERROR,
            "'{found}' is not one of the words known here.",
            "Rules, figures and pages depend on which of them it is.",
            "{remedy}"),
    NOTHING_WRITTEN("FORM-005", Severity.ERROR,
            "Nothing is written here.",
            "An empty value cannot be told from a forgotten one.",
            "Write the value, or delete the key."),
    BAD_ID("FORM-006", Severity.ERROR,
            "'{found}' cannot be an id.",
            "Ids are named in the story and become part of addresses.",
            "Write it with small letters a to z, digits and hyphens, beginning with a letter, such as 'fix-stamp'."),
    DECIMAL_COMMA("FORM-010", Severity.ERROR,
            "'{found}' has a comma between digits.",
            "It may be a decimal comma or a mark of thousands, a difference of a thousand times.",
            "{remedy}"),
    BARE_PERCENT("FORM-011", Severity.ERROR,
            "'{found}' does not say per cent of what.",
            "In a solution, per cent by volume, by mass and mass by volume are different amounts.",
            "Which one is meant? Write '% v/v', '% m/m' or '% m/v'."),
    COLON_RATIO("FORM-012", Severity.ERROR,
            "'{found}' can be read in two ways.",
            "The two readings differ by a whole part.",
            "Is it {question}? Write 'one in: 5' or 'parts: 1 + 4'."),
    HOUSEHOLD_MEASURE("FORM-013", Severity.ERROR,
            "'{found}' differs from hand to hand.",
            "Nobody can repeat the step with the same amount.",
            "How much is it? Measure it once and write it in mL or g."),
    NO_UNIT("FORM-014", Severity.ERROR,
            "'{found}' has no unit.",
            "Here {wanted} is needed, and a bare number may be read in any unit.",
            "Write the unit, such as '{usual}'."),
    UNKNOWN_UNIT("FORM-015", Severity.ERROR,
            "'{found}' is not a unit that is known.",
            "Nothing can be worked out from it.",
            "{remedy}"),
    OTHER_DIMENSION("FORM-016", Severity.ERROR,
            "'{found}' is not {wanted}.",
            "Nothing can be worked out from a quantity of another kind.",
            "Write {wanted}, such as '{usual}'."),
    RANGE_BACKWARDS("FORM-017", Severity.ERROR,
            "The range '{found}' ends below its beginning.",
            "One of its ends must be a slip.",
            "Write the smaller end first, such as '15 min to 30 min'."),
    NOT_A_NUMBER("FORM-018", Severity.ERROR,
            "'{found}' is not a quantity.",
            "Here {wanted} is needed, to work with.",
            "Write a number and its unit, such as '{usual}'; put words into 'note'."),
    NOT_WHOLE("FORM-019", Severity.ERROR,
            "'{found}' is not a whole number above nothing.",
            "Things are counted here.",
            "Write digits only, such as 3."),
    NOT_POSITIVE("FORM-020", Severity.ERROR,
            "'{found}' is not above nothing.",
            "A size, a mass or a time of nothing gives no figure.",
            "Correct the number, or delete the key."),
    OUT_OF_RANGE("FORM-021", Severity.ERROR,
            "'{found}' lies outside {low} to {high}.",
            "No measurement of this kind can read that; it is a slip.",
            "Correct the number."),
    NOT_A_DATE("FORM-022", Severity.ERROR,
            "'{found}' is not a day of the calendar.",
            "The order of the work and the permissions are compared by day.",
            "Write year, month, day, such as 2026-03-17."),
    DATE_TO_COME("FORM-023", Severity.WARNING,
            "{found} is still to come.",
            "What is written here was done or given; that cannot lie ahead.",
            "Correct the day, or take the entry out until it is so."),
    NOT_A_TIME("FORM-024", Severity.ERROR,
            "'{found}' is not a time of day.",
            "The clock of the work begins there.",
            "Write hours and minutes, such as \"09:00\"."),
    UNKNOWN_REFERENCE("FORM-030", Severity.ERROR,
            "There is no {kinds} '{id}'.",
            "Figures and rules need to know what is meant.",
            "{remedy}"),
    ID_TWICE("FORM-031", Severity.ERROR,
            "A second {kind} has the id '{id}'; the first is on line {line}.",
            "It cannot be told which of them is meant elsewhere.",
            "Give one of them another id."),
    NEVER_USED("FORM-032", Severity.ADVICE,
            "Nothing uses the {kind} '{id}'.",
            "Either it is left over, or the place that should name it names another.",
            "Name it where it is used, or delete it."),
    CIRCLE("FORM-033", Severity.ERROR,
            "'{id}' waits for itself: {path}.",
            "None of them could ever begin.",
            "Take one of these ids out."),
    LANGUAGE_TAG("FORM-034", Severity.ERROR,
            "'{found}' is not a language tag.",
            "Readers' devices choose voices and hyphens by it.",
            "Write a tag of BCP 47, such as en, es or pt-BR."),
    PH_METHOD("FORM-040", Severity.ERROR,
            "A pH is given without its method.",
            "A reading on the surface and one of an extract of the same sheet differ and cannot be compared.",
            "How was it read? Add 'method:', such as 'surface, flat electrode' or 'cold extract'."),
    RECIPE_WAYS("FORM-041", Severity.ERROR,
            "The solution '{id}' is made in {count} ways.",
            "Its amounts follow from the one way in which it is made.",
            "Keep exactly one of: mix, dissolve, dilute, saturate, adjust, parts."),
    PARTS_FORM("FORM-042", Severity.ERROR,
            "'{found}' does not say how many parts there are of each.",
            "The amounts follow from the two numbers.",
            "Write the parts of the first, a plus and the parts of the second, such as 1 + 5."),
    READINGS_COUNT("FORM-043", Severity.ERROR,
            "There are {count} readings for {places} places.",
            "It cannot be told which reading was taken where.",
            "Give as many readings as places; write decimals with a point, since a comma begins the next reading."),
    NOT_MEASURED_BUT_READ("FORM-044", Severity.ERROR,
            "'{measure}' is marked as not measured and yet has '{key}'.",
            "Only one of the two can be so.",
            "Delete 'not measured', or delete the readings."),
    BATHS_OVER_MOST("FORM-045", Severity.ERROR,
            "{baths} baths are written, more than the {most} allowed here.",
            "Volumes and the step sheet follow from the number of baths.",
            "Correct one of the two numbers."),
    DATES_AGAINST_ORDER("FORM-046", Severity.ERROR,
            "The step '{step}' was done on {on}, before '{before}' on {other}, for which it waits.",
            "The order and the days contradict each other.",
            "Correct one of the days, or the list under 'after'."),
    TAKES_OVER_MOST("FORM-047", Severity.ERROR,
            "The step '{step}' takes longer than its own limit.",
            "A trainee cannot follow both.",
            "Correct 'takes' or 'at most'."),
    WET_LIGHTER_THAN_DRY("FORM-048", Severity.ERROR,
            "The wet sheet weighs less than the dry one.",
            "The water in it is worked out from the two masses.",
            "Correct one of the masses; perhaps they were swapped."),
    COLOUR_COORDINATES("FORM-049", Severity.ERROR,
            "A colour has three numbers here: L*, a* and b*.",
            "A difference of colour needs all three.",
            "Write them in this order, such as [78.4, 3.1, 19.6]; L* lies between 0 and 100."),
    NO_READINGS("FORM-050", Severity.ERROR,
            "'{measure}' has no reading.",
            "A result with nothing in it would look as if it had been forgotten.",
            "Add 'before:' or 'after:', or write 'not measured:' and the reason."),
    UNIT_FOR_READINGS("FORM-051", Severity.ERROR,
            "The readings of '{measure}' have no unit.",
            "A number without a unit can be read in any.",
            "Add 'unit:', such as 'unit: mm'; for a rank or a grade write words."),
    TABLE_MISSING("FORM-052", Severity.ERROR,
            "There is no table '{file}' beside the case file.",
            "The readings of this result are read from it.",
            "Put the file there. Its name has no folders, and ends in .csv."),
    TABLE_COLUMN("FORM-053", Severity.ERROR,
            "The table '{file}' has no column '{column}'.",
            "It cannot be told where the readings stand.",
            "{remedy}"),
    TABLE_NUMBER("FORM-054", Severity.ERROR,
            "'{found}' in the column '{column}' is not a number.",
            "A reading that cannot be read would be left out of the mean unseen.",
            "{remedy}"),
    TRANSLATED_NUMBER("FORM-060", Severity.ERROR,
            "The translation has the number {number}, which the words of the case do not have.",
            "Numbers come from the case file alone, so that languages cannot contradict each other.",
            "Take it out, or correct it; cite a worked-out figure in braces."),
    NOT_TRANSLATED("FORM-061", Severity.ADVICE,
            "The step '{step}' has no words in '{language}'.",
            "Its sheet will show them in the language of the case.",
            "Add its words under 'steps:'."),
    PAIR_ONE_SIDED("FORM-062", Severity.ADVICE,
            "The picture '{id}' is paired with '{pair}', which is not paired with it.",
            "The two are shown side by side; another pairing makes it unclear which.",
            "Write 'pair: {id}' there too."),
    UNKNOWN_CASE("FORM-063", Severity.ERROR,
            "There is no case '{id}'.",
            "The class works through it.",
            "{remedy}"),
    PERMISSION_ENDS_FIRST("FORM-064", Severity.ERROR,
            "The permission was taken back on {withdrawn}, before it was given on {on}.",
            "What may be shown follows from the two days.",
            "Correct one of the days.");

    private final String code;
    private final Severity severity;
    private final String what;
    private final String why;
    private final String fix;

    FormMessages(String code, Severity severity, String what, String why, String fix) {
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
