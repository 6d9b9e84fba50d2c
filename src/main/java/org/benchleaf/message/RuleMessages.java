package org.benchleaf.message;

/** What is said about holds, chosen materials and recorded reasons, and about the rules that a studio changes or adds. */
public enum RuleMessages implements CatalogueEntry {
    REASON_NOT_NEEDED("REASON-001", Severity.ADVICE,
            "The reason for '{rule}' is not needed: that rule does not speak here.",
            "A reason that answers nothing makes readers look for what is wrong.",
            "Take it out, or put its 'step:' right."),
    REASON_FOR_UNKNOWN_RULE("REASON-002", Severity.ERROR,
            "There is no rule '{rule}'.",
            "A reason counts only for the rule that it names.",
            "Copy the rule's id from the message it answers, or from the page of rules."),
    REASON_FOR_STOP("REASON-003", Severity.ADVICE,
            "The reason for '{rule}' does not count, because that rule is a stop.",
            "A stop is not lifted by a reason in the case.",
            "Change the treatment. If it is done and its record does not tell it, add 'past:', where the message of the rule"
                    + " offers it. If your studio sees the rule otherwise, change it in rules.yaml and say why."),
    HOLD_BY_THE_SAME("HOLD-001", Severity.WARNING,
            "The hold at step '{step}' is released by the {role}, who does the step.",
            "A hold is there so that somebody else looks before something that cannot be undone.",
            "Name another role under 'released by:', put 'by:' of the step right, or add 'people: 2' if two of them are there."),
    HOLD_TOO_LONG("HOLD-002", Severity.WARNING,
            "At the hold of step '{step}', {asked} takes at least {takes}, and the sheet may wait {limit} at most, by {key}.",
            "A hold that cannot be kept is passed over at the bench, or the sheet waits longer than it bears.",
            "Look or test before the sheet is wetted, ask for less at the hold, or allow more time if the sheet bears it."),
    WEIGHED_CHOICE("CHOICE-001", Severity.ADVICE,
            "Step '{step}' uses '{material}'. Against it on such a sheet: {against} For it: {favours}",
            "What published sources tell of a material is weighed before it lies on the sheet.",
            "Test it on the sheet and record why it is used: a reason for the rule 'choice-weighed', with the step, under 'reasons'."
                    + " Or use another."),
    RULE_ROW_INCOMPLETE("RULES-001", Severity.ERROR,
            "This row has no readable '{key}'.",
            "A rule that is read only in part would be passed over in silence.",
            "Write '{key}' as the page 'Writing a case file' shows it."),
    RULE_WORD_UNKNOWN("RULES-002", Severity.ERROR,
            "'{word}' is not {what}.",
            "A word that the program does not know would never hold, and the rule would say nothing.",
            "Use one of: {known}."),
    RULE_ID_TWICE("RULES-003", Severity.ERROR,
            "There is another rule '{rule}'.",
            "A reason names its rule by the id, and each id means one rule.",
            "Give this rule another id; to alter a rule of the program, write it under 'changes:'."),
    RULE_CHANGE_UNKNOWN("RULES-004", Severity.ERROR,
            "There is no '{rule}' to change.",
            "The change would have no effect.",
            "Copy the id from the page of rules."),
    RULE_CHANGE_WITHOUT_REASON("RULES-005", Severity.ERROR,
            "The change of '{rule}' gives no reason.",
            "Readers of the page of rules see every change, and have a right to its reason.",
            "Add 'reason:' to the change."),
    RULE_SOURCE_UNKNOWN("RULES-006", Severity.ERROR,
            "There is no source '{source}'.",
            "Each rule names its source, or says that it has none.",
            "Add it to sources.yaml, or write 'common practice, no source'."),
    RULE_KEY_UNKNOWN("RULES-007", Severity.ERROR,
            "The key '{key}' means nothing here.",
            "A slip in a key would leave out what it was meant to say, and the rule would be another one.",
            "Use one of: {known}."),
    RULE_HELD_ELSEWHERE("RULES-008", Severity.ERROR,
            "The rule '{rule}' cannot be changed here.",
            "It is not asked of the case file: the program keeps it while it makes the site.",
            "Take the change out.");

    private final Entry entry;

    RuleMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
