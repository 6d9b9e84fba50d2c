package org.benchleaf.message;

/** What is said when something is not produced, because nobody has permitted it on the day of publishing. */
public enum ConsentMessages implements CatalogueEntry {
    STILL_DRAFT("CONS-001", Severity.ADVICE,
            "Nothing of this case is published: its state is 'draft'.",
            "A draft is checked but belongs to the studio alone.",
            "Set 'state: cleared' once the case has been read and the owner has agreed in writing."),
    TAKEN_BACK("CONS-002", Severity.WARNING,
            "Nothing of this case is published: its state is 'withdrawn'.",
            "What was taken back must not stay in public. 'publish' takes its pages, pictures and data out first and tells which.",
            "Nothing, if it is meant; copies that were handed out have to be called back by hand."),
    WITHHELD("CONS-003", Severity.ADVICE,
            "Nothing of this case is published before {until}; this edition is of {day}.",
            "The owner agreed to publication from that day on.",
            "Publish again on that day, or change 'withhold until' with the owner's written agreement."),
    NOT_PERMITTED("CONS-004", Severity.ADVICE,
            "{output} is not produced: no permission for {missing} is in force on {day}.",
            "Everything learned in a treatment is confidential until its owner agrees in writing.",
            "Add the written permission under 'publication: permissions', or leave it so."),
    PERMISSION_TAKEN_BACK("CONS-005", Severity.WARNING,
            "{output} is no longer produced: the permission for {missing} was withdrawn on {withdrawn}.",
            "A permission that was taken back ends publication. 'publish' takes the files out first and tells which.",
            "Nothing, if it is meant; copies that were handed out have to be called back by hand."),
    PERMISSION_IN_FUTURE("CONS-006", Severity.WARNING,
            "{output} is not produced yet: the permission for {missing} is dated {from}, and this edition is of {day}.",
            "A permission counts from the day it was given.",
            "Check the year, or publish again on that day."),
    PERMISSION_RUN_OUT("CONS-007", Severity.WARNING,
            "{output} is no longer produced: the permission for {missing} held until {until}.",
            "A permission that has run out ends publication. 'publish' takes the files out first and tells which.",
            "Nothing, if it is meant; else ask the owner for a new one and add it beside the old one."),
    NOT_COVERED("CONS-008", Severity.ADVICE,
            "{output} is not produced: the permission for {missing} covers {covers} alone.",
            "A permission allows what it names, in the ways it names.",
            "Leave it so, or add what the owner has agreed to in writing, in the words that 'Writing a case file' lists."),
    PERMISSION_NOTE("CONS-009", Severity.ADVICE,
            "The permission of {on} has a note: {note}",
            "Free words cannot be kept by a program, so you are asked to.",
            "Look whether what is published keeps to it."),
    STRENGTHS_HELD_BACK("CONS-010", Severity.WARNING,
            "The step sheet and the preparation sheet are held back: 'strengths for the public' is {written}, and this site"
                    + " can be read by everybody.",
            "Sheets tell strengths, and lay readers copy recipes.",
            "Write 'publishing: apart' in studio.yaml: the sheets then stand in a training site of their own. Or write"
                    + " 'strengths for the public: yes', if the owner and you agree to it."),
    RECIPE_WITHHELD("CONS-011", Severity.WARNING,
            "The step sheet and the preparation sheet are held back: {why}, and this site can be read by everybody.",
            "Some recipes never go on a page for the public, whoever agrees to it.",
            "Write 'publishing: apart' in studio.yaml: the sheets then stand in a training site of their own."),
    SOURCE_FORBIDS("CONS-020", Severity.WARNING,
            "The licence of the source, '{licence}', does not allow a retelling to be published. Not produced: {outputs}.",
            "What is made from a publication may be published only as far as its licence allows.",
            "Ask whoever holds the rights, and enter the written permission for {missing} under 'publication: permissions'; or"
                    + " leave it so."),
    SOURCE_LICENCE_NOT_KNOWN("CONS-021", Severity.WARNING,
            "Whether the licence of the source, '{licence}', allows a retelling to be published is not known. Not produced:"
                    + " {outputs}.",
            "What is made from a publication may be published only as far as its licence allows.",
            "Look in the publication for its licence and enter its SPDX identifier; or ask whoever holds the rights, and enter the"
                    + " written permission for {missing} under 'publication: permissions'."),
    SOURCE_CONDITION("CONS-022", Severity.ADVICE,
            "The licence of the source, '{licence}', has a condition: {keep}",
            "The program cannot keep it, so you are asked to.",
            "Look whether what you do with the pages keeps to it."),
    OPEN_IN_SOURCE("CONS-023", Severity.ADVICE,
            "The step sheet and the preparation sheet are not produced, since the publication leaves this open: {open}.",
            "What others did can be told as they told it; to repeat it by hand, more must be known.",
            "Enter what the publication tells, or leave it so: the case study and the results are published."),
    OPEN_IN_RECORD("CONS-024", Severity.ADVICE,
            "The step sheet and the preparation sheet are not produced, since the record of the treatment leaves this open: {open}.",
            "A treatment that is done can be told as it was; to repeat it by hand, more must be known.",
            "Find out what is missing, and take 'past:' out of its reason; or leave it so: the case study and the results are"
                    + " published.");

    private final Entry entry;

    ConsentMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
