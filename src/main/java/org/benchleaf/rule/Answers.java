package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Part;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** Whether a condition holds of what it is asked of: the meaning of every building block. */
final class Answers {

    private final CaseFacts facts;
    private final Fields fields;
    private final Readings readings;

    Answers(CaseFacts facts) {
        this.facts = facts;
        this.fields = new Fields(facts);
        this.readings = new Readings(facts);
    }

    boolean holds(Condition condition, Asked asked) {
        Of of = new Of(asked);
        return condition.clauses().stream().allMatch(clause -> clause.ask(of));
    }

    private final class Of implements Condition.Kinds<Boolean> {

        private final Asked asked;

        Of(Asked asked) {
            this.asked = asked;
        }

        @Override
        public Boolean anyOf(Condition.AnyOf clause) {
            return clause.conditions().stream().anyMatch(condition -> holds(condition, asked));
        }

        @Override
        public Boolean noneOf(Condition.NoneOf clause) {
            return clause.conditions().stream().noneMatch(condition -> holds(condition, asked));
        }

        @Override
        public Boolean block(Condition.Block clause) {
            return answer(clause.block(), clause.given(), asked);
        }
    }

    private boolean answer(BuildingBlock block, Condition.Given given, Asked asked) {
        return switch (block) {
            case HAS -> given.fields().stream().allMatch(field -> fields.value(field, asked).isPresent());
            case SAYS -> says(given.fieldWords(), asked);
            case ABOVE -> limits(given.limits(), asked, (fact, limit) -> fact.above(limit).orElse(false));
            case AT_MOST -> limits(given.limits(), asked, (fact, limit) -> !fact.above(limit).orElse(true));
            case AT_LEAST -> limits(given.limits(), asked, (fact, limit) -> !fact.below(limit).orElse(true));
            case BELOW -> limits(given.limits(), asked, (fact, limit) -> fact.below(limit).orElse(false));
            case MORE_THAN -> pairs(given.pairs(), asked, (one, other) -> one.moreThan(other).orElse(false));
            case NO_MORE_THAN -> pairs(given.pairs(), asked, (one, other) -> !one.moreThan(other).orElse(true));
            case RATIO -> ratio(given, asked);
            case OBSERVED -> given.fields().stream().allMatch(field -> fields.value(field, asked)
                    .filter(fact -> fact.words().stream().noneMatch(Answers::isOnlyATime)).isPresent());
            case KIND -> asked.step().filter(step -> given.words().contains(step.kind().word())).isPresent();
            case PART -> asked.step().filter(step -> step.parts().stream().map(Part::word)
                    .anyMatch(given.words()::contains)).isPresent();
            case TOUCHES -> asked.step().filter(step -> facts.touches(step)
                    .filter(touch -> asked.layer().map(Layer::name).map(touch.layer().orElseThrow().name()::equals).orElse(true))
                    .anyMatch(touch -> inner(given, touch))).isPresent();
            case SOME_STEP -> facts.order.all().stream().anyMatch(step -> inner(given, asked.at(step)));
            case EARLIER_STEP -> asked.step().map(facts.order::before).orElse(List.of()).stream()
                    .anyMatch(step -> inner(given, asked.at(step)));
            case LATER_STEP -> asked.step().map(facts.order::after).orElse(List.of()).stream()
                    .anyMatch(step -> inner(given, asked.at(step)));
            case FOLLOWING_STEP -> asked.step().map(facts.order::following).orElse(List.of()).stream()
                    .anyMatch(step -> inner(given, asked.at(step)));
            case LIQUID -> liquids(asked).anyMatch(liquid -> facts.liquids.answers(liquid, given.words()));
            case TOOL -> given.words().stream().anyMatch(word -> hasTool(asked, word));
            case TOOLS -> given.words().stream().allMatch(word -> hasTool(asked, word));
            case LAYER -> asked.layer().filter(layer -> layer.isOneOf(given.words())).isPresent();
            case KNOWN_LAYER -> asked.layer().filter(layer -> !layer.rows().isEmpty()).isPresent();
            case MATRIX -> asked.layer().filter(layer -> given.named().entrySet().stream()
                    .allMatch(cell -> verdict(layer, cell.getKey(), cell.getValue()))).isPresent();
            case TESTED -> contactTests(asked).anyMatch(test -> said(test, given.words()));
            case INDICATED -> asked.layer().filter(layer -> indicated(layer, given.named())).isPresent();
            case PAPER_INDICATED -> indicated(facts.support(), given.named());
            case DWELL -> dwells(asked, given.numbers().get("limit"), false);
            case DWELL_MOST -> dwells(asked, given.numbers().get("limit"), true);
            case END_POINT -> asked.step().filter(EndPoint::isReached).isPresent();
            case FIXED -> onStepAndLayer(asked, facts::fixedBefore);
            case PROTECTED -> onStepAndLayer(asked, (step, layer) -> asked.liquid()
                    .filter(liquid -> facts.protectedAt(step, layer, liquid)).isPresent());
            case AGREED -> asked.step().filter(this::agreed).isPresent();
            case PERMITTED -> given.words().stream().allMatch(use -> permitted(use, asked));
            case RISK_STATED -> asked.step().filter(step -> Optional.ofNullable(facts.treatment.proposal().risks()
                    .get(step.kind())).filter(Words::known).isPresent()).isPresent();
            case METER_READY -> asked.step().filter(step -> readings.meterReady(step,
                    given.numbers().get("buffers"), given.numbers().get("near"))).isPresent();
            case MEASURED -> given.words().stream().allMatch(readings::beforeAndAfter);
            case ALIKE -> asked.picture().flatMap(picture -> facts.treatment.pictures().stream()
                    .filter(other -> picture.pair().filter(other.id()::equals).isPresent()).findFirst())
                    .filter(pair -> given.fields().stream().allMatch(field ->
                            fields.value(field, asked).equals(fields.value(field, Asked.of(pair))))).isPresent();
            case APART -> asked.result().filter(result -> readings.keptApart(result, given.words())).isPresent();
        };
    }

