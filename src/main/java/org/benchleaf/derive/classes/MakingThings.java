package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.classes.ClassSupplies.Clear;
import org.benchleaf.derive.classes.ClassSupplies.Filling;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.classes.ClassSupplies.MadeAt;
import org.benchleaf.derive.classes.ClassSupplies.Waste;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.MeasureChoice;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/**
 * What a class lays out that no step names: with what its solutions are measured and in what they are made and handed out, in what
 * its waste is collected, with what its meter is calibrated, and what is worn to prepare.
 *
 * @param preparations what is made for all stations
 * @param fillings in what each is made and handed out
 * @param waste what is collected
 * @param hazards of what is made, by id
 */
record MakingThings(Bench bench, List<Step> steps, List<Preparation> preparations, List<Filling> fillings, List<Waste> waste,
        Map<String, Hazards> hazards) {

    /** How much stands ready of a solution, where known its clear part alone; empty where the class does not make it. */
    Optional<Quantity> amount(String solution) {
        return clear(solution).or(() -> made(solution));
    }

    private Optional<Quantity> clear(String solution) {
        return fillings.stream().filter(one -> one.solution().equals(solution) && one.batches() == 1).findFirst()
                .flatMap(Filling::clear).flatMap(Clear::all);
    }

    private Optional<Quantity> made(String solution) {
        return preparations.stream().filter(one -> one.solution().equals(solution)).findFirst()
                .map(one -> one.batches() == 1 ? one.batch() : one.needed());
    }

    /** What a station's bottle of a solution holds. */
    Optional<Quantity> portion(String solution) {
        return fillings.stream().filter(one -> one.solution().equals(solution)).findFirst().flatMap(Filling::inStation);
    }

    /** Codes of what is worn to prepare, with the steps for which it is prepared. */
    Map<String, List<String>> worn() {
        Map<String, List<String>> worn = new LinkedHashMap<>();
        preparations.forEach(one -> Optional.ofNullable(hazards.get(one.solution())).map(Hazards::wear).orElse(List.of()).forEach(
                code -> worn.merge(code, one.usedIn(), MakingThings::joined)));
        return worn;
    }

    private static List<String> joined(List<String> some, List<String> more) {
        List<String> all = new ArrayList<>(some);
        more.stream().filter(one -> !some.contains(one)).forEach(all::add);
        return all;
    }

    /** Measuring vessels and balances, vessels, buffers and cans. */
    List<LaidOut> list() {
        List<LaidOut> list = new ArrayList<>();
        measured().forEach((vessel, using) -> list.add(inTheRoom(Kind.MAKING, vessel, 1, "", using)));
        vessels(list);
        buffers().ifPresent(list::add);
        waste.forEach(one -> one.cans().ifPresent(cans -> list.add(inTheRoom(Kind.BENCH, "waste-can",
                (long) cans.value().value(), one.name(bench.library().reference()) + ", " + Reading.of(one.can().orElseThrow().holds()),
                one.solutions().stream()
                        .flatMap(solution -> usedIn(solution).stream()).distinct().toList()))));
        return list;
    }

    private Map<String, List<String>> measured() {
        Map<String, List<String>> measured = new LinkedHashMap<>();
        preparations.forEach(one -> one.measures().forEach(measure -> measure.vessel().ifPresent(vessel ->
                measured.merge(vessel, one.usedIn(), MakingThings::joined))));
        MeasureChoice choice = MeasureChoice.of(bench);
        fillings.forEach(one -> one.inStation().flatMap(choice::forAmount).ifPresent(with ->
                measured.merge(with.vessel(), usedIn(one.solution()), MakingThings::joined)));
        return measured;
    }

    /** Of each kind and size as many as are filled; for portions that go into no tool, a vessel at each station. */
    private void vessels(List<LaidOut> list) {
        Map<List<String>, Integer> counts = new LinkedHashMap<>();
        Map<List<String>, List<String>> using = new LinkedHashMap<>();
        fillings.stream().filter(one -> one.place() == MadeAt.BENCH && one.vessel().isPresent()).forEach(one -> {
            List<String> vessel = List.of(one.vessel().orElseThrow(), Reading.of(one.holds().orElseThrow()));
            counts.merge(vessel, one.count() * one.batches(), Integer::sum);
            using.merge(vessel, usedIn(one.solution()), MakingThings::joined);
            one.clear().ifPresent(bottles -> {
                List<String> clear = List.of(bottles.kind(), Reading.of(bottles.holds()));
                counts.merge(clear, bottles.count() * one.batches(), Integer::sum);
                using.merge(clear, usedIn(one.solution()), MakingThings::joined);
            });
        });
        counts.forEach((vessel, count) -> list.add(inTheRoom(Kind.MAKING, vessel.get(0), count, vessel.get(1), using.get(vessel))));
        fillings.stream().filter(one -> one.stations() > 0 && tool(steps, one.solution()).isEmpty()).findFirst().ifPresent(first -> {
            int all = fillings.stream().filter(one -> tool(steps, one.solution()).isEmpty()).mapToInt(Filling::stations).sum();
            int each = (int) fillings.stream().filter(one -> one.stations() > 0 && tool(steps, one.solution()).isEmpty()).count();
            list.add(new LaidOut("portion-vessel", Kind.BENCH, Optional.of(Quantity.count(each)), Optional.of(Quantity.count(all)),
                    bench.library().reference().layOut().get("portion-vessel").words(), usedIn(first.solution())));
        });
    }

    /** The tool out of which a solution is sprayed, which then is the vessel of its portion. */
    static Optional<String> tool(List<Step> steps, String solution) {
        return steps.stream().flatMap(step -> step.part(Part.Mist.class).stream()).filter(mist -> mist.of().equals(solution))
                .flatMap(mist -> mist.tool().stream()).findFirst();
    }

    /** Those of the case on either side of the pH to which a bath of the class is brought; all where there are not both. */
    private Optional<LaidOut> buffers() {
        List<String> brought = steps.stream().filter(step -> step.part(Part.Bath.class).filter(bench.source()::isBroughtToPh).isPresent())
                .map(Step::id).toList();
        List<Quantity> all = bench.source().instruments().stream().map(Instrument::buffers).flatMap(List::stream)
                .sorted(Comparator.comparingDouble(Quantity::value)).toList();
        List<String> buffers = preparations.stream().flatMap(one -> bench.source().solution(one.solution()).stream())
                .map(Solution::recipe).filter(Recipe.Adjust.class::isInstance).map(recipe -> ((Recipe.Adjust) recipe).to().value().value())
                .flatMap(wanted -> around(all, wanted).stream()).map(Reading::of).distinct().toList();
        return brought.isEmpty() || buffers.isEmpty() ? Optional.empty()
                : Optional.of(inTheRoom(Kind.BENCH, ClassStores.BUFFERS, buffers.size(), String.join(", ", buffers), brought));
    }

    private static List<Quantity> around(List<Quantity> buffers, double wanted) {
        Optional<Quantity> below = buffers.stream().filter(buffer -> buffer.value() <= wanted).reduce((one, nearer) -> nearer);
        Optional<Quantity> above = buffers.stream().filter(buffer -> buffer.value() > wanted).findFirst();
        return below.isPresent() && above.isPresent() ? List.of(below.get(), above.get()) : buffers;
    }

    private List<String> usedIn(String solution) {
        return preparations.stream().filter(one -> one.solution().equals(solution)).findFirst().map(Preparation::usedIn).orElse(List.of());
    }

    private static LaidOut inTheRoom(Kind kind, String id, long count, String words, List<String> using) {
        return new LaidOut(id, kind, Optional.empty(), Optional.of(Quantity.count(count)), words, using);
    }
}
