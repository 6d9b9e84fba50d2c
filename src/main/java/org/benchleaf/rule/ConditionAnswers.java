package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
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
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/** Whether a condition holds of what it is asked of, or cannot be told: the meaning of every building block. */
final class ConditionAnswers {

    /** Kinds of step that nobody does without a tool. */
    private static final Set<StepKind> CLEANING = EnumSet.of(StepKind.SURFACE_CLEANING, StepKind.MOULD_REMOVAL);

    private final CaseFacts facts;
    private final FieldReader fields;
    private final MeasuringAnswers readings;
    private final TestAnswers tests;

    ConditionAnswers(CaseFacts facts) {
        this.facts = facts;
        this.fields = new FieldReader(facts);
        this.readings = new MeasuringAnswers(facts);
        this.tests = new TestAnswers(facts);
    }

    /** Whether all clauses hold; it cannot be told where a fact is missing that would decide it. */
    Judgement answer(Condition condition, Asked asked) {
        Of of = new Of(asked);
        return Judgement.all(condition.clauses().stream(), clause -> clause.ask(of));
    }

    private final class Of implements Condition.Kinds<Judgement> {

        private final Asked asked;

        Of(Asked asked) {
            this.asked = asked;
        }

        @Override
        public Judgement anyOf(Condition.AnyOf clause) {
            return Judgement.any(clause.conditions().stream(), condition -> answer(condition, asked));
        }

        @Override
        public Judgement noneOf(Condition.NoneOf clause) {
            return Judgement.any(clause.conditions().stream(), condition -> answer(condition, asked)).not();
        }

        @Override
        public Judgement block(Condition.Block clause) {
            return answer(clause.block(), clause.given(), asked);
        }
    }

    private Judgement answer(BuildingBlock block, Condition.Given given, Asked asked) {
        return switch (block) {
            case HAS -> Judgement.all(given.fields().stream(), field -> fields.has(field, asked));
            case SAYS -> says(given.fieldWords(), asked);
            case ABOVE -> anyAmount(given.limits(), asked, FieldFact::above);
            case BELOW -> anyAmount(given.limits(), asked, FieldFact::below);
            case AT_MOST -> everyAmount(given.limits(), asked, FieldFact::above, FieldFact::below);
            case AT_LEAST -> everyAmount(given.limits(), asked, FieldFact::below, FieldFact::above);
            case MORE_THAN -> pairs(given.pairs(), asked);
            case NO_MORE_THAN -> Judgement.all(given.pairs().entrySet().stream(),
                    pair -> moreThan(pair.getKey(), pair.getValue(), asked).not());
            case RATIO -> ratio(given, asked);
            case TOUCHES -> asked.step().map(step -> touches(step, given, asked)).orElse(Judgement.NO_BY_SILENCE);
            case SOME_STEP -> anyStep(facts.order.all(), given, asked);
            case EARLIER_STEP -> anyStep(asked.step().map(facts.order::before).orElse(List.of()), given, asked);
            case STEP_SINCE_DRYING -> anyStep(asked.step().map(facts.order::sinceDrying).orElse(List.of()), given, asked);
            case LATER_STEP -> anyStep(asked.step().map(facts.order::after).orElse(List.of()), given, asked);
            case FOLLOWING_STEP -> anyStep(asked.step().map(facts.order::following).orElse(List.of()), given, asked);
            case LIQUID -> liquid(given.words(), asked);
            case SOME_LIQUID -> someLiquid(given, asked);
            case FIXED -> fixed(asked);
            case TOOL -> tool(given.words(), asked);
            case METER_READY -> asked.step().map(step -> readings.meterReady(step,
                    given.numbers().get("buffers"), given.numbers().get("near"))).orElse(Judgement.NO_BY_SILENCE);
            case END_POINT -> asked.step().map(EndPoint::reached).orElse(Judgement.NO_BY_SILENCE);
            case TESTED -> tests.said(asked, given.words());
            case INDICATED -> asked.layer().map(layer -> tests.indicated(layer, given.named())).orElse(Judgement.NO_BY_SILENCE);
            case PAPER_INDICATED -> tests.indicated(facts.support(), given.named());
            case DWELL -> tests.dwells(asked, given.numbers().get("limit"), false);
            case CONTACT_TOLD -> tests.contactTold(asked);
            case DWELL_MOST -> tests.dwells(asked, given.numbers().get("limit"), true);
            case PROTECTED -> protectedAgain(asked);
            case ALIKE -> alike(given.fields(), asked);
            case LAYER -> asked.layer().map(layer -> layer(layer, given.words())).orElse(Judgement.NO_BY_SILENCE);
            case KIND, PART, KNOWN_LAYER, MATRIX -> Judgement.of(isRecorded(block, given, asked));
            default -> Judgement.recorded(isRecorded(block, given, asked));
        };
    }

