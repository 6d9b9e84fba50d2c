package org.benchleaf.message;

/** What is said about the danger of what is prepared and used. */
public enum HazardMessages implements CatalogueEntry {
    CHAMBER_CAN_EXPLODE("HAZ-001", Severity.ERROR,
            "In step '{step}', {amount} of '{liquid}' in {volume} of closed air makes up to {share} % of the lower limit of flammability.",
            "Above {limit} of that limit a spark may be enough; a closed box has no other airing.",
            "Use less liquid or a larger or aired space; or keep every source of ignition away, say so with 'no ignition: yes', and record "
                    + "the reason for the rule '{rule}'."),
    ROOM_ABOVE_HEALTH_LIMIT("HAZ-002", Severity.WARNING,
            "Step '{step}' fills the room with up to {share} % of the limit for a working day.",
            "Vapour above the limit harms the people in the room.",
            "Work under extraction, use less, or air the room more; the estimate takes it that all the liquid evaporates."),
    CHAMBER_UNKNOWN("HAZ-003", Severity.ERROR,
            "In step '{step}' the flammable liquid '{liquid}' is put into a closed space, and {missing}.",
            "How near the air comes to exploding cannot be worked out.",
            "State 'amount:' and 'volume:' of the space; or keep every source of ignition away, say so with 'no ignition: yes', and record "
                    + "the reason for the rule '{rule}'."),
    HAZARD_UNKNOWN("HAZ-004", Severity.ERROR,
            "The hazards of '{thing}' in {where} are not known: {why}",
            "What nobody knows may hurt somebody; no sheet for the bench is made with it.",
            "{remedy} Or publish the case without its sheets: take 'teaching' out of its permissions."),
    ROOM_CAN_EXPLODE("HAZ-005", Severity.ERROR,
            "Step '{step}' fills the room with up to {share} % of the lower limit of flammability.",
            "Above {limit} of that limit a spark may be enough.",
            "Use less liquid at once, or air the room more; the estimate takes it that all the liquid evaporates."),
    HAZARD_UNKNOWN_UNTAUGHT("HAZ-020", Severity.WARNING,
            "The hazards of '{thing}' in {where} are not known: {why}",
            "The case has no sheets for the bench, so nobody is led to use it; its recipe is not published.",
            "{remedy}"),
    MUST_NOT_MEET("HAZ-021", Severity.ERROR,
            "In {where}, {one} and {other} come together, which gives {gives}.",
            "{why}",
            "Use them in different steps or solutions and rinse between them, or replace one of them."),
    MUST_NOT_MEET_AS_WASTE("HAZ-022", Severity.ERROR,
            "Left over, {one} and {other} would come into one bottle ('{group}'), which gives {gives}.",
            "{why}",
            "Name another kind of waste with 'waste:' in the row of one of them in content/reference/substances.yaml, or replace one of "
                    + "them."),
    NOT_FOR_TRAINEES("HAZ-023", Severity.ERROR,
            "Step '{step}' uses '{thing}', which never stands on a sheet for trainees.",
            "{why}",
            "Use {instead}; or publish the case without its sheets: take 'teaching' out of its permissions. No reason lifts this stop."),
    DRAIN_WINDOW("HAZ-024", Severity.ERROR,
            "The drain window '{found}' reaches beyond {widest}.",
            "What is said about the drain is for weak, nearly neutral water; published local rules agree between these ends alone.",
            "Write a window inside {widest}, such as 'pH 6.5 to 8.5', or leave 'drain window' out and follow the local rules."),
    ROOM_UNKNOWN("HAZ-025", Severity.WARNING,
            "How much vapour '{liquid}' brings into the room in step '{step}' cannot be worked out, because of {substances}.",
            "Vapour is worked out for ethanol alone. The air may be above the limit for health or near the limit for fire, and no number "
                    + "here says so.",
            "Read the limits in the safety data sheet, work under extraction that is known to be enough for them, and ask whoever answers "
                    + "for the room."),
    MUST_NOT_MEET_IN_THE_SHEET("HAZ-026", Severity.ERROR,
            "Step '{step}' brings {other} to a sheet that may still hold {one} from step '{earlier}', which gives {gives}.",
            "{why}",
            "Put a step of kind 'rinsing' or 'washing' between the two and name it under 'after:', or replace one of the two."),
    MEET_AS_PUBLISHED("HAZ-027", Severity.WARNING,
            "In {where}, {one} and {other} come together as published, which gives {gives}.",
            "{why} Each page that tells of it says so there. A class that works through the case would be stopped.",
            "Compare it with the publication: if it used them one after the other, write them as two steps, with the rinse between them "
                    + "that it tells. If it had them in one step, leave it."),
    MEET_AS_WASTE_AS_PUBLISHED("HAZ-028", Severity.WARNING,
            "Left over, {one} and {other} of the publication would come into one bottle ('{group}'), which gives {gives}.",
            "{why} Each page that tells of it says so there. A class that works through the case would be stopped.",
            "Name another kind of waste with 'waste:' in the row of one of them in content/reference/substances.yaml, or leave it."),
    MEET_IN_THE_SHEET_AS_PUBLISHED("HAZ-029", Severity.WARNING,
            "As published, step '{step}' brings {other} to a sheet that may still hold {one} from step '{earlier}', which gives {gives}.",
            "{why} Each page that tells of it says so there. A class that works through the case would be stopped.",
            "Write a rinse or a wash between the two if the publication tells of one; if it tells of none, leave it.");

    private final Entry entry;

    HazardMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
