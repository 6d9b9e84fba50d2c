package org.benchleaf.rule;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.Medium;
import org.benchleaf.model.Part;
import org.benchleaf.model.Picture;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Result;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Reads what a field of the case says about what a rule is asked of. */
final class FieldReader {

    /** Conventional value of standard gravity, 9.806 65 m/s²: 3rd General Conference on Weights and Measures, 1901. */
    private static final double GRAVITY = 9.80665;

    /** The words for a method of fixing that a material may carry as a trait. */
    private static final List<String> FIXING_METHODS = List.of("ionic", "volatile", "resin", "barrier");

    private final CaseFacts facts;

    /** What the trade calls mould: common practice, no source. */
    private static final List<String> MOULD = List.of("mould", "mold", "mildew", "fungus", "fungal", "fungi");

    FieldReader(CaseFacts facts) {
        this.facts = facts;
    }

    /** What is asked of a field where it says something; where it says nothing, what its absence means. */
    Judgement ask(CaseField field, Asked asked, Function<FieldFact, Judgement> question) {
        return value(field, asked).map(question).orElseGet(() -> absence(field, asked) == CaseField.Absence.NONE ? Judgement.NO_BY_SILENCE
                : Judgement.cannotTell(MissingFact.of(field, asked)));
    }

    /**
     * Whether the file says something of a field, with every liquid where it speaks of liquids. This can be told of a field that
     * is left out or "not known": the file does not say it. Only where a part of the step would have said it, and another
     * way of telling the step leaves that out, is it left open.
     */
    Judgement has(CaseField field, Asked asked) {
        return Judgement.all(askedOf(field, asked), one -> value(field, one).isPresent() ? Judgement.YES : isOpen(field, one)
                ? Judgement.cannotTell(MissingFact.of(field, one)) : Judgement.NO_BY_SILENCE);
    }

    /** What a field is asked of: each liquid of the step, where it speaks of the pH of liquids; else what is asked itself. */
    Stream<Asked> askedOf(CaseField field, Asked asked) {
        List<Asked> each = field == CaseField.LIQUID_PH && asked.liquid().isEmpty()
                ? liquids(asked).filter(facts.liquids::hasPh).map(asked::with).toList() : List.of();
        return each.isEmpty() ? Stream.of(asked) : each.stream();
    }

    private CaseField.Absence absence(CaseField field, Asked asked) {
        boolean none = switch (field) {
            case STEP_LOOK, STEP_RELEASED_BY, STEP_MEANWHILE -> asked.step().filter(step -> step.hold().isPresent()).isEmpty();
            case MIST_ULTRASONIC, HOUSING_BUFFERED -> !isOpen(field, asked);
            case HOUSING_DAY -> facts.order.all().stream().noneMatch(step -> step.kind() == StepKind.HOUSING);
            case MEASURING_DAY -> facts.order.all().stream().noneMatch(step -> step.kind() == StepKind.MEASURING);
            case LIQUID_PH -> asked.liquid().map(liquid -> !facts.liquids.hasPh(liquid))
                    .orElseGet(() -> asked.step().filter(facts::wetsBy).isEmpty());
            default -> field.absence() == CaseField.Absence.NONE;
        };
        return none ? CaseField.Absence.NONE : CaseField.Absence.NOT_GIVEN;
    }

    /** Whether it is left open if something is so, though what would tell it has a place in the file. */
    private boolean isOpen(CaseField field, Asked asked) {
        return switch (field) {
            case MIST_ULTRASONIC -> asked.step().filter(this::isMistedByAnything).isPresent();
            case HOUSING_BUFFERED -> asked.step().filter(step -> houses(step) && !isBuffered(step)
                    && !saysUnbuffered(step)).isPresent();
            default -> false;
        };
    }