    /** The blocks that ask whether the file records something, which can always be told: what it calls unknown it does not record. */
    private boolean isRecorded(BuildingBlock block, Condition.Given given, Asked asked) {
        return switch (block) {
            case OBSERVED -> given.fields().stream().allMatch(field -> fields.value(field, asked)
                    .filter(fact -> fact.words().stream().noneMatch(ConditionAnswers::isOnlyATime)).isPresent());
            case KIND -> asked.step().filter(step -> given.words().contains(step.kind().word())).isPresent();
            case PART -> asked.step().filter(step -> step.parts().stream().map(Part::word)
                    .anyMatch(given.words()::contains)).isPresent();
            case TOOLS -> given.words().stream().allMatch(word -> hasTool(asked, word));
            case KNOWN_LAYER -> asked.layer().filter(layer -> !layer.rows().isEmpty()).isPresent();
            case MATRIX -> asked.layer().filter(layer -> given.named().entrySet().stream()
                    .allMatch(cell -> verdict(layer, cell.getKey(), cell.getValue()))).isPresent();
            case AGREED -> asked.step().filter(this::agreed).isPresent();
            case PERMITTED -> given.words().stream().allMatch(use -> permitted(use, asked));
            case RISK_STATED -> asked.step().filter(step -> Optional.ofNullable(facts.treatment.proposal().risks()
                    .get(step.kind())).filter(WordComparison::known).isPresent()).isPresent();
            case MEASURED -> given.words().stream().allMatch(readings::beforeAndAfter);
            case APART -> asked.result().filter(result -> readings.keptApart(result, given.words())).isPresent();
            case IN_ORDER -> asked.step().filter(step -> facts.wording.inOrder(step, given.words())).isPresent();
            case TOOLS_TOLD -> asked.step().filter(facts.wording::tellsTools).isPresent();
            case TEMPERATURES_ALIKE -> asked.step().filter(facts.wording::temperaturesAlike).isPresent();
            case COUNTS_ALIKE -> asked.picture().filter(facts.wording::countsAlike).isPresent();
            default -> throw new IllegalArgumentException("'" + block.word() + "' asks for more than what is recorded");
        };
    }

    private Judgement inner(Condition.Given given, Asked asked) {
        return given.inner().map(condition -> answer(condition, asked)).orElse(Judgement.NO);
    }

    private Judgement anyStep(List<Step> steps, Condition.Given given, Asked asked) {
        return steps.isEmpty() ? Judgement.NO : Judgement.any(steps.stream(), step -> inner(given, asked.at(step)));
    }

    private Judgement touches(Step step, Condition.Given given, Asked asked) {
        return Judgement.any(facts.touches(step).filter(touch -> asked.layer().map(Layer::name)
                .map(touch.layer().orElseThrow().name()::equals).orElse(true)), touch -> inner(given, touch));
    }

    private Judgement says(Map<CaseField, List<String>> wanted, Asked asked) {
        return Judgement.all(wanted.entrySet().stream(), entry -> fields.ask(entry.getKey(), asked,
                fact -> Judgement.of(fact.words().stream().anyMatch(text ->
                        entry.getValue().stream().anyMatch(word -> WordComparison.holds(text, word))))));
    }