    private boolean inner(Condition.Given given, Asked asked) {
        return given.inner().filter(condition -> holds(condition, asked)).isPresent();
    }

    private boolean says(Map<CaseField, List<String>> wanted, Asked asked) {
        return wanted.entrySet().stream().allMatch(entry -> fields.value(entry.getKey(), asked)
                .filter(fact -> fact.words().stream().anyMatch(text ->
                        entry.getValue().stream().anyMatch(word -> Words.holds(text, word)))).isPresent());
    }

    private boolean limits(Map<CaseField, Quantity> wanted, Asked asked, BiPredicate<Fact, Quantity> test) {
        return wanted.entrySet().stream().allMatch(entry -> fields.value(entry.getKey(), asked)
                .filter(fact -> test.test(fact, entry.getValue())).isPresent());
    }

    private boolean pairs(Map<CaseField, CaseField> wanted, Asked asked, BiPredicate<Fact, Fact> test) {
        return wanted.entrySet().stream().allMatch(entry -> fields.value(entry.getKey(), asked)
                .filter(one -> fields.value(entry.getValue(), asked).filter(other -> test.test(one, other)).isPresent())
                .isPresent());
    }

    private boolean ratio(Condition.Given given, Asked asked) {
        Optional<Double> of = fields.value(given.fields().get(0), asked).flatMap(Fact::usual);
        Optional<Double> to = fields.value(given.fields().get(1), asked).flatMap(Fact::usual);
        if (of.isEmpty() || to.isEmpty()) {
            return false;
        }
        double wanted = to.get() * given.numbers().get("is").value();
        Quantity within = given.numbers().get("within");
        return Math.abs(of.get() - wanted) <= within.value() * within.unit().factor() * Math.abs(wanted);
    }

    private static boolean isOnlyATime(String text) {
        return QuantityReader.read(text, Dimension.TIME).quantity().isPresent();
    }

    private Stream<String> liquids(Asked asked) {
        return asked.liquid().map(Stream::of).orElseGet(() -> asked.step().stream().flatMap(facts::liquidsOf));
    }

    private boolean hasTool(Asked asked, String word) {
        return asked.step().stream().flatMap(facts::toolsOf).anyMatch(id -> facts.liquids.nameFits(id, word));
    }

    private static boolean verdict(Layer layer, String action, List<String> signs) {
        return layer.rows().stream().map(row -> row.on(action)).map(Matrix.Verdict::sign).anyMatch(signs::contains);
    }

    private Stream<SpotTest> contactTests(Asked asked) {
        return asked.layer().stream().flatMap(layer -> asked.liquid().stream()
                .flatMap(liquid -> facts.tests(layer, liquid)));
    }

    private static boolean said(SpotTest test, List<String> results) {
        return test.result().isKnown() && (results.isEmpty() || results.contains(test.result().word())
                || results.contains(test.result().group().word()));
    }

    private boolean indicated(Layer layer, Map<String, List<String>> wanted) {
        return wanted.entrySet().stream().allMatch(entry -> facts.tests(layer)
                .filter(test -> facts.liquids.nameFits(test.with(), entry.getKey()))
                .anyMatch(test -> said(test, entry.getValue())));
    }

    /** Whether the longest test that passed lasted as long as the whole contact, which is never taken as shorter. */
    private boolean dwells(Asked asked, Quantity leastElse, boolean everyBathAllowed) {
        double wanted = asked.step().flatMap(step -> asked.layer().flatMap(layer -> asked.liquid().map(liquid ->
                Contact.of(facts, step, layer, liquid, everyBathAllowed)))).map(contact -> contact.minutes()
                .orElseGet(() -> Math.max(contact.told(), leastElse.highIn(Unit.MINUTE)))).orElse(0.0);
        return facts.longestTest(asked).filter(tested -> tested >= wanted).isPresent();
    }

    private static boolean onStepAndLayer(Asked asked, BiPredicate<Step, Layer> test) {
        return asked.step().filter(step -> asked.layer().filter(layer -> test.test(step, layer)).isPresent()).isPresent();
    }

    private boolean agreed(Step step) {
        Proposal proposal = facts.treatment.proposal();
        Predicate<LocalDate> inTime = day -> step.on().map(done -> !done.isBefore(day)).orElse(true);
        boolean proposed = proposal.approved().filter(inTime).isPresent() && proposal.steps().contains(step.kind());
        return proposed || proposal.amendments().stream()
                .anyMatch(amendment -> amendment.adds().contains(step.kind()) && inTime.test(amendment.on()));
    }

    private boolean permitted(String use, Asked asked) {
        return facts.treatment.publication().permits(Permission.Use.valueOf(use.toUpperCase(Locale.ROOT)),
                asked.step().flatMap(Step::on).orElse(facts.today));
    }
}