    Optional<FieldFact> value(CaseField field, Asked asked) {
        PrintObject object = facts.treatment.object();
        Proposal proposal = facts.treatment.proposal();
        return switch (field) {
            case MADE -> FieldFact.text(object.made());
            case MADE_EVIDENCE -> FieldFact.text(object.madeEvidence());
            case MADE_OPINION -> FieldFact.flag(object.opinion());
            case OBJECT_KIND -> FieldFact.text(object.kind());
            case OBJECT_TECHNIQUE -> FieldFact.text(object.technique());
            case OBJECT_FEATURES -> FieldFact.words(object.features());
            case OBJECT_GRAMMAGE -> FieldFact.amount(object.support().grammage());
            case LONG_SIDE -> FieldFact.amount(side(object, Comparator.naturalOrder()));
            case SHORT_SIDE -> FieldFact.amount(side(object, Comparator.reverseOrder()));
            case SIZING -> FieldFact.text(object.support().sizing());
            case CONSULTATION_OPEN -> FieldFact.words(object.consultation().stream()
                    .filter(matter -> matter.outcome().filter(WordComparison::known).isEmpty())
                    .map(PrintObject.Consultation::matter).toList());
            case PRIVATE -> FieldFact.words(facts.treatment.privateFields());
            case DAMAGE_ACTIVE -> FieldFact.flag(meetsLiveMould(asked));
            case PROPOSAL_AIMS -> FieldFact.words(proposal.aims().stream().map(Proposal.Aim::words).toList());
            case PROPOSAL_OPTIONS -> FieldFact.words(proposal.options().stream().map(Proposal.Option::option).toList());
            case RETOLD -> FieldFact.text(facts.treatment.sources().retelling().map(retelling -> retelling.passage().source()));
            case LAYER_STATE -> asked.layer().flatMap(layer -> FieldFact.words(layer.states()));
            case LAYER_GRADE -> FieldFact.text(asked.layer().flatMap(Layer::medium).flatMap(Medium::grade));
            case LAYER_COLOUR -> FieldFact.text(asked.layer().flatMap(Layer::medium).flatMap(Medium::colour));
            case HOUSING_DAY -> FieldFact.day(days(StepKind.HOUSING).min(Comparator.naturalOrder()));
            case MEASURING_DAY -> FieldFact.day(days(StepKind.MEASURING).max(Comparator.naturalOrder()));
            case LIQUID_PH -> FieldFact.amount(span(liquids(asked).flatMap(liquid -> ph(asked, liquid))));
            case LIQUID_AGE -> FieldFact.amount(asked.step().flatMap(Step::on).flatMap(day -> oldest(asked, day)));
            case LIQUID_KEEPS -> FieldFact.amount(batches(asked).map(Solution::keeps).flatMap(Optional::stream)
                    .min(Comparator.comparingDouble(keeps -> keeps.in(Unit.DAY))));
            case MEASURE, RESULT_KIND, METHOD, COLOUR_FORMULA, COLOUR_ILLUMINANT, COLOUR_OBSERVER, COLOUR_GEOMETRY,
                    COLOUR_READINGS, COLOUR_SPOTS, RESERVE_TITRATION, RESERVE_STEP, RESERVE_CARBONATE,
                    RESERVE_AMOUNT -> asked.result().flatMap(result -> result.ask(new ResultFields(field)));
            case PICTURE_CREDIT, PICTURE_LICENCE, PICTURE_PAIR, PICTURE_LIGHT, PICTURE_SIDE, PICTURE_SCALE,
                    PICTURE_TARGET, PICTURE_CAUTION -> asked.picture().flatMap(picture -> ofPicture(field, picture));
            default -> asked.step().flatMap(step -> ofStep(field, step, asked));
        };
    }