    /** Whether each field lies beyond its limit at its worst end, for any of the liquids where it speaks of liquids. */
    private Judgement anyAmount(Map<CaseField, Quantity> limits, Asked asked,
            BiFunction<FieldFact, Quantity, Optional<Boolean>> beyond) {
        return Judgement.all(limits.entrySet().stream(), entry -> Judgement.any(fields.askedOf(entry.getKey(), asked),
                one -> fields.ask(entry.getKey(), one, fact -> Judgement.of(beyond.apply(fact, entry.getValue()).orElse(false)))));
    }

    /** Whether each field stays within its limit with every liquid; a range on both sides of it leaves that open. */
    private Judgement everyAmount(Map<CaseField, Quantity> limits, Asked asked,
            BiFunction<FieldFact, Quantity, Optional<Boolean>> beyond,
            BiFunction<FieldFact, Quantity, Optional<Boolean>> within) {
        return Judgement.all(limits.entrySet().stream(), entry -> Judgement.all(fields.askedOf(entry.getKey(), asked),
                one -> fields.ask(entry.getKey(), one, fact -> {
                    boolean passes = beyond.apply(fact, entry.getValue()).orElse(true);
                    boolean alsoWithin = within.apply(fact, entry.getValue()).orElse(false);
                    return passes && alsoWithin ? Judgement.cannotTell(MissingFact.straddling(entry.getKey(), one))
                            : Judgement.of(!passes);
                })));
    }

    private Judgement pairs(Map<CaseField, CaseField> wanted, Asked asked) {
        return Judgement.all(wanted.entrySet().stream(), pair -> moreThan(pair.getKey(), pair.getValue(), asked));
    }

    private Judgement moreThan(CaseField one, CaseField other, Asked asked) {
        return fields.ask(one, asked, first -> fields.ask(other, asked,
                second -> first.moreThan(second) == Truth.CANNOT_TELL
                        ? Judgement.cannotTell(MissingFact.overlapping(one, other))
                        : Judgement.of(first.moreThan(second) == Truth.YES)));
    }

    private Judgement ratio(Condition.Given given, Asked asked) {
        CaseField of = given.fields().get(0);
        CaseField to = given.fields().get(1);
        return fields.ask(of, asked, first -> fields.ask(to, asked, second -> Judgement.of(first.usual()
                .flatMap(one -> second.usual().map(other -> isRatio(one, other, given))).orElse(false))));
    }

    private static boolean isRatio(double of, double to, Condition.Given given) {
        double wanted = to * given.numbers().get("is").value();
        Quantity within = given.numbers().get("within");
        return Math.abs(of - wanted) <= within.value() * within.unit().factor() * Math.abs(wanted);
    }

    /** Whether something in the liquids of the step answers to one of the words; without words, whether there is any. */
    private Judgement liquid(List<String> words, Asked asked) {
        List<String> liquids = fields.liquids(asked).toList();
        if (words.isEmpty()) {
            return Judgement.of(!liquids.isEmpty());
        }
        if (isUnnamed(liquids, asked)) {
            return Judgement.cannotTell(MissingFact.liquid());
        }
        Optional<Step> told = ofTheStep(asked);
        Judgement holds = Judgement.any(withDissolved(liquids, asked), each -> facts.liquids.answers(each, words));
        return holds.isNo() && told.filter(facts::carriesWhatNobodyNames).isPresent() ? Judgement.cannotTell(MissingFact.composition())
                : holds;
    }

    private Judgement someLiquid(Condition.Given given, Asked asked) {
        List<String> liquids = fields.liquids(asked).toList();
        return isUnnamed(liquids, asked) ? Judgement.cannotTell(MissingFact.liquid())
                : Judgement.any(withDissolved(liquids, asked), liquid -> inner(given, asked.with(liquid)));
    }

    /** The liquids and, where the whole step is asked of, the dry chemicals that it uses beside them. */
    private Stream<String> withDissolved(List<String> liquids, Asked asked) {
        return Stream.concat(liquids.stream(), ofTheStep(asked).stream().flatMap(facts::dissolvedIn));
    }

