package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/**
 * Pieces of a material that are laid out for the same and have one size: the web under a wet sheet, that in the press and that at a
 * weight are three, the same tool in two steps is one.
 *
 * @param row what they are
 * @param each how many there are for one sheet, or at one station
 * @param size empty where the case does not tell it
 * @param steps ids of the steps that use them
 */
public record Pieces(LayOutRow row, int each, Optional<PieceSize> size, List<String> steps) {

    public Pieces {
        steps = List.copyOf(steps);
    }

    /** What a material is in a step, how often, and how large. */
    private record Role(String name, int times, Optional<PieceSize> size) {
    }

    /** What names the pieces of all steps that are the same. */
    private record Same(String name, Optional<PieceSize> size) {
    }

    /**
     * The pieces of a material, in the order of the steps.
     *
     * @param figures of the case, which tell to what size carriers are cut
     */
    public static List<Pieces> of(String id, List<Step> steps, Library library, Map<String, Figure> figures) {
        Map<Same, Pieces> all = new LinkedHashMap<>();
        steps.forEach(step -> roles(step, id, library, figures).forEach(role -> {
            LayOutRow row = library.reference().layOut().get(role.name());
            all.merge(new Same(role.name(), role.size()), new Pieces(row, role.times() * row.each(), role.size(), List.of(step.id())),
                    Pieces::with);
        }));
        return List.copyOf(all.values());
    }

    /** A later step takes the same ones. */
    private Pieces with(Pieces later) {
        LinkedHashSet<String> both = new LinkedHashSet<>(steps);
        both.addAll(later.steps);
        return new Pieces(row, Math.max(each, later.each), size, List.copyOf(both));
    }

    /** Empty where the material is used up and counts are no measure of it. */
    private static List<Role> roles(Step step, String id, Library library, Map<String, Figure> figures) {
        List<Role> roles = new ArrayList<>();
        for (Part part : step.parts()) {
            if (part instanceof Part.Support support && support.under().equals(id)) {
                roles.add(new Role("carrier", 1, carrier(step, figures)));
            } else if (part instanceof Part.Support support && support.between().filter(id::equals).isPresent()) {
                roles.add(new Role("wet interleaf", 1, carrier(step, figures)));
            } else if (part instanceof Part.Press press && press.between().contains(id)) {
                roles.add(interleaf(step, press, library));
            } else if (part instanceof Part.Housing housing && housing.materials().contains(id)) {
                roles.add(new Role("housing", 1, Optional.empty()));
            } else if (part instanceof Part.Fixing fixing && fixing.with().equals(id)) {
                roles.add(new Role("solid", 1, Optional.empty()));
            }
        }
        return roles.isEmpty() && isTool(step, id) ? List.of(new Role("tool", 1, Optional.empty())) : roles;
    }

    /** The size of the carrier of a step; empty where nothing tells to what it is cut. */
    static Optional<PieceSize> carrier(Step step, Map<String, Figure> figures) {
        return PieceSize.of(side(step, "carrier-height", figures), side(step, "carrier-width", figures));
    }

    private static Optional<Quantity> side(Step step, String name, Map<String, Figure> figures) {
        return Optional.ofNullable(figures.get(step.id() + "." + name)).map(Figure::value);
    }

    /** As large as the face of its weight where that lies on a part of the sheet, else as the blotters of the step. */
    private static Role interleaf(Step step, Part.Press press, Library library) {
        return press.height().isPresent() ? new Role("weight interleaf", press.weights(), PieceSize.of(press.height(), press.width()))
                : new Role("press interleaf", 1, step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter)
                        .map(library.materials()::get).flatMap(Pieces::asBought));
    }

    /** The size of a sheet of a material as it is bought; empty where the studio does not tell it. */
    public static Optional<PieceSize> asBought(Material material) {
        return PieceSize.of(material.height(), material.width());
    }

    /** The longest piece of torn tissue; empty where it is cut as large as a loss or a sheet. */
    public static Optional<PieceSize> torn(Part.Mend mend, Library library) {
        return mend.ofPatch() ? Optional.empty() : mend.strip().map(strip -> new PieceSize(mend.piece().orElseGet(() ->
                library.formulary().constant("mending-piece").value()), strip, PieceSize.Bound.AT_MOST));
    }

    /** Whether it lasts: what is not, and has no role, is used up by an amount that nobody told. */
    private static boolean isTool(Step step, String id) {
        return step.uses().contains(id) || step.parts().stream().anyMatch(part ->
                part instanceof Part.Mist mist && mist.tool().filter(id::equals).isPresent()
                || part instanceof Part.Heat heat && heat.tool().equals(id)
                || part instanceof Part.Cleaning cleaning && cleaning.tools().contains(id)
                || part instanceof Part.Tape tape && tape.means().contains(id)
                || part instanceof Part.Suction suction && suction.tool().equals(id)
                || part instanceof Part.Gas gas && gas.tool().filter(id::equals).isPresent());
    }
}
