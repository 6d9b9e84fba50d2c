package org.benchleaf.message;

/** What is said about the rows that a studio adds to the tables of hazards and care. */
public enum ReferenceMessages implements CatalogueEntry {
    ROW_INCOMPLETE("REF-001", Severity.ERROR,
            "The row '{row}' lacks '{key}'.",
            "Hazards and cautions are worked out from every field of the row.",
            "Add '{key}:' to the row{example}."),
    ROW_UNREADABLE("REF-002", Severity.ERROR,
            "The row '{row}' has a '{key}' that cannot be read: '{found}'.",
            "A limit that is guessed could harm someone.",
            "Write {wanted}."),
    ROW_KEY_UNKNOWN("REF-003", Severity.ERROR,
            "The row '{row}' has a key that the table does not know: '{key}'.",
            "A misspelt key would be passed over in silence.",
            "Use one of: {known}."),
    TABLE_UNREADABLE("REF-004", Severity.ERROR,
            "The table cannot be read: {problem}.",
            "Without it the hazards would be worked out from the shipped rows alone.",
            "Write each row as a key with its own keys below it, such as '{example}'."),
    CLASS_UNKNOWN("REF-005", Severity.ERROR,
            "The row '{row}' has a class that is not in the list of classes: '{found}'.",
            "No rule knows it, so it would be missing from every label and every mixture.",
            "{remedy} Ways in and effects stand in brackets, as in 'Acute Tox. 4 (mouth)', 'STOT SE 3 (narcosis)'."),
    CLASS_TAKEN_AWAY("REF-006", Severity.ERROR,
            "The row '{row}' leaves out what the shipped table has for it: {classes}.",
            "A row of the studio stands in the place of the shipped one: what it leaves out would be on no label. A class of the"
                    + " law may be added to, not taken away.",
            "Add under 'classes:' of the row, each with its 'source:', {lines}; or give a product that differs a key of its own.");

    private final Entry entry;

    ReferenceMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
