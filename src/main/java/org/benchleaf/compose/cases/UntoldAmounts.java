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
final class UntoldAmounts implements Part.Kinds<Stream<String>> {

    private final CaseDesk desk;
    private final Step step;

    UntoldAmounts(CaseDesk desk, Step step) {
        this.desk = desk;
        this.step = step;
    }

    /** One sentence for each; none where nothing is missing. */
    List<String> sentences(Words words) {
        return step.parts().stream().flatMap(part -> part.ask(this)).distinct().map(key -> words.say("untold." + key)).toList();
    }

    @Override
    public Stream<String> bath(Part.Bath bath) {
        return where(bath.counted() && (bath.depth().isEmpty() || bath.margin().isEmpty()), "bath");
    }

    @Override
    public Stream<String> mist(Part.Mist mist) {
        return where(mist.amount().isEmpty(), "mist");
    }

    @Override
    public Stream<String> chamber(Part.Chamber chamber) {
        return where(desk.treatment().sources().retelling().isPresent() && chamber.volume().isPresent()
                && chamber.humidity().isPresent() && chamber.temperature().isEmpty(), "chamber");
    }

    @Override
    public Stream<String> blotters(Part.Blotters blotters) {
        return where(blotters.blotter().flatMap(this::material).flatMap(Material::grammage).isPresent()
                && desk.treatment().object().support().grammage().isEmpty()
                && (blotters.wet().isEmpty() || blotters.dry().isEmpty()), "blotters");
    }

    @Override
    public Stream<String> press(Part.Press press) {
        return where(press.mass().isEmpty(), "press");
    }

    @Override
    public Stream<String> mend(Part.Mend mend) {
        if (mend.lap().isEmpty() || mend.strip().isEmpty() && !mend.ofPatch()) {
            return Stream.of("pieces");
        }
        boolean measured = mend.damages().stream().flatMap(id -> desk.treatment().damage(id).stream())
                .map(Damage::extent).allMatch(Optional::isPresent);
        return Stream.concat(where(!measured, "damages"),
                where(material(mend.tissue()).flatMap(Material::grammage).isEmpty(), "tissue"));
    }

    @Override
    public Stream<String> weighing(Part.Weighing weighing) {
        return where(weighing.dry().isEmpty(), "weighing");
    }

    @Override
    public Stream<String> layer(Part.Layer layer) {
        return where(layer.thickness().isEmpty(), "layer");
    }

    @Override
    public Stream<String> heat(Part.Heat part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> support(Part.Support part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> cleaning(Part.Cleaning part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> fixing(Part.Fixing part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> housing(Part.Housing part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> suction(Part.Suction part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> light(Part.Light part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> gas(Part.Gas part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> tape(Part.Tape part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> ageing(Part.Ageing part) {
        return Stream.empty();
    }

    private Optional<Material> material(String id) {
        return Optional.ofNullable(desk.library().materials().get(id));
    }

    private static Stream<String> where(boolean missing, String key) {
        return missing ? Stream.of(key) : Stream.empty();
    }
}
