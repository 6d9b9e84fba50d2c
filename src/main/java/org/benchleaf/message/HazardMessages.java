package org.benchleaf.message;

/** What is said about the danger of what is prepared and used. */
public enum HazardMessages implements MessageId {
    CHAMBER_CAN_EXPLODE("HAZ-001", Severity.ERROR,
            "In step '{step}', {amount} of '{liquid}' in {volume} of closed air makes up to {share} % of the lower limit of flammability.",
            "Above 10 % of that limit a spark may be enough; a closed box has no other airing.",
            "Use less liquid or a larger or aired space; or keep every source of ignition away, say so with 'no ignition: yes', and record the reason for the rule '{rule}'."),
    ROOM_ABOVE_HEALTH_LIMIT("HAZ-002", Severity.WARNING,
            "Step '{step}' fills the room with up to {share} % of the limit for a working day.",
            "Vapour above the limit harms the people in the room.",
            "Work under extraction, use less, or air the room more; the estimate takes it that all the liquid evaporates."),
    CHAMBER_UNKNOWN("HAZ-003", Severity.ERROR,
            "In step '{step}' the flammable liquid '{liquid}' is put into a closed space, and {missing}.",
            "How near the air comes to exploding cannot be worked out.",
            "State 'amount:' and 'volume:' of the space; or keep every source of ignition away, say so with 'no ignition: yes', and record the reason for the rule '{rule}'."),
    SUBSTANCE_UNKNOWN("HAZ-004", Severity.WARNING,
            "The material '{material}' is used in '{where}', but the table of substances does not have {substance}.",
            "Its hazards cannot be told, and a sheet without a warning reads as if there were none.",
            "Name a 'substance:' of the table under the material, or add a row in content/reference/substances.yaml from its safety data sheet."),
    ROOM_CAN_EXPLODE("HAZ-005", Severity.ERROR,
            "Step '{step}' fills the room with up to {share} % of the lower limit of flammability.",
            "Above 10 % of that limit a spark may be enough.",
            "Use less liquid at once, or air the room more; the estimate takes it that all the liquid evaporates.");

    private final String code;
    private final Severity severity;
    private final String what;
    private final String why;
    private final String fix;

    HazardMessages(String code, Severity severity, String what, String why, String fix) {
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
