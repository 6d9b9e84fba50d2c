package org.benchleaf.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.TestResult;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What rules ask about tests: what they gave, and whether they lasted as long as the contact. */
final class TestAnswers {

    private final CaseFacts facts;

    TestAnswers(CaseFacts facts) {
        this.facts = facts;
    }

    /**
     * Whether one of the tests of a contact gave one of these results. Without results it is asked whether there is a result at all,
     * which can always be told: a test whose result is not known is none. With results, one that is not known leaves it open
     * though another test gave something else; where there is no test, a rule of its own asks for one. A test whose liquid is not
     * named may have been one of them.
     */
    Judgement said(Asked asked, List<String> results) {
        List<SpotTest> tests = facts.contactTests(asked).toList();
        boolean said = tests.stream().anyMatch(test -> said(test, results));
        Optional<SpotTest> unnamed = facts.unnamedTests(asked)
                .filter(test -> said(test, results) || !results.isEmpty() && isOpen(test)).findFirst();
        if (!said && unnamed.isPresent()) {
            return Judgement.cannotTell(MissingFact.testedLiquid(unnamed.get().medium()));
        }
        return said || results.isEmpty() ? Judgement.of(said) : tests.stream().filter(TestAnswers::isOpen).findFirst()
                .map(test -> Judgement.cannotTell(MissingFact.result(test.medium(), test.with())))
                .orElse(tests.isEmpty() ? Judgement.NO_BY_SILENCE : Judgement.NO);
    }

    /**
     * Whether each indicator gave one of its results. Without results it is asked whether there is a result at all, which can
     * always be told. With results it cannot be told where nobody tested, or where a test came to nothing.
     */
    Judgement indicated(Layer layer, Map<String, List<String>> wanted) {
        return Judgement.all(wanted.entrySet().stream(), entry -> {
            List<SpotTest> tests = facts.tests(layer).filter(test -> facts.liquids.nameFits(test.with(), entry.getKey())).toList();
            boolean said = tests.stream().anyMatch(test -> said(test, entry.getValue()));
            boolean open = tests.stream().noneMatch(test -> test.result().isKnown()) || tests.stream().anyMatch(TestAnswers::isOpen);
            return said || entry.getValue().isEmpty() || !open ? Judgement.of(said)
                    : Judgement.cannotTell(MissingFact.result(layer.name(), entry.getKey()));
        });
    }

    private static boolean said(SpotTest test, List<String> results) {
        return test.result().isKnown() && (results.isEmpty() || results.contains(test.result().word())
                || results.contains(test.result().group().word()));
    }

    /** Whether a test was made that does not tell; one that was not made is none. */
    private static boolean isOpen(SpotTest test) {
        return test.result().group() == TestResult.Group.NOT_KNOWN;
    }

    /** Whether the case tells how long the liquid touches the medium; it is left open where it tells that in part or not at all. */
    Judgement contactTold(Asked asked) {
        return contact(asked, false).map(one -> one.minutes().isPresent() ? Judgement.YES
                : Judgement.cannotTell(MissingFact.contact(one.words()))).orElse(Judgement.NO);
    }

    /**
     * Whether the longest test that passed lasted as long as the whole contact; where that is not told in full, as what is told
     * of it, and no shorter than a time. It cannot be told of a test that does not say how long it lasted.
     */
    Judgement dwells(Asked asked, Quantity leastElse, boolean everyBathAllowed) {
        double least = contact(asked, everyBathAllowed).map(one -> one.minutes()
                .orElseGet(() -> Math.max(one.told(), leastElse.highIn(Unit.MINUTE)))).orElse(0.0);
        boolean covered = facts.longestTest(asked).filter(tested -> tested >= least).isPresent();
        return covered ? Judgement.YES : facts.passed(asked).filter(test -> test.dwell().isEmpty()).findFirst()
                .map(test -> MissingFact.dwell(test.medium(), test.with()))
                .or(() -> facts.unnamedTests(asked).filter(test -> test.result().isPassed()).findFirst()
                        .map(test -> MissingFact.testedLiquid(test.medium())))
                .map(Judgement::cannotTell).orElse(Judgement.NO);
    }

    private Optional<Contact> contact(Asked asked, boolean everyBathAllowed) {
        return asked.step().flatMap(step -> asked.layer().flatMap(layer -> asked.liquid().map(liquid ->
                Contact.of(facts, step, layer, liquid, everyBathAllowed))));
    }
}
