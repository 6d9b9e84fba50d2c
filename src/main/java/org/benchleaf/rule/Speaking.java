package org.benchleaf.rule;

import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.message.OpenQuestion;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Protection;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Rule;

/**
 * One rule, or one cell of the matrix, speaking of one thing.
 *
 * @param rule the id under which a reason is recorded
 * @param past whether a case whose treatment is done may tell that its record does not answer it, though it stops others
 * @param step the step it speaks of
 * @param settled the reason that the case itself gives, a protection that was tested; empty if there is none
 * @param ground why it speaks
 * @param missing the facts that are missing, as one clause; empty where none is
 * @param what what is the matter, its holes filled, to the author
 * @param read the same to a reader of the pages, who does not know the ids and keys of the case file
 */
record Speaking(String rule, Rule.Weight weight, boolean forTrainees, boolean past, Optional<String> step,
        Optional<Protection> settled, Ground ground, Place place, Optional<String> missing, String what, String read, String why,
        String fix) {

    /** Why a rule speaks. */
    enum Ground {
        /** It is not kept. */
        NOT_KEPT,
        /** It applies, and it cannot be told whether it is kept. */
        NOT_TOLD,
        /** It cannot be told whether it applies, or whether what it forbids is done. */
        PERHAPS
    }

    Severity severity() {
        if (weight == Rule.Weight.ADVICE) {
            return Severity.ADVICE;
        }
        return ground == Ground.PERHAPS ? Severity.WARNING : Severity.ERROR;
    }

    /** Whether a recorded reason answers it; a question is answered by why the fact is not known. */
    boolean takesReason() {
        return weight == Rule.Weight.REASON || ground == Ground.PERHAPS;
    }

    Message message() {
        return message(severity(), false, takesReason() || !past ? fix : fix + " If the treatment is done and its record does not tell it,"
                + " add {rule: " + rule + step.map(id -> ", step: " + id).orElse("") + ", past: " + Reason.Past.NOT_RECORDED.word()
                + ", why: …} under 'reasons:'; the case is then published without sheets for the bench.");
    }

    /** The same, said for others of the rule at the same step too. */
    Speaking andMore(int others) {
        return new Speaking(rule, weight, forTrainees, past, step, settled, ground, place, missing, what
                + " The same is to be said of " + others + " more there.", read, why, fix);
    }

    /** What is said where a case is retold: nothing has to be answered for that others did or did not tell. */
    Message openInSource() {
        return message(Severity.WARNING, true, "Enter it if the publication tells it: " + fix + " Else leave it so: the case is"
                + " published without sheets for the bench.");
    }

    /** What is said where a retold case does not tell a fact that a rule asks for. */
    Message untoldInSource() {
        return new RuleMessage(rule, severity(), what, why, "Enter it if the publication tells it: " + fix + " Else leave it so: the"
                + " results tell that it is not given.", true).told(place, step, asks(), false);
    }

    private Message message(Severity severity, boolean leftToSource, String remedy) {
        return new RuleMessage(rule, severity, what, why, remedy, leftToSource).told(place, step, asks(), takesReason());
    }

    private OpenQuestion asks() {
        return missing.map(fact -> new OpenQuestion(fact, step.orElse(""))).orElse(OpenQuestion.NONE);
    }
}
