package org.benchleaf.compose.part;

import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;

/** The one amount that the hand needs at a step: how much of which liquid, how warm, how wide, how heavy. */
public final class BenchAmount implements Part.Kinds<Optional<Fact>> {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Step step;

    public BenchAmount(Sheet sheet, CaseDesk desk, Step step) {
        this.sheet = sheet;
        this.desk = desk;
        this.step = step;
    }

    /** The amount of the first part that has one, in the order in which hands meet them. */
    public Optional<Fact> first() {
        return step.parts().stream().map(part -> part.ask(this)).flatMap(Optional::stream).findFirst();
    }

    /** The weight under which a sheet lies between its changes of blotters, from the first on; empty if there is none. */
    public Optional<Fact> betweenChanges(String key) {
        return step.part(Part.Blotters.class).filter(blotters -> !blotters.changes().isEmpty()).flatMap(any -> weight())
                .map(fact -> new Fact(sheet.words().say("bench-amount." + key), fact.value()));
    }

    /** The mass that is laid on; empty if the step lays none on. */
    public Optional<Fact> weight() {
        return step.part(Part.Press.class).flatMap(this::press);
    }

    @Override
    public Optional<Fact> bath(Part.Bath part) {
        return figure(List.of("tray-volume", "volume")).map(figure -> marked(part.of(), figure, sheet.words().say(
                "bench-amount.to-mark", "amount", sheet.amount(figure).text(), "depth", written(part.depth().orElseThrow()))));
    }

    /** The liquid of one bath: in the tray that is there, else around the sheet. */
    public Optional<String> volume() {
        return figure(List.of("tray-volume", "volume")).map(figure -> sheet.amount(figure).text());
    }

    @Override
    public Optional<Fact> mist(Part.Mist part) {
        return liquid(part.of(), List.of("amount"));
    }

    @Override
    public Optional<Fact> chamber(Part.Chamber part) {
        return liquid(part.of(), List.of("amount", "water"));
    }

    @Override
    public Optional<Fact> blotters(Part.Blotters part) {
        return told("each-face", String.valueOf(part.layers()));
    }

    @Override
    public Optional<Fact> press(Part.Press part) {
        return part.mass().map(this::written).flatMap(mass -> part.weights() > 1 ? told("weights", part.weights() + " × " + mass)
                : told("weight", mass));
    }

    @Override
    public Optional<Fact> mend(Part.Mend part) {
        return part.strip().map(this::written).flatMap(strip -> part.piece().map(piece -> told("strip-piece", strip + " × "
                + written(piece))).orElseGet(() -> told("strip", strip)));
    }

    @Override
    public Optional<Fact> heat(Part.Heat part) {
        return part.temperature().flatMap(temperature -> told("tool", written(temperature)));
    }

    @Override
    public Optional<Fact> support(Part.Support part) {
        return Optional.empty();
    }

    @Override
    public Optional<Fact> cleaning(Part.Cleaning part) {
        return Optional.empty();
    }

    @Override
    public Optional<Fact> fixing(Part.Fixing part) {
        return Optional.of(Fact.of(sheet.words().say("bench-fact.fixative"), new HazardMaker(sheet, desk).name(part.with())));
    }

    @Override
    public Optional<Fact> weighing(Part.Weighing part) {
        return Optional.empty();
    }

    @Override
    public Optional<Fact> housing(Part.Housing part) {
        return Optional.empty();
    }

    @Override
    public Optional<Fact> layer(Part.Layer part) {
        return liquid(part.of(), List.of("volume"));
    }

    @Override
    public Optional<Fact> suction(Part.Suction part) {
        return part.pressure().flatMap(pressure -> told("suction", written(pressure)));
    }

    @Override
    public Optional<Fact> light(Part.Light part) {
        return part.time().flatMap(time -> told("light", sheet.numbers().duration(time).text()));
    }

    @Override
    public Optional<Fact> gas(Part.Gas part) {
        return liquid(part.of(), List.of("amount"));
    }

    @Override
    public Optional<Fact> tape(Part.Tape part) {
        return Optional.empty();
    }

    @Override
    public Optional<Fact> ageing(Part.Ageing part) {
        return part.temperature().flatMap(temperature -> told("ageing", written(temperature)));
    }

    /** The first of those figures that could be worked out, under the name of the liquid. */
    private Optional<Fact> liquid(String id, List<String> names) {
        return figure(names).map(figure -> marked(id, figure, sheet.amount(figure).text()));
    }

    private Fact marked(String id, Figure figure, String amount) {
        return new Fact(new HazardMaker(sheet, desk).name(id), Working.marked(figure.id(), RichText.of(amount)));
    }

    private Optional<Figure> figure(List<String> names) {
        return names.stream().flatMap(name -> desk.worked().figures().values().stream()
                        .filter(figure -> figure.key().owner() == FigureKey.Owner.STEP
                                && figure.key().of().equals(step.id()) && figure.key().name().equals(name)))
                .findFirst();
    }

    private Optional<Fact> told(String key, String amount) {
        return Optional.of(Fact.of(sheet.words().say("bench-amount." + key), amount));
    }

    private String written(Quantity quantity) {
        return sheet.numbers().written(quantity).text();
    }
}
