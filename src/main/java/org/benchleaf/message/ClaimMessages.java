package org.benchleaf.message;

/** What is said about words and numbers that claim more than there is to show. */
public enum ClaimMessages implements CatalogueEntry {
    PROMISE("CLAIM-001", Severity.ERROR,
            "{where} says '{claim}', which promises too much.",
            "Readers would expect from treatment what it cannot do.",
            "{instead} Or record the reason for the rule 'no-promises' under 'reasons'."),
    SAFETY("CLAIM-002", Severity.WARNING,
            "{where} says '{claim}'.",
            "Nothing on a bench is without risk, and readers act on the word.",
            "{instead}"),
    AGE("CLAIM-003", Severity.ERROR,
            "{where} says '{claim}', and the case names no evidence for the age.",
            "Others will quote the date; it must rest on what can be seen, or be known as an opinion.",
            "{instead} Or give 'evidence:' or 'opinion: yes' under 'made'."),
    AUTHENTICITY("CLAIM-004", Severity.ERROR,
            "{where} says '{claim}' without evidence in the same sentence.",
            "A statement on origin or authenticity must rest on physical evidence or be labelled an opinion.",
            "{instead} Or record the reason for the rule 'dating-has-evidence' under 'reasons'."),
    STRENGTH("CLAIM-006", Severity.ERROR,
            "{where} names the strength '{strength}', and the case keeps strengths from the public.",
            "The public page prints these words, and lay readers copy recipes onto family papers.",
            "Leave the number out, for the sheets tell it with the solution; write 'strengths for the public: yes'; or record"
                    + " the reason for the rule 'strengths-for-public' under 'reasons'."),
    STRIP_TOO_FINE("CLAIM-005", Severity.WARNING,
            "The result '{measure}' was read with a test strip and is written as {value}.",
            "A strip is compared by eye with colours half a unit or a whole unit apart; more decimals claim what nobody saw.",
            "Write what the strip showed, such as 5.5, or the two colours that it lay between."),
    STRIP_WORDS_TOO_FINE("CLAIM-007", Severity.WARNING,
            "{where} tells of a test strip and writes {value}.",
            "A strip is compared by eye with colours half a unit or a whole unit apart; more decimals claim what nobody saw.",
            "Write what the strip showed, such as 5.5, or name the meter that read the rest.");

    private final Entry entry;

    ClaimMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
