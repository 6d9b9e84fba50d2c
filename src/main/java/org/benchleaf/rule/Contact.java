package org.benchleaf.rule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Part;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.TestedContact;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * How long a liquid, or another of the same composition, touches a medium from the first wetting until the sheet dries:
 * misting, waiting, every bath and the changes between them are counted together, and the time under wet blotters until their
 * first change.
 *
 * @param pieces what the time is made of, in order
 */
record Contact(List<Piece> pieces) {

    /**
     * One piece of the time.
     *
     * @param what in words
     * @param minutes how long at the longest; empty if the case does not say
     */
    record Piece(String what, Optional<Double> minutes) {
    }

    Contact {
        pieces = List.copyOf(pieces);
    }

    /** Kinds of step that lay an adhesive, which dries before the next step. */
    private static final Set<StepKind> MENDING = EnumSet.of(StepKind.MENDING, StepKind.INFILLING, StepKind.LINING,
            StepKind.INLAYING, StepKind.TEMPORARY_BRIDGING);

    /** The contact that a step belongs to, with as many baths as planned or as many as are allowed. */
    static Contact of(CaseFacts facts, Step step, Layer layer, String liquid, boolean everyBathAllowed) {
        List<Step> run = run(facts, step);
        List<Step> wet = wet(facts, run, layer, liquid);
        List<Piece> pieces = new ArrayList<>();
        for (Step each : wet.isEmpty() ? List.<Step>of() : run.subList(run.indexOf(wet.get(0)),
                run.indexOf(wet.get(wet.size() - 1)) + 1)) {
            if (wet.contains(each)) {
                pieces.add(wetting(facts, each, liquid, everyBathAllowed));
            } else if (facts.liquidsOf(each).findAny().isEmpty()) {
                each.takes().ifPresent(takes -> pieces.add(new Piece("waiting during '" + each.id() + "'",
                        longest(each).map(time -> time.highIn(Unit.MINUTE)))));
            }
        }
        drying(facts, run, layer, liquid).map(Contact::untilChanged).ifPresent(pieces::add);
        return new Contact(pieces);
    }

    /** The same contact as a class is asked about it, with the test that was judged by. */
    static TestedContact tested(CaseFacts facts, Step step, Layer layer, String liquid, SpotTest test) {
        List<Step> run = run(facts, step);
        return new TestedContact(wet(facts, run, layer, liquid).stream().map(Step::id).toList(),
                drying(facts, run, layer, liquid).map(Step::id), liquid, test);
    }

    private static List<Step> wet(CaseFacts facts, List<Step> run, Layer layer, String liquid) {
        return run.stream().filter(each -> wets(facts, each, layer, liquid)).toList();
    }

    /** How long a step takes; empty where nobody tells how long it took at most. */
    private static Optional<Quantity> longest(Step step) {
        return step.takes().filter(time -> !time.isOpen()).map(StatedTime::span);
    }

    /** The time in minutes; empty if a piece of it is not told. */
    Optional<Double> minutes() {
        boolean whole = !pieces.isEmpty() && pieces.stream().allMatch(piece -> piece.minutes().isPresent());
        return whole ? Optional.of(told()) : Optional.empty();
    }

    /** The pieces that are told, added up, in minutes. */
    double told() {
        return pieces.stream().map(Piece::minutes).flatMap(Optional::stream).mapToDouble(Double::doubleValue).sum();
    }

    /** How the time was added up. */
    String words() {
        return pieces.stream().map(piece -> piece.what() + " "
                + piece.minutes().map(Contact::time).orElse("for a time that is not given"))
                .collect(Collectors.joining(" + "));
    }

