package org.benchleaf.compose.chart;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.Chart;

/**
 * The drawings of a step, made from the same figures as its words: what the case does not state is not drawn.
 */
public final class StepDrawings implements Part.Kinds<Stream<Chart.Drawing>> {

    private final DrawnStep drawn;
    private final Step step;

    public StepDrawings(Sheet sheet, CaseDesk desk, Step step) {
        this.drawn = new DrawnStep(sheet, desk, step);
        this.step = step;
    }

    /** All of them, in the order of the step's parts. */
    public List<Chart.Drawing> all() {
        return step.parts().stream().flatMap(part -> part.ask(this)).toList();
    }

    /** Those that show a good result beside a bad one, by which work is judged. */
    public List<Chart.Drawing> results() {
        return step.parts().stream().flatMap(this::result).toList();
    }

    private Stream<Chart.Drawing> result(Part part) {
        if (part instanceof Part.Mist mist && step.kind() == StepKind.PREWETTING) {
            return Stream.of(new SprayDrawings(drawn).wetOut(mist));
        }
        if (part instanceof Part.Mend mend && !mend.ofPatch()) {
            return Stream.of(new MendDrawings(drawn).result(mend));
        }
        return part instanceof Part.Support support && step.part(Part.Bath.class).isPresent()
                ? Stream.of(new TrayDrawings(drawn).lifted(support)) : Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> bath(Part.Bath part) {
        TrayDrawings tray = new TrayDrawings(drawn);
        return Stream.concat(step.part(Part.Support.class).map(support -> tray.lowering(part, support)).stream(),
                part.depth().stream().flatMap(depth -> part.margin().map(margin -> tray.mark(part, depth, margin)).stream()));
    }

    @Override
    public Stream<Chart.Drawing> mist(Part.Mist part) {
        SprayDrawings spray = new SprayDrawings(drawn);
        return step.kind() == StepKind.PREWETTING ? Stream.of(spray.distance(part), spray.wetOut(part))
                : Stream.of(spray.distance(part));
    }

    @Override
    public Stream<Chart.Drawing> blotters(Part.Blotters part) {
        return Stream.concat(Stream.of(new StackDrawing(drawn).between(part, step.part(Part.Press.class))),
                part.changes().isEmpty() ? Stream.empty() : Stream.of(new ChangesDrawing(drawn).make(part)));
    }

    @Override
    public Stream<Chart.Drawing> press(Part.Press part) {
        return step.part(Part.Blotters.class).isPresent() ? Stream.empty() : Stream.of(new StackDrawing(drawn).under(part));
    }

    @Override
    public Stream<Chart.Drawing> mend(Part.Mend part) {
        MendDrawings mend = new MendDrawings(drawn);
        return part.ofPatch() ? part.lap().map(lap -> mend.patch(part, lap)).stream()
                : Stream.concat(part.lap().flatMap(lap -> part.strip().map(strip -> mend.bridge(part, strip, lap))).stream(),
                        Stream.of(mend.result(part)));
    }

    @Override
    public Stream<Chart.Drawing> fixing(Part.Fixing part) {
        return part.faces().stream().map(faces -> new WaxDrawing(drawn).make(part, faces));
    }

    @Override
    public Stream<Chart.Drawing> chamber(Part.Chamber part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> heat(Part.Heat part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> support(Part.Support part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> cleaning(Part.Cleaning part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> weighing(Part.Weighing part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> housing(Part.Housing part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> layer(Part.Layer part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> suction(Part.Suction part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> light(Part.Light part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> gas(Part.Gas part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> tape(Part.Tape part) {
        return Stream.empty();
    }

    @Override
    public Stream<Chart.Drawing> ageing(Part.Ageing part) {
        return Stream.empty();
    }
}