    private Optional<FieldFact> ofStep(CaseField field, Step step, Asked asked) {
        return switch (field) {
            case STEP_ON -> FieldFact.days(step.firstDay(), step.lastDay());
            case STEP_UNTIL -> FieldFact.text(step.until());
            case STEP_WATCH -> FieldFact.text(step.watch());
            case STEP_HOLD -> FieldFact.text(step.hold().map(Step.Hold::before));
            case STEP_LOOK -> FieldFact.text(step.hold().flatMap(Step.Hold::look));
            case STEP_RELEASED_BY -> FieldFact.text(step.hold().map(Step.Hold::releasedBy));
            case STEP_MEANWHILE -> FieldFact.text(step.hold().flatMap(Step.Hold::meanwhile));
            case STEP_AT_MOST -> FieldFact.amount(step.atMost());
            case STEP_BY -> FieldFact.text(step.by());
            case STEP_PEOPLE -> FieldFact.count(Optional.of(step.people()));
            case STEP_AREA -> FieldFact.text(step.area());
            case STEP_APPLIED -> FieldFact.text(step.applied());
            case STEP_EDGE -> FieldFact.text(step.edge());
            case STEP_AIM -> FieldFact.text(step.aim());
            case STEP_INSTEAD -> FieldFact.text(step.instead());
            case STEP_CHECKS -> FieldFact.words(step.checks());
            case STEP_PRACTISED -> FieldFact.flag(step.practised());
            case STEP_EMERGENCY -> FieldFact.text(step.emergency().map(Step.Emergency::averted));
            case EMERGENCY_REPORT -> FieldFact.day(step.emergency().flatMap(Step.Emergency::reportBy));
            case STEP_NAMED -> FieldFact.text(step.named());
            case STEP_RESIZE -> step.resize().flatMap(decision -> FieldFact.text(decision.yes() ? "yes" : "no"));
            default -> ofPart(field, step, asked);
        };
    }

    private Optional<FieldFact> ofPart(CaseField field, Step step, Asked asked) {
        Optional<Part.Bath> bath = step.part(Part.Bath.class);
        Optional<Part.Water> water = bath.flatMap(Part.Bath::water);
        Optional<Part.Mist> mist = step.part(Part.Mist.class);
        Optional<Part.Chamber> chamber = step.part(Part.Chamber.class);
        Optional<Part.Fixing> fixing = step.part(Part.Fixing.class);
        return switch (field) {
            case BATH_TEMPERATURE -> FieldFact.amount(bath.flatMap(Part.Bath::temperature));
            case BATH_PH_READ -> FieldFact.amount(span(bath.map(part -> Stream.of(part.of())).orElseGet(() -> facts.liquidsOf(step))
                    .flatMap(liquid -> ph(asked, liquid))));
            case WATER_SOURCE -> FieldFact.text(water.map(Part.Water::source));
            case WATER_PH -> FieldFact.amount(water.flatMap(Part.Water::ph));
            case WATER_CONDUCTIVITY -> FieldFact.amount(water.flatMap(Part.Water::conductivity));
            case WATER_ANALYSIS -> FieldFact.text(water.flatMap(Part.Water::analysis));
            case WATER_PIPES -> FieldFact.text(water.flatMap(Part.Water::pipes));
            case MIST_ULTRASONIC -> FieldFact.flag(mist.filter(Part.Mist::ultrasonic).isPresent());
            case MIST_PER_SHEET -> FieldFact.amount(mist.flatMap(part -> perSheet(step, part)));
            case MIST_WATER -> FieldFact.text(mist.flatMap(Part.Mist::water));
            case MIST_CLEANED -> FieldFact.text(mist.flatMap(Part.Mist::cleaned));
            case CHAMBER_PACK -> FieldFact.text(chamber.map(Part.Chamber::pack));
            case CHAMBER_HUMIDITY -> FieldFact.amount(chamber.flatMap(Part.Chamber::humidity));
            case CHAMBER_LOOK_EVERY -> FieldFact.amount(chamber.flatMap(Part.Chamber::lookEvery));
            case FIXING_METHOD -> fixing.map(Part.Fixing::method).map(FieldFact::text).orElseGet(() -> fixative(step));
            case FIXING_RINSE -> FieldFact.amount(fixing.flatMap(Part.Fixing::rinse));
            case FIXING_RINSES -> FieldFact.count(fixing.flatMap(Part.Fixing::rinses));
            case FIXING_CLEAR_BY -> FieldFact.day(fixing.flatMap(Part.Fixing::clearBy));
            default -> ofDryPart(field, step);
        };
    }

