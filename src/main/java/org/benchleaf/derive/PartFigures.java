package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out the figures that each part of one step brings, and notes what the step uses up. */
final class PartFigures implements Part.Kinds<Map<String, Figure>> {

    private static final Quantity USUAL_PIECE = Quantity.of(40, Unit.MILLIMETRE);
    private static final Quantity USUAL_PASTE = Quantity.of(0.03, Unit.GRAM_PER_SQUARE_CENTIMETRE);
    private static final String[] BESIDE =
            {"Laid side by side, since one is too small for the sheet (common practice, no source)."};
    private static final Quantity USUAL_UPTAKE = Quantity.of(0.5, Unit.GRAM_PER_GRAM);
    private static final Quantity USUAL_ROOM = Quantity.of(50, Unit.PERCENT_HUMIDITY);
    private static final Quantity NO_MARGIN = Quantity.of(0, Unit.MILLIMETRE);
    private static final Quantity ALL_SOLIDS = Quantity.of(100, Unit.PERCENT);
    private static final Quantity NO_WASTE = Quantity.of(0, Unit.PERCENT);
    /** Solids between which a sheet goes under restraint: distortion begins at 63 ± 3 %. */
    private static final Quantity RESTRAINT = Quantity.plusMinus(63, 3, Unit.PERCENT);

    private final Bench bench;
    private final Step step;

    PartFigures(Bench bench, Step step) {
        this.bench = bench;
        this.step = step;
    }

    /** Works out everything that the step's parts bring. */
    void work() {
        step.parts().forEach(part -> part.ask(this));
    }

    private String id(Part part, String name) {
        return FigureNames.of(step, part, name);
    }

    private Figure put(Part part, String name, String label, Quantity value, String method,
            List<Figure.Given> inputs, String... notes) {
        return bench.ledger().put(id(part, name), label, value, method, inputs, notes);
    }

