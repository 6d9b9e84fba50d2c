package org.benchleaf.message;

/** What is said when something private stands in the finished site; each stops the edition. */
public enum LeakMessages implements MessageId {
    PRIVATE_VALUE("LEAK-001", Severity.ERROR,
            "The private field '{field}' of the case '{case}' stands in a file of the site ({where}).",
            "Owner, value, keeping place and the like must never leave the case file.",
            "Take it out of the words, file name or picture that this file is made from; the value itself is not repeated here on purpose."),
    PICTURE_METADATA("LEAK-002", Severity.ERROR,
            "A picture of the site carries {block}.",
            "Cameras and programs write places, serial numbers and names there.",
            "Delete the file from the site and publish again; if it comes back, report it as a fault of the program.");

    private final String code;
    private final Severity severity;
    private final String what;
    private final String why;
    private final String fix;

    LeakMessages(String code, Severity severity, String what, String why, String fix) {
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
