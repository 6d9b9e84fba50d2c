package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.Constant;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Part;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.model.Studio;
import org.benchleaf.model.Waterless;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Sheets;

/** Works out the figures that each part of one step brings, and notes what the step uses up. */
public final class PartFigures implements Part.Kinds<Map<String, Figure>> {

    /** The name of what stays in the bottle of each station. */
    public static final String LEFT_IN_BOTTLE = "left-in-bottle";

    private final Bench bench;
    private final Step step;

    public PartFigures(Bench bench, Step step) {
        this.bench = bench;
        this.step = step;
    }

    /** Works out everything that the step's parts bring. */
    public void work() {
        step.parts().forEach(part -> part.ask(this));
    }

    /** The size of what the step is done to. */
    private Optional<PrintObject.SheetSize> size() {
        return bench.source().object().sizeOf(step.of());
    }

    private String id(Part part, String name) {
        return key(part, name).id();
    }

    private FigureKey key(Part part, String name) {
        return FigureKey.ofStep(step, part, name);
    }

    private Figure put(Part part, String name, String label, Quantity value, String method,
            List<Figure.Given> inputs, String... notes) {
        return bench.ledger().put(key(part, name), label, value, method, inputs, notes);
    }

    @Override
    public Map<String, Figure> bath(Part.Bath part) {
        int trays = bench.scale().trays(part.sheets());
        if (!part.counted()) {
            return Map.of();
        }
        if (size().isEmpty()) {
            bench.unsized(id(part, "total"), step.place());
            return times(part, Optional.empty());
        }
        if (part.depth().isEmpty() || part.margin().isEmpty()) {
            String key = part.depth().isEmpty() ? "depth" : "margin";
            bench.notRecorded(id(part, "total"), "the " + key + " of the bath", step.place());
            return times(part, Optional.empty());
        }
        PrintObject.SheetSize size = size().get();
        Optional<Studio.Tray> tray = tray(part, size);
        int planned = part.baths();
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(bathJob(part, planned, size.height(),
                size.width(), Job.CASE_FILE, trays).given("margin", part.margin().get(), Job.CASE_FILE)
                .gives("volume", key(part, "volume"), "volume that covers sheet and margin")
                .gives("total", key(part, "total"), "volume that covers sheet and margin, all baths")));
        tray.ifPresent(one -> made.putAll(bench.ledger().work(bathJob(part, planned, one.height(), one.width(), Job.STUDIO, trays)
                .given("margin", bench.constant("no-margin"))
                .note(bench.say("Fill the whole tray ({tray}) to this depth; that is more than sheet and margin need.",
                        "tray", bench.say(one.id())))
                .gives("volume", key(part, "tray-volume"), "liquid for one bath in the studio's tray")
                .gives("total", key(part, "tray-total"), "liquid for all baths in the studio's tray"))));
        Optional.ofNullable(made.get(id(part, "tray-total"))).or(() -> Optional.ofNullable(made.get(id(part, "total"))))
                .ifPresent(total -> bench.uses().add(new Uses.Use(part.of(), step.id(), true, total,
                        bench.scale().trayfuls(part.baths(), trays), bench.scale().fillings(part.baths(), trays))));
        // What was read belongs to the sheet of the case, not to those of a class.
        part.onRecord().filter(run -> run != planned && bench.scale().isOne()).ifPresent(run -> made.putAll(bench.ledger().work(tray
                .map(one -> bathJob(part, run, one.height(), one.width(), Job.STUDIO, trays).given("margin", bench.constant("no-margin")))
                .orElseGet(() -> bathJob(part, run, size.height(), size.width(), Job.CASE_FILE, trays)
                        .given("margin", part.margin().get(), Job.CASE_FILE))
                .gives("total", key(part, "record-total"), "liquid for the baths on record"))));
        Figure volume = made.getOrDefault(id(part, "tray-volume"), made.get(id(part, "volume")));
        if (volume != null && bench.paper().grammage().isPresent()) {
            made.putAll(rinsing(part, volume));
        }
        made.putAll(times(part, Optional.ofNullable(volume)));
        return made;
    }

    /**
     * How long filling, changing and the baths take, where the case does not tell the time of the step in all. What is usual
     * stands for a tray alone; of a larger bath, or one whose volume nobody knows, only the case can tell.
     */
    private Map<String, Figure> times(Part.Bath part, Optional<Figure> volume) {
        boolean usual = volume.filter(one -> one.value().highIn(Unit.LITRE)
                <= bench.constant("tray-of-usual-times").value().in(Unit.LITRE)).isPresent();
        boolean told = part.filling().isPresent() && (part.baths() == 1 || part.changing().isPresent());
        if (step.takes().isPresent() || !part.isTimed() || part.isOpen() || !usual && !told) {
            return Map.of();
        }
        Figure filling = filling(part);
        Map<String, Figure> made = new LinkedHashMap<>(Map.of(filling.id(), filling));
        made.putAll(bench.ledger().work(changing(part, new Job("bath-time", step.place()).given("filling", filling))
                .given("each", planned(part), Job.CASE_FILE).given("baths", Quantity.count(part.baths()), Job.CASE_FILE)
                .gives("change", key(part, "change-time"), "one change of the bath")
                .gives("wet", key(part, "wet-time"), "from laying the sheet into the first bath to lifting it out of the last")
                .gives("total", key(part, "bath-time"), "filling, baths and changes in all")));
        return made;
    }

    /** The times of the baths that are planned, without those that are only allowed. */
    private static List<Quantity> planned(Part.Bath part) {
        // A case with faults may list fewer times than baths.
        return part.each().stream().limit(part.each().size() == 1 ? 1 : part.baths()).map(StatedTime::span).toList();
    }

    private Figure filling(Part.Bath part) {
        Constant usual = bench.constant(ClassWork.MAKING_A_BATH.usual());
        String label = "filling the bath, before the sheet goes in";
        return part.filling().map(told -> put(part, "filling-time", label, told, "as-given",
                        List.of(Ledger.given("amount", label, told, Job.CASE_FILE))))
                .orElseGet(() -> bench.ledger().keep(new Figure(key(part, "filling-time"), label, usual.value(), "as-given",
                        List.of(Ledger.given("amount", label, usual.value(), new Origin.OfConstant(usual.name()))),
                        usual.sources(), List.of())));
    }

    /** A change as the case tells it has the reading of the meter in it. */
    private Job changing(Part.Bath part, Job job) {
        job.given("changing", part.changing(), Job.CASE_FILE, bench.constant(ClassWork.BATH_CHANGE.usual()));
        return part.changing().isEmpty() && bench.source().isBroughtToPh(part)
                ? job.given("adjusting", bench.constant(ClassWork.READING_A_BATH.usual())) : job;
    }

    private Job bathJob(Part.Bath part, int baths, Quantity height, Quantity width, Origin from, int trays) {
        Job job = new Job("bath", step.place());
        return (from == Job.STUDIO ? job.each("height", List.of(Ledger.given("height", "length of the tray", height, from)))
                .each("width", List.of(Ledger.given("width", "width of the tray", width, from)))
                : job.given("height", height, from).given("width", width, from))
                .given("depth", part.depth().orElseThrow(), Job.CASE_FILE)
                .given("baths", Quantity.count(baths), Job.CASE_FILE)
                .given("sheets", Quantity.count(trays), bench.scale().isOne() ? Job.USUAL : Origin.Place.SHEETS);
    }

    /** The tray of the bath; where none of the studio's will do, that is told. */
    private Optional<Studio.Tray> tray(Part.Bath part, PrintObject.SheetSize size) {
        if (bench.library().studio().trays().isEmpty()) {
            return Optional.empty();
        }
        List<Studio.Tray> fitting = TrayChoice.fitting(bench.library(), part.margin().orElseThrow(), size);
        if (fitting.isEmpty()) {
            bench.messages().add(FigureMessages.NO_TRAY_LARGE_ENOUGH.at(step.place(), "step", step.id(),
                    "height", Reading.number(side(Sheets.withMargins(size.height(), part.margin().get()))) + " mm",
                    "width", Reading.number(side(Sheets.withMargins(size.width(), part.margin().get()))) + " mm"));
        } else if (fitting.stream().noneMatch(tray -> TrayChoice.isDeepEnough(tray, part))) {
            double deepest = fitting.stream().mapToDouble(tray -> side(tray.depth())).max().orElse(0);
            bench.messages().add(FigureMessages.DEEPER_THAN_TRAY.at(step.place(), "step", step.id(),
                    "depth", Reading.of(part.depth().orElseThrow()), "tray", Reading.number(deepest) + " mm"));
        }
        return TrayChoice.of(fitting, part);
    }

    private static double side(Quantity length) {
        return length.in(Unit.MILLIMETRE);
    }

    /** How much liquid there is for each gram of paper, and what ideal rinsing would leave behind; of water, not of solvents alone. */
    private Map<String, Figure> rinsing(Part.Bath part, Figure volume) {
        Map<String, Figure> made = new LinkedHashMap<>();
        if (new Waterless(bench.source(), bench.library()).is(part.of())) {
            return made;
        }
        sheetMass(part).ifPresent(mass -> {
            made.putAll(bench.ledger().work(new Job("liquor-ratio", step.place()).given("bath", volume)
                    .given("sheet", mass).given("sheets", Quantity.count(part.sheets()), Job.CASE_FILE)
                    .given("density", bench.waterDensity(), Job.USUAL).note("The bath is taken to be as dense as water.")
                    .gives("ratio", key(part, "liquor"), "grams of bath for each gram of paper")));
            bench.ledger().one(new Job("mass-at-solids", step.place()).given("dry", mass)
                    .given("solids", bench.constant("wet-solids"))
                    .gives("water", key(part, "held"), "water that the wet sheet holds"))
                    .ifPresent(held -> made.putAll(left(part, volume, held)));
        });
        return made;
    }

    private Map<String, Figure> left(Part.Bath part, Figure volume, Figure held) {
        Quantity water = bench.ledger().value("mass-and-volume", Inputs.none().with("amount", held.value(), new Origin.OfFigure(held.key()))
                .with("density", bench.waterDensity(), Job.USUAL), "volume").orElseThrow();
        return bench.ledger().work(new Job("rinsing", step.place()).given("held", water, new Origin.OfFigure(held.key()))
                .given("bath", volume).given("baths", Quantity.count(part.baths()), Job.CASE_FILE)
                .note("Ideal rinsing only: a real sheet keeps far more, a heavily sized one for hours.")
                .note(bench.say("The sheet is taken to be fully wet at {solids} solids.",
                        "solids", Reading.of(bench.constant("wet-solids").value())))
                .gives("left", key(part, "left"), "share of dissolved matter left if rinsing were ideal"));
    }

    /** The sheet as it was weighed dry, wherever the case tells it, so that one mass stands on every page; else by its grammage. */
    private Optional<Figure> sheetMass(Part part) {
        Optional<Quantity> weighed = bench.source().steps().stream().flatMap(one -> one.part(Part.Weighing.class).stream())
                .flatMap(weighing -> weighing.dry().stream()).findFirst();
        if (weighed.isPresent()) {
            String label = "mass of the sheet as weighed";
            return Optional.of(put(part, "sheet-mass", label, weighed.get().to(Unit.GRAM), "as-given",
                    List.of(Ledger.given("mass", label, weighed.get(), Job.CASE_FILE))));
        }
        if (size().isEmpty()) {
            bench.unsized(id(part, "sheet-mass"), step.place());
        }
        return size().flatMap(size -> bench.ledger().one(new Job("sheet-mass", step.place())
                .given("grammage", bench.paper().grammage().orElseThrow(), Job.CASE_FILE)
                .given("height", size.height(), Job.CASE_FILE).given("width", size.width(), Job.CASE_FILE)
                .gives("mass", key(part, "sheet-mass"), "mass of the sheet by its grammage")));
    }

    @Override
    public Map<String, Figure> mist(Part.Mist part) {
        if (part.amount().isEmpty()) {
            bench.notRecorded(id(part, "amount"), "the amount of mist", step.place());
        }
        return part.amount().map(amount -> amount(part, part.of(), amount, "liquid sprayed on one sheet")).orElse(Map.of());
    }

    private Map<String, Figure> amount(Part part, String of, Quantity amount, String label) {
        Figure figure = put(part, "amount", label, amount, "as-given",
                List.of(Ledger.given("amount", label, amount, Job.CASE_FILE)));
        bench.uses().add(new Uses.Use(of, step.id(), true, figure,
                bench.scale().sheetsOfLiquid(), 1));
        leftInBottles(part, of);
        return Map.of(figure.id(), figure);
    }

    /** Each station draws from a bottle of its own, in which something stays. */
    private void leftInBottles(Part part, String of) {
        bench.scale().spare().flatMap(ClassStores.Spare::leftInBottle).ifPresent(left -> bench.uses().add(new Uses.Use(of,
                step.id(), true, put(part, LEFT_IN_BOTTLE, "left in the bottle of one station", left, "as-given",
                        List.of(Ledger.given("amount", "left in each bottle", left, Origin.Place.CLASS))),
                bench.scale().stations(), 1)));
    }

    @Override
    public Map<String, Figure> chamber(Part.Chamber part) {
        Map<String, Figure> made = new LinkedHashMap<>();
        part.amount().ifPresent(amount -> made.putAll(amount(part, part.of(), amount, "liquid put into the chamber")));
        boolean asked = part.volume().isPresent() && part.humidity().isPresent();
        Optional<Quantity> temperature = part.temperature().or(() -> bench.source().sources().retelling().isPresent() ? Optional.empty()
                : bench.library().studio().temperature());
        if (asked && temperature.isEmpty()) {
            bench.notRecorded(id(part, "water"), "the temperature in the chamber", step.place());
        } else if (asked) {
            boolean own = part.temperature().isPresent();
            made.putAll(bench.ledger().work(new Job("humidifying", step.place())
                    .given("volume", part.volume().get(), Job.CASE_FILE)
                    .given("temperature", temperature.get(),
                            own ? Job.CASE_FILE : Job.STUDIO)
                    .given("from", bench.constant("room-humidity")).given("to", part.humidity().get(), Job.CASE_FILE)
                    .note("The sheet and the walls take up more; this is what the air alone needs.")
                    .gives("water", key(part, "water"), "water that the air of the chamber takes up")));
        }
        return made;
    }

    @Override
    public Map<String, Figure> blotters(Part.Blotters part) {
        Optional<Material> blotter = part.blotter().flatMap(bench::material);
        if (blotter.flatMap(Material::grammage).isEmpty()) {
            return Map.of();
        }
        if (bench.paper().grammage().isEmpty() && (part.dry().isEmpty() || part.wet().isEmpty())) {
            bench.missing(bench.paper().grammageMissing(), id(part, "per-change"), "the sheet's mass per area",
                    "'grammage:' under 'support:', or 'wet:' and 'dry:' under 'blotters:'", step.place());
            return Map.of();
        }
        Optional<Figure> dry = mass(part, "dry-mass", "mass of the dry sheet", part.dry(), "dry-solids");
        Optional<Figure> wet = mass(part, "wet-mass", "mass of the wet sheet", part.wet(), solids());
        Optional<Figure> sheet = blotterMass(part, blotter.get());
        if (dry.isEmpty() || wet.isEmpty() || sheet.isEmpty()) {
            return Map.of();
        }
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(forWater(part, dry.get(), wet.get())
                .given("blotter-mass", sheet.get())
                .given("uptake", blotter.get().uptake(), Job.MATERIAL, bench.constant("blotter-uptake"))
                .source(blotter.get().source())
                .gives("per-change", key(part, "for-water"), "blotters needed for the water in one sheet")));
        Optional.ofNullable(made.get(id(part, "for-water")))
                .ifPresent(filled -> made.putAll(laidOut(part, filled, blotter.get())));
        return made;
    }

    /** Two weighings are two numbers; a wet mass that follows from the dry one moves with it. */
    private Job forWater(Part.Blotters part, Figure dry, Figure wet) {
        if (part.wet().isEmpty()) {
            return new Job("blotters-unweighed", step.place()).given("dry", dry).given("solids", bench.constant(solids()));
        }
        return new Job("blotters", step.place()).given("wet", wet).given("dry", dry)
                .given("changes", Quantity.count(Math.max(1, part.changes().size())), Job.CASE_FILE);
    }

    /** A sheet out of a bath or a mist is fully wet; one out of a chamber holds far less. */
    private String solids() {
        List<Step> before = bench.source().steps().stream().takeWhile(one -> !one.id().equals(step.id())).toList();
        boolean wetted = before.stream().anyMatch(one -> one.part(Part.Bath.class).isPresent()
                || one.part(Part.Mist.class).isPresent());
        boolean damped = before.stream().anyMatch(one -> one.part(Part.Chamber.class).isPresent());
        return damped && !wetted ? "damp-solids" : "wet-solids";
    }

    /** Both faces must be covered, however little water there is. */
    private Map<String, Figure> laidOut(Part.Blotters part, Figure filled, Material blotter) {
        boolean whole = blotter.height().isPresent() && blotter.width().isPresent();
        Origin from = whole ? Job.MATERIAL : Job.CASE_FILE;
        Map<String, Figure> made = new LinkedHashMap<>();
        if (size().isEmpty()) {
            bench.unsized(id(part, "per-change"), step.place());
            return made;
        }
        PrintObject.SheetSize size = size().get();
        bench.ledger().one(new Job("covering", step.place()).given("height", size.height(), Job.CASE_FILE)
                .given("width", size.width(), Job.CASE_FILE)
                .given("blotter-height", whole ? blotter.height().get() : size.height(), from)
                .given("blotter-width", whole ? blotter.width().get() : size.width(), from)
                .given("layers", Quantity.count(Math.max(1, part.layers())), Job.CASE_FILE)
                .gives("cover", key(part, "cover"), "blotters to cover both faces")).ifPresent(cover -> {
                    made.put(cover.id(), cover);
                    made.putAll(sets(part, filled, cover, blotter));
                });
        return made;
    }

    private Map<String, Figure> sets(Part.Blotters part, Figure filled, Figure cover, Material blotter) {
        Map<String, Figure> made = bench.ledger().work(new Job("blotter-sets", step.place()).given("for-water", filled)
                .given("cover", cover).given("changes", Quantity.count(part.changes().size()), Job.CASE_FILE)
                .gives("per-change", key(part, "per-change"), "blotters for each change")
                .gives("total", key(part, "total"), "blotters in all for one sheet"));
        Optional.ofNullable(made.get(id(part, "total"))).ifPresent(total -> bench.uses().add(new Uses.Use(blotter.id(),
                step.id(), true, inClass(part, total), bench.scale().spare().isPresent() ? 1 : bench.scale().sheetCount(), 1)));
        return made;
    }

    /** Whole blotters for every sheet of a class; those of one sheet for a case. */
    private Figure inClass(Part.Blotters part, Figure total) {
        return bench.scale().spare().flatMap(spare -> bench.ledger().one(new Job("pieces", step.place())
                .given("each", total).given("users", Quantity.count(bench.scale().sheetCount()), Origin.Place.CLASS)
                .given("spare", spare.pieces(), Origin.Place.CLASS)
                .given("extra", Quantity.count(bench.scale().extra(spare.pieces(), (int) Math.ceil(total.value().high()))),
                        Origin.Place.CLASS)
                .gives("total", key(part, "class-total"), "blotters in all for the class"))).orElse(total);
    }

    private Optional<Figure> mass(Part part, String name, String label, Optional<Quantity> weighed, String solids) {
        if (weighed.isPresent()) {
            return Optional.of(put(part, name, label, weighed.get().to(Unit.GRAM), "as-given",
                    List.of(Ledger.given("mass", label, weighed.get(), Job.CASE_FILE))));
        }
        return sheetMass(part).flatMap(sheet -> bench.ledger().one(new Job("mass-at-solids", step.place())
                .given("dry", sheet).given("solids", bench.constant(solids)).gives("mass", key(part, name), label)));
    }

    private Optional<Figure> blotterMass(Part.Blotters part, Material blotter) {
        boolean whole = blotter.height().isPresent() && blotter.width().isPresent();
        Origin from = whole ? Job.MATERIAL : Job.CASE_FILE;
        if (!whole && size().isEmpty()) {
            bench.unsized(id(part, "per-change"), step.place());
            return Optional.empty();
        }
        return bench.ledger().one(new Job("sheet-mass", step.place())
                .given("grammage", blotter.grammage().orElseThrow(), Job.MATERIAL)
                .given("height", whole ? blotter.height().get() : size().get().height(), from)
                .given("width", whole ? blotter.width().get() : size().get().width(), from)
                .gives("mass", key(part, "blotter-mass"), "mass of one dry blotter"));
    }

    @Override
    public Map<String, Figure> press(Part.Press part) {
        Optional<Quantity> height = part.height().or(() -> size().map(PrintObject.SheetSize::height));
        Optional<Quantity> width = part.width().or(() -> size().map(PrintObject.SheetSize::width));
        if (height.isEmpty() || width.isEmpty()) {
            bench.unsized(id(part, "pressure"), step.place());
            return Map.of();
        }
        if (part.mass().isEmpty()) {
            bench.notRecorded(id(part, "pressure"), "the mass of the weight", step.place());
            return Map.of();
        }
        return bench.ledger().work(new Job("pressure", step.place()).given("mass", part.mass().get(), Job.CASE_FILE)
                .given("height", height.get(), Job.CASE_FILE)
                .given("width", width.get(), Job.CASE_FILE)
                .gives("pressure", key(part, "pressure"), part.height().isPresent()
                        ? "pressure under the weight" : "pressure on the whole sheet"));
    }

    @Override
    public Map<String, Figure> mend(Part.Mend part) {
        Optional<String> untold = untold(part);
        if (untold.isPresent()) {
            bench.notRecorded(id(part, "tissue-mass"), "the " + untold.get() + " of the tissue", step.place());
            return Map.of();
        }
        Optional<Quantity> grammage = grammage(part);
        List<Quantity> lengths = new ArrayList<>();
        List<Figure.Given> areas = new ArrayList<>();
        for (String damage : part.damages()) {
            bench.source().damage(damage).ifPresent(one -> sort(part, one, lengths, areas));
        }
        if (part.ofPatch() && areas.isEmpty()) {
            lining(part).ifPresent(whole -> areas.add(Ledger.given(whole)));
        }
        Map<String, Figure> made = new LinkedHashMap<>();
        if (!lengths.isEmpty() && !part.ofPatch()) {
            made.putAll(strips(part, grammage, lengths));
        } else if (!areas.isEmpty()) {
            made.putAll(patches(part, grammage, areas));
        }
        made.putAll(coating(part, made));
        useUp(part, made);
        return made;
    }

    /** The grammage of the tissue; without one the case still tells how much adhesive there is, which lies on an area. */
    private Optional<Quantity> grammage(Part.Mend part) {
        Optional<Material> tissue = bench.material(part.tissue());
        Optional<Quantity> grammage = tissue.flatMap(Material::grammage);
        if (grammage.isEmpty()) {
            Optional<MissingValue> told = MissingValue.read(part.tissue()).or(() -> tissue.flatMap(Material::grammageMissing));
            bench.missing(told, id(part, "tissue-mass"), tissue.isPresent() ? "the mass per area of the tissue '" + part.tissue() + "'"
                    : "the tissue", "'grammage:' in the materials", step.place());
        }
        return grammage;
    }

    /** The measure of the pieces of tissue that the case does not tell. */
    private static Optional<String> untold(Part.Mend part) {
        return part.strip().isEmpty() && !part.ofPatch() ? Optional.of("strip")
                : part.lap().isEmpty() ? Optional.of("lap") : Optional.empty();
    }

    private void sort(Part.Mend part, Damage damage, List<Quantity> lengths, List<Figure.Given> areas) {
        Optional<Dimension> kind = damage.extent().map(Quantity::dimension);
        if (kind.filter(Dimension.LENGTH::equals).isPresent()) {
            lengths.add(damage.extent().get());
        } else if (kind.filter(Dimension.AREA::equals).isPresent()) {
            areas.add(Ledger.given("areas", damage.id().orElse(damage.what()), damage.extent().get(), Job.CASE_FILE));
        } else {
            bench.missing(damage.extentMissing(), id(part, "area"), "the length or area of the damage '" + damage.id().orElse(damage.what())
                    + "'", "'extent:' under 'condition:', such as 'extent: 64 mm'", damage.place());
        }
    }

    private Optional<Figure> lining(Part.Mend part) {
        if (size().isEmpty()) {
            bench.unsized(id(part, "lining"), step.place());
        }
        return size().flatMap(size -> bench.ledger().one(new Job("lining", step.place())
                .given("height", size.height(), Job.CASE_FILE).given("width", size.width(), Job.CASE_FILE)
                .given("lap", part.lap().orElseThrow(), Job.CASE_FILE).gives("area", key(part, "lining"), "lining of the whole sheet")));
    }

    private Map<String, Figure> strips(Part.Mend part, Optional<Quantity> grammage, List<Quantity> lengths) {
        return bench.ledger().work(wetLoad(part, tissue(part, grammage, new Job("mending", step.place())
                .given("tears", lengths, Job.CASE_FILE)
                .given("lap", part.lap().orElseThrow(), Job.CASE_FILE)
                .given("width", part.strip().orElseThrow(), Job.CASE_FILE)
                .given("piece", part.piece(), Job.CASE_FILE, bench.constant("mending-piece"))
                .gives("area", key(part, "area"), "tissue on the tears").gives("pieces", key(part, "pieces"), "pieces of tissue"))));
    }

    private Job tissue(Part.Mend part, Optional<Quantity> grammage, Job job) {
        return grammage.map(known -> job.given("tissue", known, Job.MATERIAL)
                .gives("tissue-mass", key(part, "tissue-mass"), "mass of the tissue")).orElse(job);
    }

    /** Adds what lies wet on the tissue: the adhesive, or the liquid that wakes a dry one; nothing where neither is there. */
    private Job wetLoad(Part.Mend part, Job job) {
        Optional<Quantity> woken = part.activation().flatMap(Part.Activation::load);
        if (part.activation().isEmpty()) {
            job.given("paste", part.pasteLoad(), Job.CASE_FILE, bench.constant("paste-load"))
                    .gives("paste-mass", key(part, "paste-mass"), "wet adhesive on the tissue");
        } else if (woken.isPresent()) {
            job.given("paste", woken.get(), Job.CASE_FILE)
                    .gives("paste-mass", key(part, "activator-mass"), "liquid that wakes the adhesive on the tissue");
        } else {
            job.given("paste", bench.constant("no-paste"));
        }
        return job.given("waste", part.waste(), Job.CASE_FILE).source(bench.material(part.tissue()).flatMap(Material::source));
    }

    /** The dry adhesive on a coated tissue, as tissue of the grammage of the coating. */
    private Map<String, Figure> coating(Part.Mend part, Map<String, Figure> made) {
        Optional<Quantity> coating = part.activation().flatMap(Part.Activation::coating);
        Optional<Figure> area = Optional.ofNullable(made.get(id(part, "area")));
        return coating.isEmpty() || area.isEmpty() ? Map.of() : bench.ledger().work(new Job("patches", step.place())
                .each("areas", List.of(Ledger.given(area.get()))).given("tissue", coating.get(), Job.CASE_FILE)
                .given("paste", bench.constant("no-paste"))
                .gives("tissue-mass", key(part, "coating-mass"), "dry adhesive on the tissue"));
    }

    /** Losses and linings: tissue of their own area. */
    private Map<String, Figure> patches(Part.Mend part, Optional<Quantity> grammage, List<Figure.Given> areas) {
        return bench.ledger().work(wetLoad(part, tissue(part, grammage, new Job("patches", step.place()).each("areas", areas)
                .gives("area", key(part, "area"), "tissue on the losses or the lining")
                .gives("pieces", key(part, "pieces"), "pieces of tissue"))));
    }

    private void useUp(Part.Mend part, Map<String, Figure> made) {
        Optional.ofNullable(made.get(id(part, "paste-mass"))).ifPresent(paste -> bench.uses().add(new Uses.Use(
                part.with(), step.id(), true, paste, bench.scale().sheetsOfLiquid(), 1)));
        part.activation().flatMap(Part.Activation::with).ifPresent(liquid ->
                Optional.ofNullable(made.get(id(part, "activator-mass"))).ifPresent(mass -> bench.uses().add(new Uses.Use(
                        liquid, step.id(), true, mass, bench.scale().sheetsOfLiquid(), 1))));
        Optional.ofNullable(made.get(id(part, "tissue-mass"))).ifPresent(tissue -> bench.uses().add(new Uses.Use(
                part.tissue(), step.id(), true, tissue, bench.scale().sheetsOfPieces(), 1)));
    }

    @Override
    public Map<String, Figure> support(Part.Support part) {
        if (part.margin().isEmpty()) {
            return Map.of();
        }
        if (size().isEmpty()) {
            bench.unsized(id(part, "carrier-height"), step.place());
            return Map.of();
        }
        Quantity margin = part.margin().get();
        Map<String, Figure> made = new LinkedHashMap<>(cut(part, "carrier-height", "height to cut the carrier to",
                size().get().height(), margin));
        made.putAll(cut(part, "carrier-width", "width to cut the carrier to", size().get().width(), margin));
        return made;
    }

    private Map<String, Figure> cut(Part part, String name, String label, Quantity side, Quantity margin) {
        return bench.ledger().work(new Job("cut-size", step.place()).given("side", side, Job.CASE_FILE)
                .given("margin", margin, Job.CASE_FILE).gives("size", key(part, name), label));
    }

    @Override
    public Map<String, Figure> weighing(Part.Weighing part) {
        if (part.dry().isEmpty()) {
            bench.notRecorded(id(part, "restraint-mass"), "the mass of the dry sheet", step.place());
            return Map.of();
        }
        Quantity dry = part.dry().get();
        Map<String, Figure> made = new LinkedHashMap<>();
        part.wet().ifPresent(wet -> made.putAll(bench.ledger().work(new Job("solids", step.place())
                .given("dry", dry, Job.CASE_FILE).given("now", wet, Job.CASE_FILE)
                .gives("solids", key(part, "wet-solids"), "solids of the wet sheet")
                .gives("water", key(part, "water"), "water in the wet sheet"))));
        bench.ledger().one(new Job("mass-at-solids", step.place()).given("dry", dry, Job.CASE_FILE)
                .given("solids", bench.constant("restraint-solids"))
                .gives("mass", key(part, "restraint-mass"), "mass at which the sheet is laid between boards and weighted"))
                .ifPresent(window -> {
                    made.put(window.id(), window);
                    part.restrained().ifPresent(mass -> made.putAll(restrained(part, dry, mass, window)));
                });
        return made;
    }

    private Map<String, Figure> restrained(Part.Weighing part, Quantity dry, Quantity mass, Figure window) {
        Map<String, Figure> made = new LinkedHashMap<>(bench.ledger().work(new Job("solids", step.place())
                .given("dry", dry, Job.CASE_FILE).given("now", mass, Job.CASE_FILE)
                .gives("solids", key(part, "restrained-solids"), "solids when laid between boards and weighted")));
        Optional.ofNullable(made.get(id(part, "restrained-solids")))
                .filter(solids -> solids.value().in(Unit.PERCENT)
                        > bench.constant("restraint-solids").value().highIn(Unit.PERCENT))
                .ifPresent(solids -> bench.messages().add(FigureMessages.RESTRAINED_TOO_LATE.at(step.place(),
                        "step", step.id(), "solids", Reading.of(solids.value()),
                        "mass", Reading.number(window.value().low()) + " g")));
        Optional<Quantity> between = part.between().or(part::blottedFor);
        if (part.wet().isPresent() && between.isPresent()) {
            made.putAll(bench.ledger().work(new Job("drying", step.place()).given("dry", dry, Job.CASE_FILE)
                    .given("first", part.wet().get(), Job.CASE_FILE).given("second", mass, Job.CASE_FILE)
                    .given("between", between.get(), Job.CASE_FILE)
                    .note("Holds only between two changes of blotter.")
                    .gives("rate", key(part, "rate"), "how fast the sheet dried")));
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

    @Override
    public Map<String, Figure> layer(Part.Layer part) {
        Optional<Quantity> height = part.height().or(() -> size().map(PrintObject.SheetSize::height));
        Optional<Quantity> width = part.width().or(() -> size().map(PrintObject.SheetSize::width));
        if (height.isEmpty() || width.isEmpty()) {
            bench.unsized(id(part, "total"), step.place());
            return Map.of();
        }
        if (part.thickness().isEmpty()) {
            bench.notRecorded(id(part, "total"), "the thickness of the layer", step.place());
            return Map.of();
        }
        Map<String, Figure> made = bench.ledger().work(new Job("bath", step.place()).given("height", height.get(), Job.CASE_FILE)
                .given("width", width.get(), Job.CASE_FILE).given("margin", bench.constant("no-margin"))
                .given("depth", part.thickness().get(), Job.CASE_FILE).given("baths", Quantity.count(part.times()), Job.CASE_FILE)
                .given("sheets", Quantity.count(1), Job.USUAL)
                .note("A layer is worked out as a bath that is as deep as the layer is thick.")
                .gives("volume", key(part, "volume"), "poultice or gel for one layer")
                .gives("total", key(part, "total"), "poultice or gel for all layers"));
        Optional.ofNullable(made.get(id(part, "total"))).ifPresent(total -> bench.uses().add(new Uses.Use(part.of(),
                step.id(), true, total, bench.scale().sheetsOfLiquid(), 1)));
        return made;
    }

    @Override
    public Map<String, Figure> suction(Part.Suction part) {
        return part.of().isPresent() && part.amount().isPresent()
                ? amount(part, part.of().get(), part.amount().get(), "liquid drawn through one sheet") : Map.of();
    }

    @Override
    public Map<String, Figure> light(Part.Light part) {
        return part.illuminance().isEmpty() || part.time().isEmpty() ? Map.of()
                : bench.ledger().work(new Job("light-exposure", step.place())
                        .given("illuminance", part.illuminance().get(), Job.CASE_FILE)
                        .given("time", part.time().get(), Job.CASE_FILE)
                        .gives("exposure", key(part, "exposure"), "light that falls on the sheet in all"));
    }

    @Override
    public Map<String, Figure> gas(Part.Gas part) {
        if (part.amount().isEmpty()) {
            return Map.of();
        }
        Map<String, Figure> made = new LinkedHashMap<>(amount(part, part.of(), part.amount().get(), "gas let in"));
        Optional<Quantity> room = bench.library().studio().roomVolume();
        if (room.isEmpty()) {
            bench.notRecorded(id(part, "room-rise"), "the volume of the studio's room", step.place());
            return made;
        }
        made.putAll(bench.ledger().work(new Job("gas-in-room", step.place())
                .given("volume", part.amount().get(), Job.CASE_FILE)
                .given("room", room.get(), Job.STUDIO)
                .gives("rise", key(part, "room-rise"), "what it adds to the air of the room at most")));
        return made;
    }

    @Override
    public Map<String, Figure> tape(Part.Tape part) {
        return Map.of();
    }

    @Override
    public Map<String, Figure> ageing(Part.Ageing part) {
        return Map.of();
    }
}
