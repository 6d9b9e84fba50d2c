package org.benchleaf.message;

/** What is said when something private stands in the finished site; each stops the edition. */
public enum LeakMessages implements CatalogueEntry {
    PRIVATE_VALUE("LEAK-001", Severity.ERROR,
            "The private field '{field}' of the case '{case}' stands {where}.",
            "Owner, value, keeping place and the like must never leave the case file.",
            "Take it out of the words, file name or picture; the value itself is not repeated here on purpose. If it is only an "
                    + "ordinary word here, write under 'private': ordinary words: [{word: …, why: …}]."),
    PICTURE_METADATA("LEAK-002", Severity.ERROR,
            "A picture of the site carries {block}.",
            "Cameras and programs write places, serial numbers and names there.",
            "Delete the file from the site and publish again; if it comes back, report it as a fault of the program."),
    NOT_NAMES("LEAK-003", Severity.ERROR,
            "The private field '{field}' is free text that cannot be broken into names.",
            "A name that is not known as one cannot be looked for in the forms in which people write it.",
            "Write one entry for each: {person: First Last}, {family: …, given: …}, {organisation: …}, {telephone: …}, "
                    + "{e-mail: …}, {address: …}, {year: …}; other words that must not appear as {words: …}."),
    ORDINARY_WORD("LEAK-004", Severity.ERROR,
            "A name under the private field '{field}' is also an ordinary word.",
            "Looked for by itself it would be found in plain sentences; passed over, the name could leave.",
            "Decide, and write under 'private' either ordinary words: [{word: …, why: …}], and the word is looked for only "
                    + "beside a title, a given name, initials or the like, or always names: [\"…\"], and it is refused wherever it "
                    + "stands.");

    private final Entry entry;

    LeakMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
