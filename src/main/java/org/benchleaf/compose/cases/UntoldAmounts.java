package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.words.Words;

/** What cannot be worked out for a step, each with the value that nobody recorded. */
final class UntoldAmounts {

    private final CaseDesk desk;
    private final Step step;

    UntoldAmounts(CaseDesk desk, Step step) {
        this.desk = desk;
        this.step = step;
    }

    /** One sentence for each; none where nothing is missing. */
    List<String> sentences(Words words) {
        return step.parts().stream().flatMap(this::missing).distinct().map(key -> words.say("untold." + key)).toList();
    }

    private Stream<String> missing(Part part) {
        if (part instanceof Part.Bath bath) {
            return where(bath.counted() && (bath.depth().isEmpty() || bath.margin().isEmpty()), "bath");
        }
        if (part instanceof Part.Mist mist) {
            return where(mist.amount().isEmpty(), "mist");
        }
        if (part instanceof Part.Chamber chamber) {
            return where(desk.treatment().sources().retelling().isPresent() && chamber.volume().isPresent()
                    && chamber.humidity().isPresent() && chamber.temperature().isEmpty(), "chamber");
        }
        if (part instanceof Part.Layer layer) {
            return where(layer.thickness().isEmpty(), "layer");
        }
        if (part instanceof Part.Press press) {
            return where(press.mass().isEmpty(), "press");
        }
        if (part instanceof Part.Weighing weighing) {
            return where(weighing.dry().isEmpty(), "weighing");
        }
        if (part instanceof Part.Blotters blotters) {
            return where(blotters.blotter().flatMap(this::material).flatMap(Material::grammage).isPresent()
                    && desk.treatment().object().support().grammage().isEmpty()
                    && (blotters.wet().isEmpty() || blotters.dry().isEmpty()), "blotters");
        }
        return part instanceof Part.Mend mend ? ofMend(mend) : Stream.empty();
    }

    private Stream<String> ofMend(Part.Mend mend) {
        if (mend.lap().isEmpty() || mend.strip().isEmpty() && !mend.ofPatch()) {
            return Stream.of("pieces");
        }
        boolean measured = mend.damages().stream().flatMap(id -> desk.treatment().damage(id).stream())
                .map(Damage::extent).allMatch(Optional::isPresent);
        return Stream.concat(where(!measured, "damages"),
                where(material(mend.tissue()).flatMap(Material::grammage).isEmpty(), "tissue"));
    }

    private Optional<Material> material(String id) {
        return Optional.ofNullable(desk.library().materials().get(id));
    }

    private static Stream<String> where(boolean missing, String key) {
        return missing ? Stream.of(key) : Stream.empty();
    }
}