    private Optional<FieldFact> ofDryPart(CaseField field, Step step) {
        Optional<Part.Mend> mend = step.part(Part.Mend.class);
        Optional<Part.Weighing> weighing = step.part(Part.Weighing.class);
        return switch (field) {
            case SUPPORT_RIGID -> FieldFact.flag(step.part(Part.Support.class).filter(Part.Support::rigid).isPresent());
            case CLEANING_EXTRACTION ->
                    FieldFact.flag(step.part(Part.Cleaning.class).filter(Part.Cleaning::extraction).isPresent());
            case CLEANING_OPEN ->
                    FieldFact.flag(step.part(Part.Cleaning.class).filter(Part.Cleaning::openBrushing).isPresent());
            case HEAT_TEMPERATURE -> FieldFact.amount(step.part(Part.Heat.class).flatMap(Part.Heat::temperature));
            case PRESSURE -> FieldFact.amount(step.part(Part.Press.class).flatMap(press -> pressure(step, press)));
            case PRESS_WEIGHTS -> FieldFact.count(step.part(Part.Press.class).map(Part.Press::weights));
            case PRESS_HEIGHT -> FieldFact.amount(step.part(Part.Press.class).flatMap(Part.Press::height));
            case PRESS_BETWEEN -> FieldFact.words(step.part(Part.Press.class).map(Part.Press::between).orElse(List.of()));
            case TISSUE_GRAMMAGE -> FieldFact.amount(heaviest(mend.map(part -> Stream.of(part.tissue())).orElse(step.uses().stream())));
            case MEND_PLACES -> FieldFact.count(mend.map(this::places));
            case MEND_GRAIN -> FieldFact.text(mend.flatMap(Part.Mend::grain));
            case MEND_PATCH -> FieldFact.flag(mend.filter(Part.Mend::ofPatch).isPresent());
            case HEAT_TIME -> FieldFact.amount(step.part(Part.Heat.class).flatMap(Part.Heat::time));
            case PRESS_TIME -> FieldFact.amount(step.part(Part.Press.class).flatMap(Part.Press::time));
            case FIRST_CHANGE -> FieldFact.amount(step.part(Part.Blotters.class).map(Part.Blotters::changes)
                    .filter(changes -> !changes.isEmpty()).flatMap(changes -> changes.get(0)));
            case SOLIDS -> FieldFact.amount(weighing.flatMap(FieldReader::solids));
            case BLOTTED_FOR -> FieldFact.amount(weighing.flatMap(Part.Weighing::blottedFor));
            case HOUSING_BUFFERED -> FieldFact.flag(isBuffered(step));
            case HOUSING_PH -> FieldFact.amount(span(housingPh(step)));
            default -> ofTreatedPlace(field, step, mend.flatMap(Part.Mend::activation));
        };
    }