    @Override
    public Map<String, Figure> bath(Part.Bath part) {
        Optional<Studio.Tray> tray = tray(part);
        int trays = bench.scale().trays(part.sheets());
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(bathJob(part, bench.height(),
                bench.width(), Job.CASE_FILE, trays).given("margin", part.margin(), Job.CASE_FILE)
                .gives("volume", id(part, "volume"), "liquid for one bath, sheet and margin")
                .gives("total", id(part, "total"), "liquid for all baths, sheet and margin")));
        tray.ifPresent(one -> made.putAll(bench.ledger().work(bathJob(part, one.height(), one.width(), Job.STUDIO, trays)
                .given("margin", NO_MARGIN, Job.USUAL)
                .note("The tray is " + one.id() + "; filled to the same depth it holds more than sheet and margin need.")
                .gives("volume", id(part, "tray-volume"), "liquid for one bath in the studio's tray")
                .gives("total", id(part, "tray-total"), "liquid for all baths in the studio's tray"))));
        Optional.ofNullable(made.get(id(part, "tray-total"))).or(() -> Optional.ofNullable(made.get(id(part, "total"))))
                .ifPresent(total -> bench.uses().add(new Uses.Use(part.of(), step.id(), true, total,
                        bench.scale().withSpare(), part.baths())));
        Figure volume = made.getOrDefault(id(part, "tray-volume"), made.get(id(part, "volume")));
        if (volume != null && bench.paper().grammage().isPresent()) {
            made.putAll(rinsing(part, volume));
        }
        return made;
    }

    private Job bathJob(Part.Bath part, Quantity height, Quantity width, String from, int trays) {
        return new Job("bath", step.place()).given("height", height, from).given("width", width, from)
                .given("depth", part.depth(), Job.CASE_FILE)
                .given("baths", Quantity.count(part.baths()), Job.CASE_FILE)
                .given("sheets", Quantity.count(trays), bench.scale().isOne() ? Job.USUAL : "number of sheets");
    }

    /** The smallest tray in which the sheet lies with its margin, lengthwise or turned. */
    private Optional<Studio.Tray> tray(Part.Bath part) {
        if (bench.library().studio().trays().isEmpty()) {
            return Optional.empty();
        }
        double border = 2 * part.margin().in(Unit.MILLIMETRE);
        double high = bench.height().in(Unit.MILLIMETRE) + border;
        double wide = bench.width().in(Unit.MILLIMETRE) + border;
        List<Studio.Tray> fitting = bench.library().studio().trays().stream()
                .filter(tray -> Math.max(side(tray.height()), side(tray.width())) >= Math.max(high, wide)
                        && Math.min(side(tray.height()), side(tray.width())) >= Math.min(high, wide))
                .sorted(Comparator.comparingDouble(tray -> side(tray.height()) * side(tray.width()))).toList();
        if (fitting.isEmpty()) {
            bench.messages().add(FigureMessages.NO_TRAY_LARGE_ENOUGH.at(step.place(), "step", step.id(),
                    "height", Reading.number(high) + " mm", "width", Reading.number(wide) + " mm"));
            return Optional.empty();
        }
        double depth = part.depth().highIn(Unit.MILLIMETRE);
        Optional<Studio.Tray> deep = fitting.stream().filter(tray -> side(tray.depth()) >= depth).findFirst();
        if (deep.isEmpty()) {
            double deepest = fitting.stream().mapToDouble(tray -> side(tray.depth())).max().orElse(0);
            bench.messages().add(FigureMessages.DEEPER_THAN_TRAY.at(step.place(), "step", step.id(),
                    "depth", Reading.of(part.depth()), "tray", Reading.number(deepest) + " mm"));
        }
        return deep.or(() -> Optional.of(fitting.get(0)));
    }

    private static double side(Quantity length) {
        return length.in(Unit.MILLIMETRE);
    }

    /** How much liquid there is for each gram of paper, and what ideal rinsing would leave behind. */
    private Map<String, Figure> rinsing(Part.Bath part, Figure volume) {
        Figure mass = sheetMass(part);
        Map<String, Figure> made = new LinkedHashMap<>();
        Figure liquor = put(part, "liquor", "grams of bath for each gram of paper",
                Quantity.of(volume.value().in(Unit.MILLILITRE) / mass.value().in(Unit.GRAM) / part.sheets(),
                        Unit.GRAM_PER_GRAM), "liquor-ratio", List.of(Ledger.given(volume), Ledger.given(mass)),
                "The bath is taken to be as dense as water.");
        made.put(liquor.id(), liquor);
        Quantity held = Quantity.of(mass.value().in(Unit.GRAM) * (100 / Bench.WET_SOLIDS.value() - 1), Unit.MILLILITRE);
        made.putAll(bench.ledger().work(new Job("rinsing", step.place())
                .given("held", held, mass.id()).given("bath", volume).given("baths", Quantity.count(part.baths()),
                        Job.CASE_FILE)
                .note("Ideal rinsing only: a real sheet keeps far more, a heavily sized one for hours.")
                .note("The sheet is taken to be fully wet at 43 % solids.")
                .gives("left", id(part, "left"), "share of dissolved matter left if rinsing were ideal")));
        return made;
    }

    private Figure sheetMass(Part part) {
        Quantity grammage = bench.paper().grammage().orElseThrow();
        double grams = grammage.in(Unit.GRAM_PER_SQUARE_METRE) * bench.height().in(Unit.METRE)
                * bench.width().in(Unit.METRE);
        return put(part, "sheet-mass", "mass of the dry sheet", Quantity.of(grams, Unit.GRAM), "sheet-mass",
                List.of(Ledger.given("grammage", "mass per area", grammage, Job.CASE_FILE),
                        Ledger.given("height", "height of the sheet", bench.height(), Job.CASE_FILE),
                        Ledger.given("width", "width of the sheet", bench.width(), Job.CASE_FILE)));
    }

    @Override
    public Map<String, Figure> mist(Part.Mist part) {
        return amount(part, part.of(), part.amount(), "liquid sprayed on one sheet");
    }

    private Map<String, Figure> amount(Part part, String of, Quantity amount, String label) {
        Figure figure = put(part, "amount", label, amount, "as-given",
                List.of(Ledger.given("amount", label, amount, Job.CASE_FILE)));
        bench.uses().add(new Uses.Use(of, step.id(), true, figure,
                bench.scale().sheetCount() * bench.scale().withSpare(), 1));
        return Map.of(figure.id(), figure);
    }

    @Override
    public Map<String, Figure> chamber(Part.Chamber part) {
        Map<String, Figure> made = new LinkedHashMap<>();
        part.amount().ifPresent(amount -> made.putAll(amount(part, part.of(), amount, "liquid put into the chamber")));
        if (part.volume().isPresent() && part.humidity().isPresent()) {
            boolean own = part.temperature().isPresent();
            made.putAll(bench.ledger().work(new Job("humidifying", step.place())
                    .given("volume", part.volume().get(), Job.CASE_FILE)
                    .given("temperature", part.temperature().orElse(bench.library().studio().temperature()),
                            own ? Job.CASE_FILE : Job.STUDIO)
                    .given("from", USUAL_ROOM, Job.USUAL).given("to", part.humidity().get(), Job.CASE_FILE)
                    .note("The sheet and the walls take up more; this is what the air alone needs.")
                    .gives("water", id(part, "water"), "water that the air of the chamber takes up")));
        }
        return made;
    }

    @Override
    public Map<String, Figure> blotters(Part.Blotters part) {
        Optional<Material> blotter = part.blotter().flatMap(bench::material);
        if (blotter.flatMap(Material::grammage).isEmpty()) {
            return Map.of();
        }
        Optional<Figure> dry = mass(part, "dry-mass", "mass of the dry sheet", part.dry(), ALL_SOLIDS);
        Optional<Figure> wet = mass(part, "wet-mass", "mass of the wet sheet", part.wet(), solids());
        if (dry.isEmpty() || wet.isEmpty()) {
            bench.missing(id(part, "per-change"), "the sheet's mass per area",
                    "'grammage:' under 'support:', or 'wet:' and 'dry:' under 'blotters:'", step.place());
            return Map.of();
        }
        Figure sheet = blotterMass(part, blotter.get());
        boolean known = blotter.get().uptake().isPresent();
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(new Job("blotters", step.place())
                .given("wet", wet.get()).given("dry", dry.get()).given("blotter-mass", sheet)
                .given("uptake", blotter.get().uptake().orElse(USUAL_UPTAKE), known ? Job.MATERIAL : Job.USUAL)
                .given("changes", Quantity.count(Math.max(1, part.changes().size())), Job.CASE_FILE)
                .source(blotter.get().source())
                .gives("per-change", id(part, "for-water"), "blotters that the water of one sheet fills")));
        Optional.ofNullable(made.get(id(part, "for-water")))
                .ifPresent(filled -> made.putAll(laidOut(part, filled, blotter.get())));
        return made;
    }

    /** A sheet out of a bath or a mist is fully wet; one out of a chamber holds far less. */
    private Quantity solids() {
        List<Step> before = bench.source().steps().stream().takeWhile(one -> !one.id().equals(step.id())).toList();
        boolean wetted = before.stream().anyMatch(one -> one.part(Part.Bath.class).isPresent()
                || one.part(Part.Mist.class).isPresent());
        boolean damped = before.stream().anyMatch(one -> one.part(Part.Chamber.class).isPresent());
        return damped && !wetted ? Bench.DAMP_SOLIDS : Bench.WET_SOLIDS;
    }

    /** Both faces must be covered, however little water there is. */
    private Map<String, Figure> laidOut(Part.Blotters part, Figure filled, Material blotter) {
        int layers = 2 * Math.max(1, part.layers());
        int beside = sideBySide(blotter);
        Figure cover = put(part, "cover", "blotters to cover both faces", Quantity.count((long) layers * beside), "product",
                List.of(Ledger.given("layers", "layers on both faces", Quantity.count(layers), Job.CASE_FILE),
                        Ledger.given("beside", "side by side to cover the sheet", Quantity.count(beside), Job.MATERIAL)),
                beside > 1 ? BESIDE : new String[0]);
        double each = Math.max(cover.value().value(), filled.value().value());
        Figure per = put(part, "per-change", "blotters for each change", Quantity.count(Math.round(each)), "largest",
                List.of(Ledger.given(filled), Ledger.given(cover)));
        // The sheet lies between fresh blotters from the start, so that there is one set more than changes.
        int sets = part.changes().size() + 1;
        Figure total = put(part, "total", "blotters in all for one sheet", Quantity.count(Math.round(each * sets)),
                "product", List.of(Ledger.given(per), Ledger.given("sets", "sets: the first and one for each change",
                        Quantity.count(sets), Job.CASE_FILE)), "Dried blotters can be used again.");
        bench.uses().add(new Uses.Use(blotter.id(), step.id(), true, total,
                bench.scale().sheetCount() * bench.scale().withSpare(), 1));
        return Map.of(cover.id(), cover, per.id(), per, total.id(), total);
    }

    /** How many blotters lie side by side on one face, turned whichever way takes fewer. */
    private int sideBySide(Material blotter) {
        if (blotter.height().isEmpty() || blotter.width().isEmpty()) {
            return 1;
        }
        double high = side(blotter.height().get());
        double wide = side(blotter.width().get());
        return (int) Math.min(StrictMath.ceil(side(bench.height()) / high) * StrictMath.ceil(side(bench.width()) / wide),
                StrictMath.ceil(side(bench.height()) / wide) * StrictMath.ceil(side(bench.width()) / high));
    }

    private Optional<Figure> mass(Part part, String name, String label, Optional<Quantity> weighed, Quantity solids) {
        if (weighed.isPresent()) {
            return Optional.of(put(part, name, label, weighed.get().to(Unit.GRAM), "as-given",
                    List.of(Ledger.given("mass", label, weighed.get(), Job.CASE_FILE))));
        }
        return bench.paper().grammage().map(grammage -> {
            Figure sheet = sheetMass(part);
            return put(part, name, label, Amounts.times(sheet.value(), 100 / solids.value()), "mass-at-solids",
                    List.of(Ledger.given(sheet), Ledger.given("solids", "share of paper in the wet sheet", solids,
                            Job.USUAL)));
        });
    }

    private Figure blotterMass(Part.Blotters part, Material blotter) {
        boolean whole = blotter.height().isPresent() && blotter.width().isPresent();
        Quantity height = whole ? blotter.height().get() : bench.height();
        Quantity width = whole ? blotter.width().get() : bench.width();
        Quantity grammage = blotter.grammage().orElseThrow();
        double grams = grammage.in(Unit.GRAM_PER_SQUARE_METRE) * height.in(Unit.METRE) * width.in(Unit.METRE);
        String from = whole ? Job.MATERIAL : Job.CASE_FILE;
        return put(part, "blotter-mass", "mass of one dry blotter", Quantity.of(grams, Unit.GRAM), "sheet-mass",
                List.of(Ledger.given("grammage", "mass per area", grammage, Job.MATERIAL),
                        Ledger.given("height", "height of the blotter", height, from),
                        Ledger.given("width", "width of the blotter", width, from)));
    }

    @Override
    public Map<String, Figure> press(Part.Press part) {
        return bench.ledger().work(new Job("pressure", step.place()).given("mass", part.mass(), Job.CASE_FILE)
                .given("height", part.height().orElse(bench.height()), Job.CASE_FILE)
                .given("width", part.width().orElse(bench.width()), Job.CASE_FILE)
                .gives("pressure", id(part, "pressure"), part.height().isPresent()
                        ? "pressure under the weight" : "pressure on the whole sheet"));
    }

    @Override
    public Map<String, Figure> mend(Part.Mend part) {
        Optional<Quantity> grammage = bench.material(part.tissue()).flatMap(Material::grammage);
        if (grammage.isEmpty()) {
            bench.missing(id(part, "tissue-mass"), "the mass per area of the tissue '" + part.tissue() + "'",
                    "'grammage:' in the materials", step.place());
            return Map.of();
        }
        List<Quantity> lengths = new ArrayList<>();
        List<Quantity> areas = new ArrayList<>();
        for (String damage : part.damages()) {
            bench.source().damage(damage).ifPresent(one -> sort(part, one, lengths, areas));
        }
        if (part.ofPatch() && areas.isEmpty()) {
            areas.add(patch(part));
        }
        Map<String, Figure> made = new LinkedHashMap<>();
        if (!lengths.isEmpty() && !part.ofPatch()) {
            made.putAll(strips(part, grammage.get(), lengths));
        } else if (!areas.isEmpty()) {
            made.putAll(patches(part, grammage.get(), areas));
        }
        useUp(part, made);
        return made;
    }

    private void sort(Part.Mend part, Damage damage, List<Quantity> lengths, List<Quantity> areas) {
        Optional<Dimension> kind = damage.extent().map(Quantity::dimension);
        if (kind.filter(Dimension.LENGTH::equals).isPresent()) {
            lengths.add(damage.extent().get());
        } else if (kind.filter(Dimension.AREA::equals).isPresent()) {
            areas.add(damage.extent().get());
        } else {
            bench.missing(id(part, "area"), "the length or area of the damage '" + damage.id().orElse(damage.what())
                    + "'", "'extent:' under 'condition:', such as 'extent: 64 mm'", damage.place());
        }
    }

    private Quantity patch(Part.Mend part) {
        double lap = 2 * part.lap().in(Unit.CENTIMETRE);
        return Quantity.of((bench.height().in(Unit.CENTIMETRE) + lap) * (bench.width().in(Unit.CENTIMETRE) + lap),
                Unit.SQUARE_CENTIMETRE);
    }

    private Map<String, Figure> strips(Part.Mend part, Quantity grammage, List<Quantity> lengths) {
        return bench.ledger().work(new Job("mending", step.place()).given("tears", lengths, Job.CASE_FILE)
                .given("lap", part.lap(), Job.CASE_FILE).given("width", part.strip(), Job.CASE_FILE)
                .given("piece", part.piece().orElse(USUAL_PIECE), from(part.piece()))
                .given("tissue", grammage, Job.MATERIAL)
                .given("paste", part.pasteLoad().orElse(USUAL_PASTE), from(part.pasteLoad()))
                .given("waste", part.waste().orElse(NO_WASTE), from(part.waste()))
                .source(bench.material(part.tissue()).flatMap(Material::source))
                .gives("area", id(part, "area"), "tissue on the tears").gives("pieces", id(part, "pieces"), "pieces of tissue")
                .gives("tissue-mass", id(part, "tissue-mass"), "mass of the tissue")
                .gives("paste-mass", id(part, "paste-mass"), "wet adhesive on the tissue"));
    }

    private static String from(Optional<Quantity> written) {
        return written.isPresent() ? Job.CASE_FILE : Job.USUAL;
    }

    /** Losses and linings: tissue of their own area. */
    private Map<String, Figure> patches(Part.Mend part, Quantity grammage, List<Quantity> areas) {
        Quantity whole = Amounts.sum(areas).to(Unit.SQUARE_CENTIMETRE);
        Figure area = put(part, "area", "tissue on the losses or the lining", whole, "sum",
                areas.stream().map(one -> Ledger.given("area", "area", one, Job.CASE_FILE)).toList());
        Figure pieces = put(part, "pieces", "pieces of tissue", Quantity.count(areas.size()), "sum",
                List.of(Ledger.given("areas", "areas to cover", Quantity.count(areas.size()), Job.CASE_FILE)));
        Figure tissue = put(part, "tissue-mass", "mass of the tissue",
                Amounts.times(Quantity.of(grammage.in(Unit.GRAM_PER_SQUARE_METRE), Unit.MILLIGRAM),
                        whole.in(Unit.SQUARE_METRE) * 1000), "sheet-mass",
                List.of(Ledger.given(area), Ledger.given("grammage", "mass per area", grammage, Job.MATERIAL)));
        Quantity load = part.pasteLoad().orElse(USUAL_PASTE);
        Quantity waste = part.waste().orElse(NO_WASTE);
        Figure paste = put(part, "paste-mass", "wet adhesive on the tissue", Quantity.of(
                whole.in(Unit.SQUARE_CENTIMETRE) * load.in(Unit.GRAM_PER_SQUARE_CENTIMETRE)
                        * (1 + waste.in(Unit.PERCENT) / 100), Unit.GRAM), "product",
                List.of(Ledger.given(area), Ledger.given("paste", "wet adhesive on area", load, from(part.pasteLoad())),
                        Ledger.given("waste", "share for loss", waste, from(part.waste()))));
        Map<String, Figure> made = new LinkedHashMap<>();
        List.of(area, pieces, tissue, paste).forEach(figure -> made.put(figure.id(), figure));
        return made;
    }

    private void useUp(Part.Mend part, Map<String, Figure> made) {
        double times = bench.scale().sheetCount() * bench.scale().withSpare();
        Optional.ofNullable(made.get(id(part, "paste-mass"))).ifPresent(paste ->
                bench.uses().add(new Uses.Use(part.with(), step.id(), true, paste, times, 1)));
        Optional.ofNullable(made.get(id(part, "tissue-mass"))).ifPresent(tissue ->
                bench.uses().add(new Uses.Use(part.tissue(), step.id(), true, tissue, times, 1)));
    }

    @Override
    public Map<String, Figure> support(Part.Support part) {
        if (part.margin().isEmpty()) {
            return Map.of();
        }
        Quantity margin = part.margin().get();
        Figure height = cut(part, "carrier-height", "height to cut the carrier to", "height", bench.height(), margin);
        Figure width = cut(part, "carrier-width", "width to cut the carrier to", "width", bench.width(), margin);
        return Map.of(height.id(), height, width.id(), width);
    }

    private Figure cut(Part part, String name, String label, String side, Quantity length, Quantity margin) {
        Quantity both = Amounts.times(margin, 2);
        return put(part, name, label, Amounts.sum(List.of(length.to(Unit.MILLIMETRE), both)), "cut-size",
                List.of(Ledger.given(side, side + " of the sheet", length, Job.CASE_FILE),
                        Ledger.given("margin", "margin on every side", margin, Job.CASE_FILE)));
    }

    @Override
    public Map<String, Figure> weighing(Part.Weighing part) {
        Map<String, Figure> made = new LinkedHashMap<>();
        part.wet().ifPresent(wet -> made.putAll(bench.ledger().work(new Job("solids", step.place())
                .given("dry", part.dry(), Job.CASE_FILE).given("now", wet, Job.CASE_FILE)
                .gives("solids", id(part, "wet-solids"), "solids of the wet sheet")
                .gives("water", id(part, "water"), "water in the wet sheet"))));
        double dry = part.dry().in(Unit.GRAM);
        Figure window = put(part, "restraint-mass", "mass at which the sheet goes under restraint",
                Quantity.between(100 * dry / RESTRAINT.high(), 100 * dry / RESTRAINT.value(),
                        100 * dry / RESTRAINT.low(), Unit.GRAM), "mass-at-solids",
                List.of(Ledger.given("dry", "mass of the dry sheet", part.dry(), Job.CASE_FILE),
                        Ledger.given("solids", "solids at which distortion begins", RESTRAINT, Job.USUAL)));
        made.put(window.id(), window);
        part.restrained().ifPresent(mass -> made.putAll(restrained(part, mass, window)));
        return made;
    }

    private Map<String, Figure> restrained(Part.Weighing part, Quantity mass, Figure window) {
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(new Job("solids", step.place())
                .given("dry", part.dry(), Job.CASE_FILE).given("now", mass, Job.CASE_FILE)
                .gives("solids", id(part, "restrained-solids"), "solids when put under restraint")));
        Optional.ofNullable(made.get(id(part, "restrained-solids")))
                .filter(solids -> solids.value().in(Unit.PERCENT) > RESTRAINT.high())
                .ifPresent(solids -> bench.messages().add(FigureMessages.RESTRAINED_TOO_LATE.at(step.place(),
                        "step", step.id(), "solids", Reading.of(solids.value()),
                        "mass", Reading.number(window.value().low()) + " g")));
        Optional<Quantity> between = part.between().or(part::blottedFor);
        if (part.wet().isPresent() && between.isPresent()) {
            made.putAll(bench.ledger().work(new Job("drying", step.place()).given("dry", part.dry(), Job.CASE_FILE)
                    .given("first", part.wet().get(), Job.CASE_FILE).given("second", mass, Job.CASE_FILE)
                    .given("between", between.get(), Job.CASE_FILE)
                    .note("Holds only between two changes of blotter.")
                    .gives("rate", id(part, "rate"), "how fast the sheet dried")));
        }
        return made;
    }

    @Override
    public Map<String, Figure> heat(Part.Heat part) {
        return Map.of();
    }

    @Override
    public Map<String, Figure> cleaning(Part.Cleaning part) {
        return Map.of();
    }

    @Override
    public Map<String, Figure> fixing(Part.Fixing part) {
        return Map.of();
    }

    @Override
    public Map<String, Figure> housing(Part.Housing part) {
        return Map.of();
    }
}
