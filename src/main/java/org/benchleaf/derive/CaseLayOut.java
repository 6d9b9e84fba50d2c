package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.derive.ClassSupplies.Kind;
import org.benchleaf.derive.ClassSupplies.LaidOut;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/** Lists what the steps of a case use for its one sheet: materials, tools and weights, with how many. */
public final class CaseLayOut {

    private final WorkedCase worked;
    private final Library library;
    private final Map<String, LayOutRow> rows;

    private CaseLayOut(WorkedCase worked, Library library) {
        this.worked = worked;
        this.library = library;
        this.rows = library.reference().layOut();
    }

    /** Materials of the studio by their kind and name, then weights; solutions stand on their own cards. */
    public static List<LaidOut> of(WorkedCase worked, Library library) {
        return new CaseLayOut(worked, library).list();
    }

    private List<LaidOut> list() {
        List<Step> steps = worked.source().steps();
        List<LaidOut> list = steps.stream().flatMap(step -> UsedThings.of(step).stream()).distinct()
                .map(library.materials()::get).filter(java.util.Objects::nonNull)
                .sorted(java.util.Comparator.comparing(Material::kind).thenComparing(Material::name))
                .map(material -> material(material.id(), steps)).collect(Collectors.toCollection(ArrayList::new));
        Weights.of(steps).forEach(weights -> list.add(laidOut(weights.mass(), Kind.WEIGHT,
                Optional.of(Quantity.count((long) weights.count() * rows.get("weight").each())), rows.get("weight").words(),
                weights.steps())));
        return list;
    }

    private LaidOut material(String id, List<Step> steps) {
        List<Step> using = steps.stream().filter(step -> UsedThings.of(step).contains(id)).toList();
        List<String> names = using.stream().map(Step::id).toList();
        boolean torn = using.stream().anyMatch(step -> step.part(Part.Mend.class).filter(mend -> mend.tissue().equals(id)).isPresent());
        Optional<Quantity> counted = using.stream().flatMap(step -> counted(step, id).stream()).findFirst();
        if (counted.isPresent() || worked.figures().containsKey("total." + id)) {
            return laidOut(id, Kind.MATERIAL, counted.or(() -> figure("total." + id)), torn ? rows.get("tissue").words() : "", names);
        }
        List<LayOutRow> roles = using.stream().flatMap(step -> LayingOut.roles(step, id).stream()).distinct().map(rows::get).toList();
        return laidOut(id, Kind.MATERIAL, Optional.of(Quantity.count(roles.stream().mapToInt(LayOutRow::each).sum()))
                .filter(any -> !roles.isEmpty()), roles.stream().map(LayOutRow::words).filter(words -> !words.isEmpty()).distinct().collect(Collectors.joining("; ")),
                names);
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
