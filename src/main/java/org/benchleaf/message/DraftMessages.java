package org.benchleaf.message;

/** What is said about a case that is still being written: what it lacks is listed and is no error. */
public enum DraftMessages implements CatalogueEntry {
    STILL_OPEN("DRAFT-001", Severity.ADVICE,
            "'{where}' is not yet known.",
            "{meaning}",
            "Write it, for example '{example}'."),
    TO_SETTLE("DRAFT-002", Severity.ADVICE,
            "To settle before publishing ({code}): {what}",
            "{why}",
            "{fix}"),
    LEFT_OUT("DRAFT-003", Severity.ADVICE,
            "The draft '{case}' is left out of this edition: {errors} to put right, {open} still open.",
            "A draft belongs to the studio alone, and nothing in it stops another case.",
            "Nothing, while it is being written; 'benchleaf check' lists what it still needs.");

    private final Entry entry;

    DraftMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    /** The same message as something that a draft may still leave as it is. */
    public static Message settle(Message message) {
        return TO_SETTLE.at(message.place(), "code", message.code(), "what", message.what(), "why", message.why(),
                "fix", message.id() == FormMessages.NEEDED ? "Find it out, or leave out what needs it." : message.fix());
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