    private static Optional<FieldFact> ofTreatedPlace(CaseField field, Step step, Optional<Part.Activation> activation) {
        return switch (field) {
            case LAID_BETWEEN -> FieldFact.text(step.part(Part.Layer.class).flatMap(Part.Layer::between));
            case LAID_EACH -> FieldFact.amount(step.part(Part.Layer.class).flatMap(Part.Layer::each));
            case SUCTION_PRESSURE -> FieldFact.amount(step.part(Part.Suction.class).flatMap(Part.Suction::pressure));
            case LIGHT_FILTERED -> FieldFact.flag(step.part(Part.Light.class).flatMap(Part.Light::filtered)
                    .filter(Boolean::booleanValue).isPresent());
            case LIGHT_TIME -> FieldFact.amount(step.part(Part.Light.class).flatMap(Part.Light::time));
            case TAPE_ADHESIVE -> FieldFact.text(step.part(Part.Tape.class).flatMap(Part.Tape::adhesive));
            case AGEING_OF -> FieldFact.text(step.part(Part.Ageing.class).map(Part.Ageing::of));
            case ACTIVATED_BY -> FieldFact.text(activation.map(Part.Activation::by).map(Part.Activation.Agent::word));
            case ACTIVATED_WITH -> FieldFact.text(activation.flatMap(Part.Activation::with));
            case WINDOW_LOW -> FieldFact.amount(activation.flatMap(Part.Activation::window)
                    .map(window -> Quantity.of(window.low(), window.unit())));
            case WINDOW_HIGH -> FieldFact.amount(activation.flatMap(Part.Activation::window)
                    .map(window -> Quantity.of(window.high(), window.unit())));
            default -> throw new IllegalArgumentException("no step has the field " + field.word());
        };
    }

    private static Optional<FieldFact> ofPicture(CaseField field, Picture picture) {
        return switch (field) {
            case PICTURE_CREDIT -> FieldFact.text(picture.credit());
            case PICTURE_LICENCE -> FieldFact.text(picture.licence());
            case PICTURE_PAIR -> FieldFact.text(picture.pair());
            case PICTURE_LIGHT -> FieldFact.text(picture.light());
            case PICTURE_SIDE -> FieldFact.text(picture.side());
            case PICTURE_SCALE -> FieldFact.text(picture.scale());
            case PICTURE_TARGET -> FieldFact.text(picture.target());
            case PICTURE_CAUTION -> FieldFact.text(picture.caution());
            default -> throw new IllegalArgumentException("no picture has the field " + field.word());
        };
    }

    /** Whether there is mould that is not known to be dead; who removes mould meets it, whatever the damages are called. */
    private boolean meetsLiveMould(Asked asked) {
        List<Damage> mould = facts.treatment.condition().stream().filter(FieldReader::isMould).toList();
        boolean removed = asked.step().filter(step -> step.kind() == StepKind.MOULD_REMOVAL).isPresent();
        return mould.isEmpty() ? removed : mould.stream().anyMatch(damage -> damage.active()
                .filter(active -> List.of("no", "inactive").contains(active.toLowerCase(Locale.ROOT))).isEmpty());
    }

    private static boolean isMould(Damage damage) {
        return MOULD.stream().anyMatch(word -> WordComparison.holds(damage.what(), word));
    }

    private static Optional<Quantity> side(PrintObject object, Comparator<Double> order) {
        return Stream.concat(object.size().stream(), object.items().stream().map(PrintObject.Item::size).flatMap(Optional::stream))
                .flatMap(size -> Stream.of(size.height(), size.width()))
                .max(Comparator.comparing(side -> side.in(Unit.MILLIMETRE), order));
    }

    private Stream<LocalDate> days(StepKind kind) {
        return facts.order.all().stream().filter(step -> step.kind() == kind).map(Step::on).flatMap(Optional::stream);
    }

    /** The liquids a rule is asked of: the one that it names, else all of the step that reach what it names. */
    Stream<String> liquids(Asked asked) {
        return asked.liquid().map(Stream::of).orElseGet(() -> asked.step().stream().flatMap(facts::liquidsOf));
    }

    /** The pH of a liquid at a step: what was read in its baths and what its recipe aims at; else what follows from its parts. */
    private Stream<Quantity> ph(Asked asked, String liquid) {
        List<Quantity> stated = statedPh(asked, liquid).toList();
        return stated.isEmpty() ? facts.liquids.workedPh(liquid).stream() : stated.stream();
    }

    private Stream<Quantity> statedPh(Asked asked, String liquid) {
        Stream<Quantity> read = asked.step().flatMap(step -> step.part(Part.Bath.class))
                .filter(bath -> bath.of().equals(liquid)).stream().flatMap(bath -> bath.readings().stream())
                .map(Part.BathReading::phFresh).flatMap(Optional::stream);
        return Stream.concat(read, facts.liquids.ph(liquid).stream());
    }

