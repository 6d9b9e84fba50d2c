package org.benchleaf.message;

/** What can be the matter with a record of a class that can be read. */
public enum RecordMessages implements CatalogueEntry {
    OTHER_ISSUE("RECORD-001", Severity.WARNING,
            "This record was made on issue {worked} of the class; its file is at issue {now}.",
            "Steps, amounts and outcomes may have been others.",
            "Read it beside the issue that was worked from; it is listed all the same."),
    STATION_TWICE("RECORD-002", Severity.WARNING,
            "There is another file of station {station}.",
            "One may be an earlier copy of the other, so both are listed.",
            "Look which one is complete, move the other out of the folder, and gather again."),
    NO_SUCH_STATION("RECORD-003", Severity.WARNING,
            "The class has {stations} stations; this record is of station {station}.",
            "It may belong to another class, or the number is a slip.",
            "Put the number under 'station' right; it is listed as it stands."),
    NOT_IN_THE_CLASS("RECORD-004", Severity.WARNING,
            "The class as it is now knows nothing of '{what}'.",
            "Its file was changed since the record was begun, or the record was changed by hand.",
            "Read it beside the issue that was worked from; it is listed as it stands."),
    UNKNOWN_CLASS("RECORD-005", Severity.ERROR,
            "No class is called '{name}'.",
            "Without the file of the class nobody can tell what was asked of its stations.",
            "{remedy}");

    private final Entry entry;

    RecordMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
