package org.benchleaf.message;

/** What is said about pictures: their files, their words, and the pairs that are compared. */
public enum PictureMessages implements CatalogueEntry {
    FILE_MISSING("PICT-001", Severity.ERROR,
            "The picture '{picture}' names the file '{file}', which is not in the folder 'pictures' of the case.",
            "A page without its picture tells half the story.",
            "Put the file there, or correct 'file:'; small and capital letters count."),
    FILE_ELSEWHERE("PICT-002", Severity.ERROR,
            "The picture '{picture}' names '{file}', which is no plain file of the folder 'pictures'.",
            "Links and paths could bring files into the site that nobody meant to publish.",
            "Copy the file into the folder 'pictures' of the case and write its name alone."),
    NOT_A_PICTURE("PICT-003", Severity.ERROR,
            "The file '{file}' of the picture '{picture}' holds {found}.",
            "Only photographs and drawings made of dots can be cleaned of hidden data and made smaller.",
            "Save it as JPEG, PNG, WebP or TIFF; its name does not matter, only what it holds."),
    TOO_LARGE("PICT-004", Severity.ERROR,
            "The file '{file}' of the picture '{picture}' has {size}.",
            "Up to 100 million dots and 200 MB can be worked on; a larger claim may also be meant to stop the program.",
            "Make it smaller first; pages show it at most {widest} dots wide."),
    BROKEN("PICT-005", Severity.ERROR,
            "The file '{file}' of the picture '{picture}' is broken or cut short: {problem}.",
            "What cannot be read to its end cannot be shown.",
            "Copy it again from the camera or open it in an image program and save it anew."),
    OVER_BUDGET("PICT-006", Severity.WARNING,
            "The picture '{picture}' still has {size} kB at {width} dots, more than {budget} kB.",
            "The site is read on phones and from folders; so large a picture is slow.",
            "Crop it to what the caption speaks of, or reduce noise and grain."),
    COLOURS_UNKNOWN("PICT-007", Severity.ERROR,
            "The colours of the file '{file}' of the picture '{picture}' cannot be turned into those of a screen.",
            "Files for the printing press hold four inks, which screens would show wrong.",
            "Save it as an RGB picture with its profile."),
    TOO_LABORIOUS("PICT-008", Severity.ERROR,
            "The file '{file}' of the picture '{picture}' has {found}.",
            "No camera or program writes that; such a file is made to fill the memory or to take hours.",
            "Open it in an image program that you trust and save it anew, without what it carries beside the picture."),
    ALT_MISSING("PICT-010", Severity.ERROR,
            "The picture '{picture}' has no alternative text.",
            "Who cannot see the picture would not learn what it shows.",
            "Write in 'alt:' what is seen and why it matters, in one sentence of up to 150 characters."),
    ALT_IS_FILE_NAME("PICT-011", Severity.ERROR,
            "The alternative text of the picture '{picture}' is a file name: '{alt}'.",
            "Read aloud, a file name tells nothing.",
            "Write in 'alt:' what is seen and why it matters."),
    ALT_TWICE("PICT-012", Severity.ERROR,
            "The pictures '{picture}' and '{other}' of a pair have the same alternative text.",
            "A pair is shown for its difference; the same words twice hide it.",
            "Let the second text say what has changed."),
    ALT_TOO_LONG("PICT-013", Severity.ERROR,
            "The alternative text of the picture '{picture}' has {length} characters, more than 150.",
            "It is read aloud in one breath and cannot be skimmed.",
            "Keep the one thing that matters and move the rest into the caption."),
    PAIR_MOMENT("PICT-016", Severity.WARNING,
            "The pictures '{picture}' and '{other}' of a pair are both of the moment '{moment}'.",
            "A comparison needs a before and an after.",
            "Correct 'moment:', or show them singly.");

    private final Entry entry;

    PictureMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
