package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.classes.NeededThings;
import org.benchleaf.derive.classes.PieceSize;
import org.benchleaf.derive.classes.Pieces;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.TrayChoice;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.figure.Weights;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/** Lists what the steps of a case use for its one sheet, with how many: materials, tools, weights, trays, what else lies on the bench. */
public final class CaseLayOut {

    private final WorkedCase worked;
    private final Library library;
    private final Map<String, LayOutRow> rows;

    private CaseLayOut(WorkedCase worked, Library library) {
        this.worked = worked;
        this.library = library;
        this.rows = library.reference().layOut();
    }

    /**
     * Materials by their kind and name, then weights, trays, boards, pipettes, the meter and what the case does not name; solutions
     * stand on their own cards.
     */
    public static List<LaidOut> of(WorkedCase worked, Library library) {
        return new CaseLayOut(worked, library).list();
    }

    private List<LaidOut> list() {
        List<Step> steps = worked.source().steps();
        List<LaidOut> list = steps.stream().flatMap(step -> UsedThings.of(step).stream()).distinct()
                .map(library.materials()::get).filter(java.util.Objects::nonNull)
                .sorted(java.util.Comparator.comparing(Material::kind).thenComparing(Material::name))
                .flatMap(material -> material(material.id(), steps)).collect(Collectors.toCollection(ArrayList::new));
        Weights.of(steps).forEach(weights -> list.add(laidOut(weights.mass(), Kind.WEIGHT,
                Optional.of(Quantity.count((long) weights.count() * rows.get("weight").each())), rows.get("weight").words(),
                weights.steps())));
        means(steps).forEach((means, using) -> list.add(laidOut(means, Kind.VESSEL, one("tool"), rows.get("tool").words(), using)));
        trays(steps).forEach((mark, using) -> list.add(laidOut(mark.tray().orElse("tray"), mark.tray().isPresent() ? Kind.VESSEL
                : Kind.BENCH, one("tray"), "", using).marked(Optional.of(mark))));
        onTheBench("board", steps.stream().filter(step -> step.part(Part.Press.class).filter(press -> press.height().isEmpty())
                .isPresent())).ifPresent(list::add);
        pipettes(steps).forEach((pipette, using) ->
                list.add(laidOut(pipette, Kind.VESSEL, one("pipette"), rows.get("pipette").words(), using)));
        onTheBench("meter", steps.stream().filter(step -> step.part(Part.Bath.class).filter(worked.source()::isBroughtToPh).isPresent()))
                .ifPresent(list::add);
        list.addAll(NeededThings.of(worked.source(), steps, worked.preparations(), library, NeededThings.Users.ONE));
        return list;
    }

    /** With what tape is taken off, where that is neither a material of the studio nor prepared, but told in words alone. */
    private Map<String, List<String>> means(List<Step> steps) {
        Map<String, List<String>> means = new LinkedHashMap<>();
        steps.forEach(step -> step.part(Part.Tape.class).map(Part.Tape::means).orElse(List.of()).stream()
                .filter(one -> !library.materials().containsKey(one) && worked.source().solution(one).isEmpty())
                .forEach(one -> means.computeIfAbsent(one, any -> new ArrayList<>()).add(step.id())));
        return means;
    }

    private Map<Preparation.Mark, List<String>> trays(List<Step> steps) {
        Map<Preparation.Mark, List<String>> trays = new LinkedHashMap<>();
        steps.forEach(step -> step.part(Part.Bath.class).flatMap(bath -> TrayChoice.mark(library,
                worked.source().object(), step, bath)).ifPresent(mark -> trays.computeIfAbsent(mark, any -> new ArrayList<>())
                        .add(step.id())));
        return trays;
    }

    /** What a stock is added with, by the meter, to the bath of a step. */
    private Map<String, List<String>> pipettes(List<Step> steps) {
        Map<String, List<String>> pipettes = new LinkedHashMap<>();
        worked.preparations().forEach(one -> one.measures().stream()
                .flatMap(measure -> measure.dropper().map(Preparation.Dropper::vessel).stream()).forEach(pipette ->
                steps.stream().filter(step -> UsedThings.of(step).contains(one.solution())).forEach(step ->
                        pipettes.computeIfAbsent(pipette, any -> new ArrayList<>()).add(step.id()))));
        return pipettes;
    }

    private Optional<LaidOut> onTheBench(String row, Stream<Step> using) {
        List<String> names = using.map(Step::id).toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(laidOut(row, Kind.BENCH, one(row), rows.get(row).words(), names));
    }

    private Optional<Quantity> one(String row) {
        return Optional.of(Quantity.count(rows.get(row).each()));
    }

    /** What is counted by a figure, then the pieces in which it is laid out besides. */
    private Stream<LaidOut> material(String id, List<Step> steps) {
        List<Step> using = steps.stream().filter(step -> UsedThings.of(step).contains(id)).toList();
        List<Pieces> pieces = Pieces.of(id, using, library, worked.figures());
        List<Step> usedUp = using.stream().filter(step -> counted(step, id).isPresent() || pieces.stream().noneMatch(cut ->
                cut.steps().contains(step.id()))).toList();
        return Stream.concat(usedUp.isEmpty() ? Stream.empty() : Stream.of(usedUp(id, usedUp)), pieces.stream().map(cut -> laidOut(id,
                Kind.MATERIAL, Optional.of(Quantity.count(cut.each())), cut.row().words(), cut.steps()).sized(cut.size())));
    }

    private LaidOut usedUp(String id, List<Step> using) {
        Optional<Part.Mend> mend = using.stream().flatMap(step -> step.part(Part.Mend.class).stream())
                .filter(one -> one.tissue().equals(id)).findFirst();
        Optional<PieceSize> blotter = using.stream().flatMap(step -> step.part(Part.Blotters.class).stream())
                .filter(one -> one.blotter().filter(id::equals).isPresent()).findFirst()
                .flatMap(any -> Pieces.asBought(library.materials().get(id)));
        return laidOut(id, Kind.MATERIAL, using.stream().flatMap(step -> counted(step, id).stream()).findFirst()
                        .or(() -> figure("total." + id)),
                mend.isPresent() ? rows.get("tissue").words() : "", using.stream().map(Step::id).toList())
                        .sized(blotter.or(() -> mend.flatMap(one -> Pieces.torn(one, library))));
    }

    /** Blotters in all, or pieces of tissue. */
    private Optional<Quantity> counted(Step step, String id) {
        boolean blotter = step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).filter(id::equals).isPresent();
        boolean tissue = step.part(Part.Mend.class).filter(mend -> mend.tissue().equals(id)).isPresent();
        return blotter ? figure(step, "blotters", "total") : tissue ? figure(step, "mend", "pieces") : Optional.empty();
    }

    private Optional<Quantity> figure(Step step, String part, String name) {
        return step.parts().stream().filter(one -> one.word().equals(part)).findFirst()
                .flatMap(one -> figure(FigureKey.ofStep(step, one, name).id()));
    }

    private Optional<Quantity> figure(String id) {
        return Optional.ofNullable(worked.figures().get(id)).map(Figure::value);
    }

    private static LaidOut laidOut(String id, Kind kind, Optional<Quantity> all, String words, List<String> steps) {
        return new LaidOut(id, kind, all, all, words, steps);
    }
}
