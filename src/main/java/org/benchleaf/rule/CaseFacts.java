package org.benchleaf.rule;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Rule;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.TestResult;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** A case as rules look at it: what comes before what, what touches what, what was tested. */
final class CaseFacts {

    private static final List<StepKind> TOUCHING_NOTHING = List.of(StepKind.EXAMINATION, StepKind.TESTING,
            StepKind.PHOTOGRAPHY, StepKind.MEASURING);

    /** Parts that treat the object, whatever the kind of their step is. */
    private static final List<Class<? extends Part>> TREATING = List.of(Part.Bath.class, Part.Mist.class, Part.Layer.class,
            Part.Mend.class, Part.Fixing.class, Part.Suction.class);

    private static final Set<StepKind> WETTING = EnumSet.of(StepKind.PREWETTING, StepKind.WASHING, StepKind.LOCAL_WET_TREATMENT,
            StepKind.BLEACHING, StepKind.PHYTATE_TREATMENT, StepKind.ALKALIZATION, StepKind.RINSING, StepKind.RESIZING,
            StepKind.POULTICING, StepKind.GEL_CLEANING, StepKind.CHELATION, StepKind.CARBONATION, StepKind.LEAF_CASTING);

    /** Kinds of step that are done in a bath, whether or not they say so. */
    private static final Set<StepKind> BATHING = EnumSet.of(StepKind.WASHING, StepKind.RINSING, StepKind.PHYTATE_TREATMENT,
            StepKind.CARBONATION, StepKind.LEAF_CASTING);

    /** Kinds of step that are named for what is dissolved in their liquid. */
    private static final Set<StepKind> CARRYING = EnumSet.of(StepKind.ALKALIZATION, StepKind.PHYTATE_TREATMENT, StepKind.RESIZING,
            StepKind.CHELATION);

    private static final PartTools PART_TOOLS = new PartTools();

    final TreatmentCase treatment;
    final Library library;
    final LocalDate today;
    final Liquids liquids;
    final StepOrder order;
    final TextSense wording;
    private final List<Layer> media;
    private final Layer support;
    private final Map<Rule.Subject, List<Asked>> asked = new EnumMap<>(Rule.Subject.class);

    CaseFacts(TreatmentCase treatment, Library library, LocalDate today, Function<String, Optional<Quantity>> ph) {
        this.treatment = treatment;
        this.library = library;
        this.today = today;
        this.liquids = new Liquids(treatment, library, ph);
        this.order = new StepOrder(treatment.steps());
        this.wording = new TextSense(treatment, liquids);
        this.media = treatment.object().media().stream().map(medium -> Layer.of(medium, library.matrix())).toList();
        this.support = Layer.support(treatment.object(), library.matrix());
    }

    /** Everything that a rule of this kind is asked of. */
    List<Asked> asked(Rule.Subject subject) {
        return asked.computeIfAbsent(subject, this::all);
    }

    private List<Asked> all(Rule.Subject subject) {
        return switch (subject) {
            case CASE -> List.of(Asked.ofCase(treatment.place()));
            case STEP -> order.all().stream().map(Asked::of).toList();
            case MEDIUM -> media.stream().map(Asked::of).toList();
            case TOUCH -> order.all().stream().flatMap(this::touches).toList();
            case CONTACT -> order.all().stream().flatMap(this::contacts).toList();
            case RESULT -> treatment.results().stream().map(Asked::of).toList();
            case PICTURE -> treatment.pictures().stream().map(Asked::of).toList();
        };
    }

    /** The media and the support that a step touches; nothing is kept out of a bath of the whole sheet. */
    Stream<Asked> touches(Step step) {
        if (!isOnTheObject(step)) {
            return Stream.empty();
        }
        return Stream.concat(media.stream().filter(layer -> layer.medium().orElseThrow().isMetBy(step))
                .filter(layer -> isBathed(step) || !step.avoids().contains(layer.name())), Stream.of(support))
                .filter(layer -> !onlyFixesAnother(step, layer)).map(layer -> Asked.of(step).on(layer));
    }

    private static boolean isBathed(Step step) {
        return step.area().equals("whole") && (step.part(Part.Bath.class).isPresent() || BATHING.contains(step.kind()) && !step.isLaidOn());
    }