    private Stream<Solution> batches(Asked asked) {
        return liquids(asked).map(facts.liquids::solution).flatMap(Optional::stream)
                .filter(solution -> solution.madeOn().isPresent());
    }

    private Optional<Quantity> oldest(Asked asked, LocalDate day) {
        return batches(asked).map(Solution::madeOn).flatMap(Optional::stream).min(Comparator.naturalOrder())
                .map(made -> Quantity.of(ChronoUnit.DAYS.between(made, day), Unit.DAY));
    }

    private Optional<Quantity> pressure(Step step, Part.Press press) {
        Optional<PrintObject.SheetSize> size = facts.treatment.object().sizeOf(step.of());
        Optional<Quantity> height = press.height().or(() -> size.map(PrintObject.SheetSize::height));
        Optional<Quantity> width = press.width().or(() -> size.map(PrintObject.SheetSize::width));
        return press.mass().flatMap(mass -> height.flatMap(high -> width.map(wide -> Quantity.of(mass.asStated().to(Unit.KILOGRAM).high()
                * GRAVITY / (high.in(Unit.METRE) * wide.in(Unit.METRE)), Unit.PASCAL))));
    }

    /** On how many sides of the sheet the damages lie that are mended. */
    private int places(Part.Mend mend) {
        return (int) facts.treatment.condition().stream().filter(damage -> damage.id().filter(mend.damages()::contains).isPresent())
                .map(Damage::where).distinct().count();
    }

    /** The liquid misted for each mass of dry paper, as heavy as water; empty where its amount, the size or the grammage is not known. */
    private Optional<Quantity> perSheet(Step step, Part.Mist mist) {
        return mist.amount().flatMap(amount -> facts.treatment.object().sizeOf(step.of()).flatMap(size -> facts.treatment.object()
                .support().grammage().map(grammage -> Quantity.of(amount.to(Unit.MILLILITRE).low()
                        / (size.height().in(Unit.METRE) * size.width().in(Unit.METRE)
                                * grammage.highIn(Unit.GRAM_PER_SQUARE_METRE)), Unit.GRAM_PER_GRAM))));
    }

    private Optional<Quantity> heaviest(Stream<String> materials) {
        return materials.map(facts.liquids::material).flatMap(Optional::stream).filter(material -> material.kind().equals("tissue"))
                .map(Material::grammage).flatMap(Optional::stream)
                .max(Comparator.comparingDouble(grammage -> grammage.highIn(Unit.GRAM_PER_SQUARE_METRE)));
    }

    private static Optional<Quantity> solids(Part.Weighing weighing) {
        return weighing.restrained().flatMap(restrained -> weighing.dry().map(dry -> Quantity.of(
                100 * dry.in(Unit.GRAM) / restrained.in(Unit.GRAM), Unit.PERCENT_BY_MASS)));
    }

    /** Whether a step mists the sheet and does not say with which tool. */
    private boolean isMistedByAnything(Step step) {
        Optional<Part.Mist> mist = step.part(Part.Mist.class);
        boolean misted = mist.isPresent() || step.kind() == StepKind.PREWETTING && step.part(Part.Bath.class).isEmpty();
        return misted && mist.filter(Part.Mist::ultrasonic).isEmpty()
                && facts.materialsOf(step).noneMatch(material -> material.kind().equals("tool"));
    }

    /** What the materials of a step of fixing say of its method. */
    private Optional<FieldFact> fixative(Step step) {
        return FieldFact.words(facts.materialsOf(step).flatMap(material -> material.traits().stream())
                .filter(trait -> FIXING_METHODS.stream().anyMatch(method -> WordComparison.holds(trait, method))).toList());
    }

    private static boolean houses(Step step) {
        return step.kind() == StepKind.HOUSING || step.part(Part.Housing.class).isPresent();
    }