    static String time(double minutes) {
        double rounded = Math.round(minutes * 10) / 10.0;
        return (rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded)) + " min";
    }

    /** The steps around a step during which the sheet does not dry. */
    private static List<Step> run(CaseFacts facts, Step step) {
        List<Step> all = facts.order.all();
        int from = all.indexOf(step);
        int to = from + 1;
        while (from > 0 && !dries(all.get(from - 1))) {
            from--;
        }
        while (to < all.size() && !dries(all.get(to - 1)) && !dries(all.get(to))) {
            to++;
        }
        return all.subList(from, to);
    }

    private static boolean dries(Step step) {
        return StepOrder.dries(step) || MENDING.contains(step.kind()) || step.part(Part.Mend.class).isPresent();
    }

    private static boolean wets(CaseFacts facts, Step step, Layer layer, String liquid) {
        return facts.touches(step).anyMatch(touch -> touch.layer().map(Layer::name).filter(layer.name()::equals).isPresent())
                && facts.liquidsOf(step).anyMatch(other -> facts.liquids.alike(other, liquid));
    }

    private static Piece wetting(CaseFacts facts, Step step, String liquid, boolean everyBathAllowed) {
        Optional<Part.Bath> bath = step.part(Part.Bath.class).filter(part -> facts.liquids.alike(part.of(), liquid));
        if (bath.isPresent()) {
            return bathing(facts, step, bath.get(), everyBathAllowed ? bath.get().atMost().orElse(bath.get().baths())
                    : bath.get().baths());
        }
        Optional<Part.Layer> layer = step.part(Part.Layer.class).filter(part -> facts.liquids.alike(part.of(), liquid));
        if (layer.flatMap(Part.Layer::each).isPresent()) {
            double each = layer.get().each().get().highIn(Unit.MINUTE);
            return new Piece("'" + step.id() + "', " + layer.get().times() + " × " + time(each) + ",",
                    Optional.of(layer.get().times() * each));
        }
        Optional<Quantity> pressed = step.part(Part.Mend.class)
                .filter(mend -> mend.liquid().filter(wet -> facts.liquids.alike(wet, liquid)).isPresent())
                .flatMap(mend -> step.part(Part.Press.class)).flatMap(Part.Press::time);
        return new Piece("'" + step.id() + "',",
                pressed.or(() -> step.part(Part.Suction.class).flatMap(Part.Suction::time)).or(() -> longest(step)).or(step::atMost)
                .map(time -> time.highIn(Unit.MINUTE)));
    }

    /** The baths, and the changes between them, in which the sheet lies wet; the first is filled before it goes in. */
    private static Piece bathing(CaseFacts facts, Step step, Part.Bath bath, int baths) {
        double change = bath.changing().map(time -> time.highIn(Unit.MINUTE)).orElseGet(() -> usualChange(facts, bath));
        String changes = baths == 1 ? "" : " with " + (baths - 1) + (baths == 2 ? " change of " : " changes of ") + time(change);
        if (!bath.isTimed() || bath.isOpen()) {
            return new Piece("'" + step.id() + "', " + (bath.counted() ? baths + " × a bath" : "baths"), Optional.empty());
        }
        double[] lying = IntStream.rangeClosed(1, baths).mapToDouble(number -> bath.lasting(number).span().highIn(Unit.MINUTE)).toArray();
        String told = bath.each().size() == 1 ? baths + " × " + time(lying[0])
                : DoubleStream.of(lying).mapToObj(Contact::time).collect(Collectors.joining(" + "));
        return new Piece("'" + step.id() + "', " + told + changes + ",",
                Optional.of(DoubleStream.of(lying).sum() + (baths - 1) * change));
    }

    private static double usualChange(CaseFacts facts, Part.Bath bath) {
        Formulary formulary = facts.library.formulary();
        double changed = formulary.constant(ClassWork.BATH_CHANGE.usual()).value().highIn(Unit.MINUTE);
        return facts.treatment.isBroughtToPh(bath)
                ? changed + formulary.constant(ClassWork.READING_A_BATH.usual()).value().highIn(Unit.MINUTE) : changed;
    }

    /** The step in which the sheet then lies under wet blotters, where this was the last liquid before. */
    private static Optional<Step> drying(CaseFacts facts, List<Step> run, Layer layer, String liquid) {
        List<Step> all = facts.order.all();
        int next = all.indexOf(run.get(run.size() - 1)) + 1;
        List<Step> wet = run.stream().filter(each -> facts.liquidsOf(each).findAny().isPresent()
                && each.part(Part.Mend.class).isEmpty()).toList();
        boolean last = !wet.isEmpty() && wets(facts, wet.get(wet.size() - 1), layer, liquid);
        if (!last || next >= all.size() || all.get(next).kind() != StepKind.DRYING) {
            return Optional.empty();
        }
        return Optional.of(all.get(next));
    }

    /** Under wet blotters until they are first changed. */
    private static Piece untilChanged(Step drying) {
        Optional<Double> first = drying.part(Part.Blotters.class).map(Part.Blotters::changes)
                .filter(changes -> !changes.isEmpty()).flatMap(changes -> changes.get(0))
                .map(change -> change.highIn(Unit.MINUTE));
        return new Piece("under wet blotters in '" + drying.id() + "' until their first change,", first);
    }
}
