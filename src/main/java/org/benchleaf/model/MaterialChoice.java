package org.benchleaf.model;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A material that a step brings to the sheet, where materials of its kind are compared.
 *
 * @param id of the solution or material, as the case names it
 * @param material what is said of it beside others of its kind
 */
public record MaterialChoice(String id, ComparedMaterial material) {

    /** The rule under which a case gives its reason for a choice. */
    public static final String WEIGHED = "choice-weighed";

    /**
     * What a step chooses: the adhesive and the tissue of a mend with the solvent that wakes it, the water of a bath, the solvent of a
     * mist, what the dirt is lifted with, what the sheet lies on, under and between.
     */
    public static List<MaterialChoice> of(Step step, TreatmentCase treatment, Library library) {
        return new Finder(treatment, library).of(step);
    }

    /** What speaks for it and against it on a sheet of which these words are told. */
    public List<ComparedMaterial.Argument> arguments(List<String> told, boolean favours) {
        return material.argumentsFor(told).stream().filter(one -> one.favours() == favours).toList();
    }

    /**
     * Whether a reason of the case answers something that speaks against it on such a sheet: under the rule that asks about it, or where
     * none does, under that of weighed choices.
     */
    public boolean isWeighedBy(Reason reason, List<String> told) {
        return arguments(told, false).stream().anyMatch(one -> reason.rule().equals(one.rule().orElse(WEIGHED)));
    }

    private record Finder(TreatmentCase treatment, Library library) {

        List<MaterialChoice> of(Step step) {
            return Stream.of(step.part(Part.Mend.class).stream().flatMap(mend -> Stream.concat(
                            rows(mend.with(), ComparedKind.ADHESIVE), rows(mend.tissue(), ComparedKind.TISSUE))),
                    step.part(Part.Mend.class).flatMap(Part.Mend::activation).flatMap(Part.Activation::with).stream()
                            .flatMap(id -> rows(id, ComparedKind.SOLVENT)),
                    step.part(Part.Mist.class).stream().flatMap(mist -> rows(mist.of(), ComparedKind.SOLVENT)),
                    step.part(Part.Bath.class).stream().flatMap(this::waters),
                    step.part(Part.Cleaning.class).stream().flatMap(cleaning -> cleaning.tools().stream())
                            .flatMap(tool -> rows(tool, ComparedKind.ERASER)),
                    supports(step).flatMap(id -> rows(id, ComparedKind.SUPPORT))).flatMap(all -> all).distinct().toList();
        }

        /** What the parts of a step lay against the sheet or over what lies against it, and what the step uses besides. */
        private static Stream<String> supports(Step step) {
            return Stream.of(step.part(Part.Support.class).stream().flatMap(support ->
                            Stream.concat(Stream.of(support.under()), support.between().stream())),
                    step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).stream(),
                    step.part(Part.Press.class).stream().flatMap(press -> press.between().stream()),
                    step.part(Part.Layer.class).flatMap(Part.Layer::between).stream(), step.uses().stream()).flatMap(all -> all).distinct();
        }

        private Stream<MaterialChoice> rows(String id, ComparedKind kind) {
            List<Material> materials = materials(id);
            return compared(kind).filter(row -> materials.stream().anyMatch(row::isOf)).map(row -> new MaterialChoice(id, row));
        }

        /** By what was put into the water and where it came from; only water that nothing was put into is told as such. */
        private Stream<MaterialChoice> waters(Part.Bath bath) {
            List<Material> materials = materials(bath.of());
            String source = bath.water().map(water -> water.source() + " water").orElse("");
            List<ComparedMaterial> made = compared(ComparedKind.WASH_WATER).filter(row -> !row.alone()
                    && (row.isCalled(source) || materials.stream().anyMatch(row::isOf))).toList();
            return (made.isEmpty() && !materials.isEmpty() ? compared(ComparedKind.WASH_WATER).filter(row -> row.alone()
                    && materials.stream().allMatch(row::isOf)) : made.stream()).map(row -> new MaterialChoice(bath.of(), row));
        }

        private Stream<ComparedMaterial> compared(ComparedKind kind) {
            return library.reference().compared().stream().filter(row -> row.kind() == kind);
        }

        private List<Material> materials(String id) {
            return treatment.matter(id).map(library.materials()::get).filter(Objects::nonNull).toList();
        }
    }
}
