package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.BenchNote;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Quantity;

/**
 * Lists what making the practice sheets of a class takes besides what the class lays out: of everything one, for one pair of hands.
 *
 * @param practice whether the class says what its practice sheets are like
 */
record PracticeThings(Bench bench, List<Duty> duties, boolean practice) {

    /** The beaker of washing water, by the word of the bench for it. */
    private static final String TRIAL_BEAKER = "trial-beaker";
    /** The beaker of the stock that is diluted for it. */
    private static final String TRIAL_STOCK_BEAKER = "trial-stock-beaker";
    private static final Quantity ONE = Quantity.count(1);

    /**
     * Materials, tools and what is worn, step by step.
     *
     * @param ofClass what the class lays out
     * @param care what each step needs for protection, by its id
     */
    List<LaidOut> list(List<LaidOut> ofClass, Map<String, StepCare> care) {
        List<Step> steps = duties.stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH)
                .flatMap(duty -> duty.step().flatMap(bench.source()::step).stream()).toList();
        Set<String> there = ofClass.stream().map(LaidOut::id).collect(Collectors.toSet());
        Map<String, LaidOut> items = new LinkedHashMap<>();
        steps.forEach(step -> UsedThings.of(step).stream().filter(id -> bench.source().solution(id).isEmpty() && !there.contains(id))
                .forEach(id -> items.put(id, inTheRoom(Kind.MATERIAL, id, bench.ledger().figure("total." + id).map(Figure::value), "",
                        using(steps, id)))));
        duties.stream().filter(duty -> duty.kind() == Duty.Kind.BATH_FOR_A_TRIAL).flatMap(duty -> Stream.of(
                TRIAL_BEAKER, TRIAL_STOCK_BEAKER).map(beaker -> inTheRoom(Kind.BENCH, beaker, Optional.of(ONE), "",
                        duty.step().stream().toList()))).forEach(item -> items.put(item.id(), item));
        NeededThings.of(bench.source(), steps, List.of(), bench.library(), NeededThings.Users.ONE).stream()
                .filter(item -> !there.contains(item.id()))
                .forEach(item -> items.put(item.id(), inTheRoom(Kind.MAKING, item.id(), item.all(), item.words(), item.steps())));
        noted(ofClass, steps).forEach(item -> items.put(item.id(), inTheRoom(Kind.MAKING, item.id(), item.all(), item.words(),
                item.steps())));
        steps.forEach(step -> Optional.ofNullable(care.get(step.id())).map(StepCare::wear).orElse(List.of()).forEach(code ->
                items.put(code, worn(code, Optional.ofNullable(items.get(code)).map(LaidOut::steps).orElse(List.of()), step.id()))));
        return List.copyOf(items.values());
    }

    /** What is needed because the sheets are practice sheets, are tried, or are kept under their wax. */
    private List<LaidOut> noted(List<LaidOut> ofClass, List<Step> steps) {
        Map<String, List<String>> work = new LinkedHashMap<>();
        if (practice && ofClass.stream().anyMatch(item -> item.kind() == Kind.SHEET)) {
            work.put(BenchNote.PRACTICE_SHEETS, List.of());
        }
        steps.stream().filter(step -> step.kind() == StepKind.TESTING).forEach(step -> work.put(BenchNote.TRIAL, List.of(step.id())));
        steps.stream().filter(step -> step.part(Part.Fixing.class).filter(StationCut::isVolatileWax).isPresent()).forEach(step ->
                work.put(BenchNote.WAXED_SHEETS, List.of(step.id())));
        return NeededThings.besides(work, bench.library());
    }

    private static List<String> using(List<Step> steps, String id) {
        return steps.stream().filter(step -> UsedThings.of(step).contains(id)).map(Step::id).toList();
    }

    private LaidOut worn(String code, List<String> before, String step) {
        Reference.Equipment equipment = bench.library().reference().equipment().get(code);
        Map<String, LayOutRow> rows = bench.library().reference().layOut();
        LayOutRow row = rows.getOrDefault("worn " + equipment.kind(), rows.get("worn"));
        List<String> steps = new ArrayList<>(before);
        steps.add(step);
        return equipment.kind().equals("air") ? inTheRoom(Kind.WORN, code, Optional.empty(), "", steps)
                : inTheRoom(Kind.WORN, code, Optional.of(Quantity.count(row.each())), row.words(), steps);
    }

    private static LaidOut inTheRoom(Kind kind, String id, Optional<Quantity> all, String words, List<String> steps) {
        return new LaidOut(id, kind, Optional.empty(), all, words, steps);
    }
}
