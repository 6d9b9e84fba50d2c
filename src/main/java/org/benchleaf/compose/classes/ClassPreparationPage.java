package org.benchleaf.compose.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Digits;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.compose.part.BriefingMaker;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TimeWords;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.classes.PieceSize;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;
/** The technician's page of a class: what to make in the order to begin, in what, what to lay out, what is left, the labels. */
public final class ClassPreparationPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-preparation", "-preparation.html", true);

    /** As the table of what work needs calls it. */
    /** A constant, the lightest sheet that a balance is fine enough for, with the step in which it counts, the coarsest first. */
    private static final Map<String, Quantity> BALANCES = new TreeMap<>(Map.of("balance-1-lightest", Quantity.of(0.1, Unit.GRAM),
            "balance-2-lightest", Quantity.of(0.01, Unit.GRAM), "balance-3-lightest", Quantity.of(0.001, Unit.GRAM)));
    private static final String RACK = "drying rack";

    private static final Map<PieceSize.Bound, String> SIZES = Map.of(PieceSize.Bound.EXACTLY, "class.size",
            PieceSize.Bound.AT_MOST, "class.size-most", PieceSize.Bound.AT_LEAST, "class.size-least");

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new BriefingMaker(sheet, desk.desk()).beforePreparing(desk.plan().preparations(),
                new Duties(sheet, desk).steps(), new Leftovers(sheet, desk).handled(), atHand(desk),
                collected(sheet, desk), Fact.of(words.say("class.waste-here"), words.say("class.waste-rule", "heading",
                        words.say("class.waste")))));
        practice(sheet, desk).ifPresent(sheet::add);
        new PreparationForms(sheet, desk).section().ifPresent(sheet::add);
        sheet.add(new Section("begin", words.say("class.begin"), Optional.of(words.say("class.begin-lead")),
                Stream.concat(Stream.<Block>of(begin(sheet, desk)), new ClassNotes(sheet, desk).table().stream()).toList()));
        RecipeMaker recipes = new RecipeMaker(sheet, desk.desk());
        sheet.add(new Section("prepare", words.say("prepare.heading"), Optional.of(words.say("class.prepare-lead")),
                List.copyOf(desk.plan().preparations().stream().map(recipes::make).toList())));
        sheet.add(new Section("lay-out", words.say("prepare.lay-out"), Optional.of(words.say("class.lay-out-lead")),
                Stream.concat(Stream.<Block>of(SpareFacts.of(sheet, desk), layOut(sheet, desk)), Stream.concat(
                        new WhichServes(sheet, desk).table().stream(), new OneForAll(sheet, desk).readings().stream())).toList()));
        sheet.add(new Section("waste", words.say("class.waste"), Optional.of(words.say("class.waste-lead")),
                List.of(waste(sheet, desk))));
        sheet.add(desk.papers(sheet));
        return desk.finish(sheet, NAME);
    }

    /** What practice sheets are like, and the steps of the case that they have behind them when the class begins. */
    private static Optional<Section> practice(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        Optional<ClassSupplies.LaidOut> sheets = desk.plan().supplies().layOut().stream()
                .filter(item -> item.kind() == ClassSupplies.Kind.SHEET).findFirst()
                .filter(any -> desk.course().papers().like().isPresent());
        List<Fact> facts = new ArrayList<>();
        sheets.flatMap(ClassSupplies.LaidOut::all).ifPresent(all -> facts.add(Fact.of(words.say("class.in-all"), count(sheet, all))));
        sheets.flatMap(ClassSupplies.LaidOut::size).map(one -> size(sheet, one))
                .ifPresent(size -> facts.add(Fact.of(words.say("class.size-name"), size)));
        desk.course().papers().like().ifPresent(like -> facts.add(Fact.of(words.say("class.like"), like)));
        desk.course().papers().making().flatMap(SheetMaking::from).ifPresent(from ->
                facts.add(Fact.of(words.say("class.bought-as"), from)));
        desk.course().papers().making().ifPresent(making -> facts.add(making.bought()
                ? Fact.of(words.say("class.sheets-come"), words.say("class.sheets-bought"))
                : Fact.of(words.say("class.sheets-made-by"), words.term("role", making.by().word()))));
        List<Block> blocks = new ArrayList<>(List.of(new Facts(facts)));
        Duties duties = new Duties(sheet, desk);
        (desk.course().papers().making().isPresent() ? duties.ofSheets() : behind(sheet, desk)).ifPresent(blocks::add);
        practiceThings(sheet, desk).ifPresent(blocks::add);
        return sheets.map(any -> new Section("practice-sheets", words.say("class.practice"),
                Optional.of(words.say(desk.course().papers().making().isPresent() ? "class.practice-made-lead" : "class.practice-lead")),
                blocks));
    }

    /** What making them takes besides what the class lays out. */
    private static Optional<Table> practiceThings(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.plan().supplies().practice().stream().map(item -> List.of(RichText.of(name(sheet, desk, item)),
                RichText.of(item.all().map(all -> count(sheet, all)).orElse(words.say("class.for-the-room"))), RichText.of(words.list(
                        item.steps().isEmpty() ? List.of(words.say("class.all-steps")) : item.steps().stream()
                                .map(step -> desk.step(sheet, step)).distinct().toList())))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("practice-things-table", words.say("class.practice-things"),
                words.columns("class.thing", "class.in-all", "class.for"), rows, Optional.empty()));
    }

    /** What the sheet of the case went through, where the class does not say how practice sheets come to be. */
    private static Optional<Table> behind(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.desk().treatment().steps().stream().takeWhile(step -> !desk.plan().steps().contains(step))
                .map(step -> List.of(RichText.of(desk.step(sheet, step.id())), RichText.of(step.instruction()), RichText.of(step.takes()
                        .map(takes -> new TimeWords(sheet).of(takes)).orElse(words.say("class.not-worked-out"))))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("practice-table", words.say("class.practice-caption"),
                words.columns("class.step", "class.do", "class.takes-each"), rows, Optional.empty()));
    }

    /** All that the class makes, uses up or lays out; what other steps of the case use is not there. */
    private static Set<String> atHand(ClassDesk desk) {
        Set<String> ids = new LinkedHashSet<>(desk.desk().worked().hazards().keySet());
        Set<String> there = new LinkedHashSet<>();
        desk.plan().preparations().forEach(one -> there.add(one.solution()));
        desk.plan().supplies().orders().forEach(order -> there.add(order.material()));
        Stream.concat(desk.plan().supplies().layOut().stream(), desk.plan().supplies().practice().stream()).forEach(item ->
                there.add(item.id()));
        ids.retainAll(there);
        return ids;
    }

    /** A row of the table of what to begin when. */
    private record Begun(LocalDateTime at, List<RichText> row) {
    }

    /** The meter, before it is first used on a day. */
    private static List<Begun> calibrations(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        String buffers = MeterWork.buffers(sheet, desk);
        Stream<Begun> checks = MeterWork.checks(sheet, desk).stream().map(one -> new Begun(one.begin(), Stream.of(
                words.say("class.check-conductivity"), desk.moment(sheet, one.begin()), sheet.numbers().duration(one.takes()).text(),
                desk.moment(sheet, one.until()), words.say("class.with-nothing"), words.say("class.calibrate-in")).map(RichText::of)
                .toList()));
        return Stream.concat(checks, MeterWork.of(sheet, desk).stream().map(one -> new Begun(one.begin(), List.of(
                RichText.of(MeterWork.name(sheet, one)), RichText.of(desk.moment(sheet, one.begin())),
                RichText.of(sheet.numbers().duration(one.takes()).text()), RichText.of(desk.moment(sheet, one.used())),
                RichText.of(buffers),
                RichText.of(words.say("class.calibrate-in") + Duties.after(new ClassNotes(sheet, desk).pointer(
                        Duty.Kind.METER_CALIBRATED.word()))))))).toList();
    }

    private static Table begin(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<Begun> begun = new ArrayList<>(calibrations(sheet, desk));
        for (ClassPlan.Start start : desk.plan().starts()) {
            ClassSupplies.Filling filling = filling(desk, start.solution());
            begun.add(new Begun(start.begin(), List.of(RichText.of(batch(sheet, desk, start)), RichText.of(begin(sheet, desk, start)),
                    RichText.of(start.inTrays() ? words.say("class.by-stations")
                            : sheet.numbers().duration(start.handsOn()).text()),
                    RichText.of(readyFor(sheet, desk, start)), RichText.of(amount(sheet, desk, start)),
                    RichText.of(vessel(sheet, desk, filling, start.batch())))));
        }
        Duties duties = new Duties(sheet, desk);
        desk.plan().duties().forEach(duty -> begun.add(new Begun(duty.begin(), duties.begun(duty))));
        List<List<RichText>> rows = begun.stream().sorted(Comparator.comparing(Begun::at)).map(Begun::row).toList();
        return new Table("begin-table", words.say("class.prepare-caption"), words.columns("class.what",
                "class.begin-by", "class.hands-on", "class.ready-for", "class.amount", "class.vessel"), rows, Optional.empty());
    }

    /** What is made; of several batches, which, and for which stations. */
    static String batch(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        String thing = desk.thing(sheet, start.solution());
        if (!start.batch().isOneOfSeveral()) {
            return thing;
        }
        String batch = sheet.words().say("class.batch", "what", thing, "n", start.batch().number(), "of", start.batch().of());
        return start.batch().stations().isEmpty() ? batch : batch + sheet.words().say("class.batch-stations", "stations",
                sheet.words().list(start.batch().stations().stream().map(String::valueOf).toList()));
    }

    /** When it is needed; of several batches, until when it keeps too. */
    private static String readyFor(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        String needed = desk.moment(sheet, start.readyFor());
        return start.batch().freshUntil().filter(any -> start.batch().isOneOfSeveral()).map(until -> sheet.words().say(
                "class.fresh-until", "needed", needed, "until", desk.moment(sheet, until))).orElse(needed);
    }

    /** A time that has gone by before a class that is still to come is told as such. */
    private static String begin(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        LocalDateTime today = desk.desk().clearance().day().atStartOfDay();
        String moment = desk.moment(sheet, start.begin());
        return start.begin().isBefore(today) && !desk.course().starts().isBefore(today)
                ? sheet.words().say("class.too-late", "what", moment) : moment;
    }

    static ClassSupplies.Filling filling(ClassDesk desk, String solution) {
        return desk.plan().supplies().vessels().stream().filter(one -> one.solution().equals(solution)).findFirst().orElseThrow();
    }

    /** How much of it; a batch stands in a row of its own, fillings of trays do not. */
    private static String amount(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        Preparation preparation = desk.plan().preparations().stream().filter(one -> one.solution().equals(start.solution()))
                .findFirst().orElseThrow();
        return sheet.numbers().amount(preparation.batch()).text() + (preparation.batches() > start.batch().of()
                ? sheet.words().say("bench.ready-times", "times", sheet.words().times(preparation.batches())) : "")
                + stock(sheet, desk, preparation);
    }

    /** How much stock one filling, one of each tray and all of them take, where the case wrote it down. */
    private static String stock(Sheet sheet, ClassDesk desk, Preparation preparation) {
        return desk.plan().supplies().stock().stream().filter(one -> one.bath().equals(preparation.solution())).findFirst()
                .map(one -> ". " + sheet.words().say("class.stock-for", "stock", desk.thing(sheet, one.stock()),
                        "one", sheet.numbers().roughly(one.each(), 1).text(),
                        "each", sheet.numbers().roughly(one.ofEachTray().value(), 2).text(),
                        "all", sheet.numbers().roughly(one.ofAll().value(), 2).text())).orElse("");
    }

    private static String vessel(Sheet sheet, ClassDesk desk, ClassSupplies.Filling filling, ClassPlan.Batch batch) {
        Words words = sheet.words();
        if (filling.place() == ClassSupplies.MadeAt.TRAY) {
            return words.say("class.in-trays", "n", desk.course().stations());
        }
        String made = filling.vessel().map(kind -> words.say("class.in-vessels", "n", filling.count(),
                "kind", sheet.library().phrases().of(kind),
                "holds", sheet.numbers().written(filling.holds().orElseThrow()).text(),
                "each", filling.each().map(each -> sheet.numbers().amount(each).text()).orElse("")))
                .orElseGet(() -> words.say("class.no-vessel"))
                + filling.clear().map(clear -> " " + clear(sheet, clear)).orElse("");
        if (filling.stations() == 0) {
            return made;
        }
        Optional<String> tool = tool(desk, filling.solution());
        int stations = batch.isOneOfSeveral() && !batch.stations().isEmpty() ? batch.stations().size() : filling.stations() / batch.of();
        return made + " " + words.say(tool.isPresent() ? "class.handed-out-in" : "class.handed-out",
                "tool", tool.map(id -> desk.thing(sheet, id)).orElse(""), "portions", words.count("class.portions", stations),
                "each", filling.inStation().map(each -> sheet.numbers().amount(each).text()).orElse(""));
    }

    private static String clear(Sheet sheet, ClassSupplies.Clear clear) {
        return sheet.words().say(clear.all().isPresent() ? "class.clear-in" : "class.clear-in-not-full", "n", clear.count(),
                "kind", sheet.library().phrases().of(clear.kind()), "holds", sheet.numbers().written(clear.holds()).text());
    }

    /** The tool out of which a solution is sprayed. */
    static Optional<String> tool(ClassDesk desk, String solution) {
        return desk.plan().steps().stream().flatMap(step -> step.part(Part.Mist.class).stream())
                .filter(mist -> mist.of().equals(solution)).flatMap(mist -> mist.tool().stream()).findFirst();
    }

    private static Table layOut(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.plan().supplies().layOut().stream().map(item -> List.of(
                RichText.of(name(sheet, desk, item)), RichText.of(item.station().map(one -> count(sheet, desk, item, one))
                        .orElse(words.say(isTechnicians(item) ? "class.at-the-technician" : "class.in-the-room"))),
                RichText.of(item.all().map(one -> ofAll(sheet, desk, item, count(sheet, desk, item, one))).orElse(words.say(
                        item.station().isEmpty() ? "class.for-the-room" : "class.not-worked-out"))),
                RichText.of(item.steps().isEmpty() ? words.say("class.all-steps") : item.steps().stream()
                        .map(step -> desk.step(sheet, step)).distinct()
                        .collect(Collectors.collectingAndThen(Collectors.toList(), words::list))))).toList();
        return new Table("lay-out-table", words.say("class.lay-out-caption"), words.columns("class.thing",
                "class.at-station", "class.in-all", "class.for"), rows, Optional.empty());
    }

    /** How many of those that all share are used at once, where the class has more. */
    private static String ofAll(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item, String count) {
        return desk.reading().shared().stream().filter(one -> item.kind() == ClassSupplies.Kind.SHARED && one.thing().equals(item.id())
                && one.count() > one.most()).findFirst().map(one -> sheet.words().say("class.some-of", "n", count, "of", one.count()))
                .orElse(count);
    }

    /** What is worn to prepare alone. */
    private static boolean isTechnicians(ClassSupplies.LaidOut item) {
        return item.kind() == ClassSupplies.Kind.WORN && item.station().isEmpty() && item.all().isPresent();
    }

    static String name(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item) {
        String name = switch (item.kind()) {
            case SHEET -> sheet.words().say("class.practice");
            case WEIGHT -> weight(sheet, item);
            case MATERIAL, SOLUTION, SHARED, WORN -> desk.thing(sheet, item.id());
            case VESSEL, BENCH, MAKING -> onTheBench(sheet, item);
        };
        if (item.mark().isPresent()) {
            return item.size().map(size -> sheet.words().list(List.of(onTheBench(sheet, item), size(sheet, size))))
                    .orElseGet(() -> onTheBench(sheet, item));
        }
        List<String> parts = new ArrayList<>(List.of(name));
        Stream.of(item.words()).filter(words -> !words.isEmpty()).forEach(parts::add);
        if (item.id().equals(ClassStores.BUFFERS)) {
            parts.add(sheet.words().say("class.buffer-portion", "n", MeterWork.count(sheet, desk), "amount",
                    sheet.numbers().amount(sheet.library().formulary().constant("buffer-portion").value()).text()));
        }
        blotted(sheet, desk, item).ifPresent(parts::add);
        rackRoom(sheet, desk, item).ifPresent(parts::add);
        if (item.id().equals("balance")) {
            lightest(desk).ifPresent(mass -> step(sheet, mass).ifPresent(step -> parts.add(1, sheet.words().say("class.balance-step",
                    "step", sheet.numbers().written(step).text(), "mass", sheet.numbers().written(mass).text()))));
        }
        String told = sheet.words().list(parts);
        return item.size().map(size -> sheet.words().list(List.of(told, size(sheet, size)))).orElse(told);
    }

    /** The dry mass of the lightest sheet that is weighed. */
    private static Optional<Quantity> lightest(ClassDesk desk) {
        return desk.plan().steps().stream().flatMap(step -> step.part(Part.Weighing.class).stream())
                .flatMap(part -> part.dry().stream()).min(Comparator.comparingDouble(mass -> mass.lowIn(Unit.GRAM)));
    }

    /** The coarsest balance that is fine enough for a sheet, by the step in which it counts; empty for a sheet lighter than all. */
    private static Optional<Quantity> step(Sheet sheet, Quantity mass) {
        return BALANCES.entrySet().stream().filter(one -> sheet.library().formulary().constant(one.getKey()).value().in(Unit.GRAM)
                <= mass.lowIn(Unit.GRAM)).map(Map.Entry::getValue).findFirst();
    }

    /** For what the blotters of a station are, where they are those of one step. */
    private static Optional<String> blotted(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item) {
        return desk.plan().steps().stream().filter(step -> item.steps().equals(List.of(step.id())))
                .flatMap(step -> step.part(Part.Blotters.class).stream())
                .filter(part -> item.station().isPresent() && part.blotter().filter(item.id()::equals).isPresent()
                        && !part.changes().isEmpty()).findFirst()
                .map(part -> sheet.words().say("class.blotters-for", "layers", part.layers(), "changes", part.changes().size()));
    }

    /** How many blotters are wet at once, for which the rack has room. */
    private static Optional<String> rackRoom(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item) {
        return Optional.of(new WetBlotters(sheet, desk).most()).filter(most -> most > 0 && item.id().equals(RACK))
                .map(most -> sheet.words().say("class.rack-room", "n", most, "time", sheet.numbers().duration(sheet.library().formulary()
                        .constant("drying-a-blotter").value()).text()));
    }

    /** Height and width of a piece. */
    public static String size(Sheet sheet, PieceSize size) {
        return sheet.words().say(SIZES.get(size.bound()), "height", sheet.numbers().amount(size.height()).text(),
                "width", sheet.numbers().amount(size.width()).text());
    }

    /** A vessel as the studio calls it, another thing of the bench by its word, as an entry of a list begins. */
    public static String onTheBench(Sheet sheet, ClassSupplies.LaidOut item) {
        return Words.capital(item.mark().map(mark -> RecipeMaker.mark(sheet, mark))
                .orElseGet(() -> item.kind() == ClassSupplies.Kind.BENCH ? sheet.words().say("lay-out." + item.id())
                        : sheet.library().phrases().of(item.id())));
    }

    /** A weight by its mass. */
    public static String weight(Sheet sheet, ClassSupplies.LaidOut item) {
        return sheet.words().say("prepare.weight", "mass", sheet.numbers().spaced(item.id()));
    }

    /** How much of it; what fills a tray to a mark as a hand fills it. */
    static String count(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item, Quantity amount) {
        boolean toAMark = item.steps().stream().flatMap(id -> desk.desk().treatment().step(id).stream())
                .flatMap(step -> step.part(Part.Bath.class).stream()).anyMatch(bath -> bath.of().equals(item.id()));
        return toAMark ? sheet.numbers().told(amount, Digits.TO_A_MARK).text() : count(sheet, amount);
    }

    public static String count(Sheet sheet, Quantity amount) {
        return sheet.numbers().amount(amount).text();
    }

    private static Table waste(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        Map<String, Reference.WasteKind> kinds = desk.desk().library().reference().waste();
        List<List<RichText>> rows = new ArrayList<>(desk.plan().supplies().waste().stream().map(one -> List.of(
                RichText.of(one.kind().map(kinds::get).map(Reference.WasteKind::name).orElse(words.say("class.waste-unknown"))),
                RichText.of(words.list(one.solutions().stream().map(id -> desk.thing(sheet, id)).toList())),
                RichText.of(words.say("class.at-most", "amount", sheet.amount(one.volume()).text())),
                RichText.of(one.cans().map(cans -> words.say("class.cans", "n", (long) cans.value().value(), "can",
                        sheet.numbers().written(one.can().orElseThrow().holds()).text())).orElse(words.say("class.no-can"))),
                where(sheet, desk, one))).toList());
        rows.addAll(ofTheBench(sheet, desk));
        return new Table("waste-table", words.say("class.waste-caption"), words.columns("class.kind", "class.from-what",
                "class.in-all", "class.vessel", "class.where"), rows, Optional.empty());
    }

    /** What is left at a station and where it goes; empty where nothing is. */
    static Optional<Table> wasteOfStation(Sheet sheet, ClassDesk desk, int station) {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>(desk.plan().supplies().waste().stream().map(one -> List.of(
                RichText.of(words.list(one.solutions().stream().map(id -> desk.thing(sheet, id)).toList())),
                where(sheet, desk, one))).toList());
        desk.plan().steps().stream().flatMap(step -> step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).stream()).distinct()
                .forEach(blotter -> rows.add(List.of(RichText.of(desk.thing(sheet, blotter)),
                        RichText.of(words.say("class.waste-blotters-where")))));
        practised(desk).ifPresent(item -> rows.add(List.of(RichText.of(words.say("class.waste-sheets")),
                RichText.of(words.say("class.waste-sheets-where")))));
        rows.addAll(new Leftovers(sheet, desk).ofStation());
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("station-" + station + "-waste", words.say("class.station-waste",
                "n", station), words.columns("class.from-what", "class.where"), rows, Optional.empty()));
    }

    private static RichText where(Sheet sheet, ClassDesk desk, ClassSupplies.Waste waste) {
        return RichText.of(waste.kind().flatMap(any -> new HazardMaker(sheet, desk.desk()).waste(waste.solutions().get(0),
                collected(sheet, desk))).orElse(sheet.words().say("class.waste-ask")));
    }

    /** That all of a kind goes into the cans that the class names for it, and where they stand. */
    private static Map<String, String> collected(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        Map<String, String> collected = new LinkedHashMap<>();
        desk.course().stores().cans().forEach((kind, can) -> collected.put(kind, words.say("class.waste-in-cans") + " " + can.stands()
                .map(stands -> words.say("class.waste-stands", "stands", sheet.library().phrases().of(stands)))
                .orElse(words.say("class.waste-stands-unknown"))));
        return collected;
    }

    /** Used buffers and wet blotters, of which nobody prepared anything. */
    private static List<List<RichText>> ofTheBench(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>();
        desk.plan().supplies().buffers().ifPresent(item -> rows.add(wasteRow(words, "class.waste-buffers",
                words.list(List.of(onTheBench(sheet, item), item.words())), words.say("class.not-worked-out"),
                words.say("class.waste-buffers-in"))));
        desk.plan().steps().stream().flatMap(step -> step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).stream()).distinct()
                .forEach(blotter -> desk.plan().supplies().layOut().stream().filter(item -> item.id().equals(blotter)).limit(1)
                        .forEach(item -> rows.add(
                        wasteRow(words, "class.waste-blotters", desk.thing(sheet, blotter), item.all().map(all -> words.say("class.at-most",
                                "amount", count(sheet, all))).orElse(words.say("class.not-worked-out")),
                                spreadOut(sheet, desk, blotter) + onOneDay(sheet, desk, blotter)))));
        rows.addAll(ofPracticeSheets(sheet, desk));
        practised(desk).ifPresent(item -> rows.add(wasteRow(words, "class.waste-sheets", words.say("class.worked-on-all"),
                item.all().map(all -> words.say("class.at-most", "amount", count(sheet, all))).orElse(words.say("class.not-worked-out")),
                words.say("class.waste-sheets-in"))));
        rows.addAll(new Leftovers(sheet, desk).ofClass());
        return rows;
    }

    /** The practice sheets, which nobody asks back. */
    private static Optional<ClassSupplies.LaidOut> practised(ClassDesk desk) {
        return desk.plan().supplies().layOut().stream().filter(item -> item.kind() == ClassSupplies.Kind.SHEET
                && desk.course().papers().like().isPresent()).findFirst();
    }

    /** What making the practice sheets uses up and the table of waste does not hold yet, such as wax: how much at most, where it goes. */
    record Left(String id, Quantity atMost, String where) {
    }

    private static List<List<RichText>> ofPracticeSheets(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        return leftOfPracticeSheets(sheet, desk).map(left -> Stream.of(words.say("class.waste-practice"), desk.thing(sheet, left.id()),
                words.say("class.at-most", "amount", count(sheet, left.atMost())), words.say("class.waste-practice-in"), left.where())
                .map(RichText::of).toList()).toList();
    }

    static Stream<Left> leftOfPracticeSheets(Sheet sheet, ClassDesk desk) {
        HazardMaker hazards = new HazardMaker(sheet, desk.desk());
        Map<String, String> collected = collected(sheet, desk);
        return desk.plan().supplies().practice().stream().filter(item -> item.kind() == ClassSupplies.Kind.MATERIAL)
                .flatMap(item -> item.all().flatMap(all -> hazards.waste(item.id(), collected).map(where ->
                        new Left(item.id(), Quantity.of(all.high(), all.unit()), where))).stream());
    }

    /** How many are taken away at the changes of the busiest day, for which there is to be room. */
    private static String onOneDay(Sheet sheet, ClassDesk desk, String blotter) {
        Map<LocalDate, Integer> days = new LinkedHashMap<>();
        desk.plan().steps().forEach(step -> step.part(Part.Blotters.class)
                .filter(part -> part.blotter().filter(blotter::equals).isPresent())
                .ifPresent(part -> desk.reading().turns().stream().filter(turn -> turn.step().equals(step.id())
                        && turn.isBlotterChanged()).forEach(turn -> days.merge(turn.from().toLocalDate(),
                                2 * part.layers() * desk.course().sheetsEach(), Integer::sum))));
        return days.values().stream().max(Comparator.naturalOrder()).map(most -> sheet.words().say("class.waste-blotters-day",
                "n", most)).orElse("");
    }

    private static String spreadOut(Sheet sheet, ClassDesk desk, String blotter) {
        return sheet.words().say("class.waste-blotters-in", "area",
                sheet.figure(FigureKey.ofClass(desk.course().id(), blotter, "area").id()).map(sheet::amount)
                        .map(Amount::text).orElse(sheet.words().say("class.not-worked-out")));
    }

    private static List<RichText> wasteRow(Words words, String kind, String from, String amount, String in) {
        return List.of(RichText.of(words.say(kind)), RichText.of(from), RichText.of(amount), RichText.of(in),
                RichText.of(words.say(kind + "-where")));
    }
}