    private static Optional<Step> ofTheStep(Asked asked) {
        return asked.step().filter(step -> asked.liquid().isEmpty());
    }

    private boolean isUnnamed(List<String> liquids, Asked asked) {
        return liquids.isEmpty() && asked.step().filter(facts::wetsBy).isPresent();
    }

    private Judgement fixed(Asked asked) {
        Optional<Step> open = asked.step().flatMap(facts::fixingOfUnnamed);
        boolean fixed = onStepAndLayer(asked, facts::fixedBefore);
        return fixed || open.isEmpty() ? Judgement.of(fixed) : Judgement.cannotTell(MissingFact.fixedMedium(open.get()));
    }

    private Judgement tool(List<String> words, Asked asked) {
        boolean none = asked.step().filter(step -> CLEANING.contains(step.kind())
                && facts.toolsOf(step).findAny().isEmpty()).isPresent();
        return none ? Judgement.cannotTell(MissingFact.tools())
                : Judgement.of(words.stream().anyMatch(word -> hasTool(asked, word)));
    }

    private static Judgement layer(Layer layer, List<String> words) {
        boolean one = layer.isOneOf(words);
        return !one && !layer.isNamed() ? Judgement.cannotTell(MissingFact.paper()) : Judgement.of(one);
    }

    private static boolean isOnlyATime(String text) {
        return QuantityReader.read(text, Dimension.TIME).quantity().isPresent();
    }

    private boolean hasTool(Asked asked, String word) {
        return asked.step().stream().flatMap(facts::toolsOf).anyMatch(id -> facts.liquids.nameFits(id, word));
    }

    private static boolean verdict(Layer layer, String action, List<String> signs) {
        return layer.rows().stream().map(row -> row.on(action)).map(Matrix.Verdict::sign).anyMatch(signs::contains);
    }

    private Judgement protectedAgain(Asked asked) {
        return asked.step().flatMap(step -> asked.layer().flatMap(layer -> asked.liquid().map(liquid ->
                facts.protectedAt(step, layer, liquid)))).orElse(Judgement.NO);
    }

    /** Whether a picture and its pair agree; what neither says is not known to be alike, unless leaving it out says that there is none. */
    private Judgement alike(List<CaseField> wanted, Asked asked) {
        Optional<Asked> other = asked.picture().flatMap(picture -> facts.treatment.pictures().stream()
                .filter(one -> picture.pair().filter(one.id()::equals).isPresent()).findFirst()).map(Asked::of);
        return other.isEmpty() ? Judgement.NO_BY_SILENCE : Judgement.all(wanted.stream(), field -> {
            Optional<FieldFact> own = fields.value(field, asked);
            boolean open = own.isEmpty() && field.absence() == CaseField.Absence.NOT_GIVEN;
            boolean same = own.equals(fields.value(field, other.get()));
            return same && open ? Judgement.cannotTell(MissingFact.of(field, asked)) : Judgement.of(same);
        });
    }

    private static boolean onStepAndLayer(Asked asked, BiPredicate<Step, Layer> test) {
        return asked.step().filter(step -> asked.layer().filter(layer -> test.test(step, layer)).isPresent()).isPresent();
    }

    private boolean agreed(Step step) {
        Proposal proposal = facts.treatment.proposal();
        Predicate<LocalDate> inTime = day -> step.lastDay().map(done -> !done.isBefore(day)).orElse(true);
        boolean proposed = proposal.approved().filter(inTime).isPresent() && proposal.steps().contains(step.kind());
        return proposed || proposal.amendments().stream()
                .anyMatch(amendment -> amendment.adds().contains(step.kind()) && inTime.test(amendment.on()));
    }

    private boolean permitted(String use, Asked asked) {
        return facts.treatment.publication().permits(Permission.Use.valueOf(use.toUpperCase(Locale.ROOT)),
                asked.step().flatMap(Step::lastDay).orElse(facts.today));
    }
}