    private boolean isBuffered(Step step) {
        return houses(step) && (step.part(Part.Housing.class).filter(housing -> housing.buffered().equalsIgnoreCase("yes"))
                .isPresent() || facts.materialsOf(step).anyMatch(material -> material.traits().contains("buffered")));
    }

    /** Whether the part says so, or every material of a housing told without one. */
    private boolean saysUnbuffered(Step step) {
        List<Material> materials = facts.materialsOf(step).filter(material -> material.kind().equals("housing")).toList();
        return step.part(Part.Housing.class).map(housing -> WordComparison.known(housing.buffered()))
                .orElse(!materials.isEmpty() && materials.stream().allMatch(material -> material.traits().contains("unbuffered")));
    }

    private Stream<Quantity> housingPh(Step step) {
        return houses(step) ? Stream.concat(step.part(Part.Housing.class).flatMap(Part.Housing::ph).stream(),
                facts.materialsOf(step).map(Material::ph).flatMap(Optional::stream)) : Stream.empty();
    }

    private static Optional<Quantity> span(Stream<Quantity> several) {
        Collection<Quantity> all = several.toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Quantity.range(all.stream().mapToDouble(Quantity::low).min().getAsDouble(),
                all.stream().mapToDouble(Quantity::high).max().getAsDouble(), all.iterator().next().unit()));
    }

    /** Reads one field of a result, whatever kind it is; what that kind does not have stays empty. */
    private record ResultFields(CaseField field) implements Result.Kinds<Optional<FieldFact>> {

        private Optional<FieldFact> common(String kind, MeasureName measure, Optional<String> method) {
            return switch (field) {
                case MEASURE -> FieldFact.text(measure.word());
                case RESULT_KIND -> FieldFact.text(kind);
                case METHOD -> FieldFact.text(method);
                default -> FieldFact.NONE;
            };
        }

        @Override
        public Optional<FieldFact> readings(Result.Readings result) {
            return common("readings", result.measure(), Optional.of(result.method()));
        }

        @Override
        public Optional<FieldFact> colour(Result.Colour result) {
            return switch (field) {
                case COLOUR_FORMULA -> FieldFact.text(result.formula());
                case COLOUR_ILLUMINANT -> FieldFact.text(result.illuminant());
                case COLOUR_OBSERVER -> FieldFact.text(result.observer());
                case COLOUR_GEOMETRY -> FieldFact.text(result.geometry());
                case COLOUR_READINGS -> FieldFact.count(result.readingsEach());
                case COLOUR_SPOTS -> result.spots().stream().allMatch(spot -> WordComparison.known(spot.at()))
                        ? FieldFact.words(result.spots().stream().map(Result.ColourSpot::at).toList()) : FieldFact.NONE;
                default -> common("colour", result.measure(), Optional.empty());
            };
        }

        @Override
        public Optional<FieldFact> size(Result.Size result) {
            return common("size", result.measure(), Optional.of(result.method()));
        }

        @Override
        public Optional<FieldFact> reserve(Result.Reserve result) {
            return switch (field) {
                case RESERVE_TITRATION -> FieldFact.flag(result.measured().isPresent());
                case RESERVE_STEP -> FieldFact.text(result.step());
                case RESERVE_CARBONATE -> FieldFact.amount(result.carbonate());
                case RESERVE_AMOUNT -> FieldFact.amount(result.amount());
                default -> common("reserve", result.measure(), result.method());
            };
        }

        @Override
        public Optional<FieldFact> stated(Result.Stated result) {
            return common("readings", result.measure(), Optional.of(result.method()));
        }

        @Override
        public Optional<FieldFact> words(Result.Words result) {
            return common("words", result.measure(), Optional.of(result.method()));
        }

        @Override
        public Optional<FieldFact> notMeasured(Result.NotMeasured result) {
            return common("not measured", result.measure(), Optional.empty());
        }
    }
}
