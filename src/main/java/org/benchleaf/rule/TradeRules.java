package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.LiquidPh;
import org.benchleaf.model.TestedContact;
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
     * @param ph works out the pH of liquids that state none
     * @param answered what recorded reasons have answered already, of rules that are not asked here
     */
    public static Review review(TreatmentCase treatment, Library library, LocalDate today, LiquidPh ph,
            List<Finding> answered) {
        CaseFacts facts = new CaseFacts(treatment, library, today, ph.of(treatment));
        ConditionAnswers answers = new ConditionAnswers(facts);
        RuleBench bench = new RuleBench(facts, answers);
        List<Speaking> spoken = Stream.concat(bench.rules(), new MatrixBench(facts, answers, bench).cells()).toList();
        Set<String> spoke = spoken.stream().map(Speaking::rule).collect(Collectors.toSet());
        Review review = new Reasons(treatment, library, today, answered).answer(spoken, bench.kept(spoke).toList());
        new HoldCheck(facts).told().forEach(review.messages()::add);
        return review;
    }

    /** The contacts of the baths of a case, with the tests by which the rules judge how long they may be. */
    public static List<TestedContact> tested(TreatmentCase treatment, Library library, LiquidPh ph) {
        // No contact depends on the day.
        return new ContactTests(new CaseFacts(treatment, library, LocalDate.EPOCH, ph.of(treatment))).found().toList();
    }
}