    /** The media that a step touches, each with every liquid that reaches it. */
    private Stream<Asked> contacts(Step step) {
        return touches(step).filter(touch -> touch.layer().flatMap(Layer::medium).isPresent())
                .flatMap(touch -> liquidsOf(step).map(touch::with));
    }

    /** Whether a step touches the object; what is not shown to be done to test sheets does. */
    private static boolean isOnTheObject(Step step) {
        return (!TOUCHING_NOTHING.contains(step.kind()) || TREATING.stream().anyMatch(part -> step.part(part).isPresent()))
                && step.part(Part.Ageing.class).filter(ageing -> !ageing.isOfTheObject()).isEmpty();
    }

    /** Whether a step brings a liquid to the sheet: always by its kind, or, if it has a name of its own, by what it names. */
    boolean wetsBy(Step step) {
        return WETTING.contains(step.kind()) || step.isLaidOn() || step.named().isPresent() && liquidsOf(step).findAny().isPresent();
    }

    /** Whether a step leaves the sheet damp: it is wetted, and not with solvents alone, or humidified. */
    boolean dampens(Step step) {
        boolean solvent = liquidsOf(step).findAny().isPresent() && liquidsOf(step).allMatch(liquids::isWaterless);
        return isOnTheObject(step) && !solvent && (wetsBy(step) || step.kind() == StepKind.HUMIDIFICATION
                || step.part(Part.Chamber.class).isPresent() || step.part(Part.Bath.class).isPresent()
                || step.part(Part.Mist.class).isPresent());
    }

    /** The liquids that reach the sheet as liquids, by id; what a humidification uses reaches it as vapour. */
    Stream<String> liquidsOf(Step step) {
        return Stream.of(step.part(Part.Bath.class).map(Part.Bath::of).stream(),
                step.part(Part.Mist.class).map(Part.Mist::of).stream(),
                step.part(Part.Mend.class).flatMap(Part.Mend::liquid).stream(),
                step.part(Part.Fixing.class).map(Part.Fixing::with).stream(),
                step.part(Part.Layer.class).map(Part.Layer::of).stream(),
                step.part(Part.Suction.class).flatMap(Part.Suction::of).stream(),
                step.parts().stream().flatMap(part -> part.ask(PART_TOOLS)),
                step.kind() == StepKind.HUMIDIFICATION && step.named().isEmpty() ? Stream.<String>empty()
                        : step.uses().stream())
                .flatMap(ids -> ids).filter(liquids::isLiquid).distinct();
    }

    /** The dry chemicals that a wetting step uses beside its liquid, by id: told without a solution, they are what is dissolved in it. */
    Stream<String> dissolvedIn(Step step) {
        return wetsBy(step) && !namesLiquid(step) ? step.uses().stream().filter(liquids::isDryChemical) : Stream.empty();
    }

    /** Whether a step must have brought something dissolved, by its kind, and what it was is not told. */
    boolean carriesWhatNobodyNames(Step step) {
        return CARRYING.contains(step.kind()) && !namesLiquid(step) && dissolvedIn(step).findAny().isEmpty()
                && liquidsOf(step).allMatch(liquids::isPlainWater);
    }

    /** Whether a part of the step names its liquid. */
    private static boolean namesLiquid(Step step) {
        return TREATING.stream().anyMatch(part -> step.part(part).isPresent());
    }

    /** The tools and materials of a step, by id, wherever they are named. */
    Stream<String> toolsOf(Step step) {
        return Stream.concat(step.parts().stream().flatMap(part -> part.ask(PART_TOOLS)), step.uses().stream());
    }

    /** The materials of a step, wherever they are named; liquids are followed down to what they are made of. */
    Stream<Material> materialsOf(Step step) {
        return Stream.concat(step.part(Part.Fixing.class).map(Part.Fixing::with).stream(), toolsOf(step))
                .flatMap(liquids::materialsIn);
    }

    /** The tests of a medium, or of the support, with a liquid of the same composition. */
    Stream<SpotTest> tests(Layer layer, String liquid) {
        return tests(layer).filter(test -> test.isLiquidNamed() && liquids.alike(test.with(), liquid));
    }

