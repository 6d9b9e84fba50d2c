package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.TreatmentCase;

/** Asks every rule of the trade, and every cell of the matrix, of a case. */
public final class TradeRules {

    private TradeRules() {
    }

    /**
     * What the rules had to say: findings for the pages, and messages for the author; an error among them keeps the
     * case from being published.
     *
     * @param today the day of publishing, for steps without a day of their own
     * @param answered what recorded reasons have answered already, of rules that are not asked here
     */
    public static Review review(TreatmentCase treatment, Library library, LocalDate today, List<Finding> answered) {
        CaseFacts facts = new CaseFacts(treatment, library, today);
        Answers answers = new Answers(facts);
        RuleBench bench = new RuleBench(facts, answers);
        List<Speaking> spoken = Stream.concat(bench.rules(), new MatrixBench(facts, answers, bench).cells()).toList();
        return new Reasons(treatment, library, answered).answer(spoken);
    }
}
