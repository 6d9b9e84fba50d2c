package org.benchleaf.message;

/** What is said about words and numbers that claim more than there is to show. */
public enum ClaimMessages implements Message.Id {
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

    private final String code;
    private final Severity severity;
    private final String what;
    private final String why;
    private final String fix;

    ClaimMessages(String code, Severity severity, String what, String why, String fix) {
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