    Stream<SpotTest> tests(Layer layer) {
        return treatment.tests().stream().filter(test -> test.medium().equals(layer.name()));
    }

    /** The longest passed test of what a contact is about, in minutes, at its shorter end; empty where none says how long it lasted. */
    Optional<Double> longestTest(Asked contact) {
        return longest(contact).map(CaseFacts::lasted);
    }

    /** The passed test of what a contact is about that lasted longest; empty where none says how long it lasted. */
    Optional<SpotTest> longest(Asked contact) {
        return passed(contact).filter(test -> test.dwell().isPresent()).max(Comparator.comparingDouble(CaseFacts::lasted));
    }

    private static double lasted(SpotTest test) {
        return test.dwell().map(dwell -> dwell.lowIn(Unit.MINUTE)).orElseThrow();
    }

    /** The tests of what a contact is about that passed. */
    Stream<SpotTest> passed(Asked contact) {
        return contactTests(contact).filter(test -> test.result().isPassed());
    }

    /** The tests of what a contact is about; one made after the step shows nothing of what it does. */
    Stream<SpotTest> contactTests(Asked contact) {
        return contact.layer().stream().flatMap(layer -> contact.liquid().stream().flatMap(liquid -> tests(layer, liquid)))
                .filter(test -> isBefore(test, contact));
    }

    /** The tests that may have been of what a contact is about, since nobody recorded with which liquid they were made. */
    Stream<SpotTest> unnamedTests(Asked contact) {
        return contact.layer().stream().flatMap(this::tests).filter(test -> !test.isLiquidNamed() && isBefore(test, contact));
    }

    private boolean isBefore(SpotTest test, Asked contact) {
        return test.after().isEmpty() || contact.step().map(order::before).orElse(List.of()).stream()
                .anyMatch(step -> step.id().equals(test.after().get()));
    }

    Layer support() {
        return support;
    }

    /** An earlier step that fixes a medium without saying which. */
    Optional<Step> fixingOfUnnamed(Step step) {
        return order.before(step).stream().filter(earlier -> earlier.kind() == StepKind.FIXING
                && earlier.part(Part.Fixing.class).isEmpty()).findFirst();
    }

    /** Whether an earlier step fixed the medium. */
    boolean fixedBefore(Step step, Layer layer) {
        return fixings(step, layer).findAny().isPresent();
    }

    /**
     * Whether an earlier step fixed the medium and tests after it, with this liquid, left it alone; a test among them that
     * does not tell leaves that open.
     */
    Judgement protectedAt(Step step, Layer layer, String liquid) {
        return Judgement.any(fixings(step, layer), fixing -> {
            List<SpotTest> again = tests(layer, liquid).filter(test -> test.after().filter(fixing.id()::equals).isPresent()).toList();
            boolean held = again.stream().map(SpotTest::result).anyMatch(TestResult::isPassed)
                    && again.stream().map(SpotTest::result).noneMatch(TestResult::isChange);
            return again.stream().filter(test -> held && test.result().group() == TestResult.Group.NOT_KNOWN).findFirst()
                    .map(test -> Judgement.cannotTell(MissingFact.result(test.medium(), test.with()))).orElse(Judgement.of(held));
        });
    }

    /** The step that fixed the medium, if every liquid of this step was tested on it afterwards and left it alone. */
    Optional<Step> protection(Step step, Layer layer) {
        boolean held = liquidsOf(step).findAny().isPresent()
                && liquidsOf(step).allMatch(liquid -> protectedAt(step, layer, liquid).isYes());
        return held ? fixings(step, layer).findFirst() : Optional.empty();
    }

    private Stream<Step> fixings(Step step, Layer layer) {
        return order.before(step).stream().filter(earlier -> earlier.part(Part.Fixing.class)
                .filter(fixing -> fixing.medium().equals(layer.name())).isPresent());
    }

    private static boolean onlyFixesAnother(Step step, Layer layer) {
        return step.part(Part.Fixing.class)
                .filter(fixing -> layer.medium().isPresent() && !fixing.medium().equals(layer.name())).isPresent();
    }
}
