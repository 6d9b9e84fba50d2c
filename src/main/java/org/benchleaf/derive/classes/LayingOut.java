package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.MeasureChoice;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.TrayChoice;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.figure.Weights;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Lists everything that the steps of a class use, at each station and in the room. */
public final class LayingOut {

    /** The rows of things that all share. */
    private static final Map<String, String> ROWS = Map.of(StationCut.METER, "meter", StationCut.BOARD, "board");

    private static final String DRAINING_BOARD = "draining-board";

    private final CourseClass course;
    private final Bench bench;
    private final List<Step> steps;
    private final Map<String, LayOutRow> rows;
    private final MeasureChoice measuring;
    private final Map<String, LaidOut> items = new LinkedHashMap<>();
    private MakingThings made;

    LayingOut(CourseClass course, Bench bench, List<Step> steps) {
        this.course = course;
        this.bench = bench;
        this.steps = steps;
        this.rows = bench.library().reference().layOut();
        this.measuring = MeasureChoice.of(bench);
    }

    /**
     * The list: sheets, then what each step uses, then what all share, then what is worn.
     *
     * @param care what each step needs for protection, by its id
     * @param making what is prepared, bottled and collected, and what for
     */
    List<LaidOut> list(Map<String, StepCare> care, Optional<ClassSchedule> schedule, MakingThings making) {
        sheets();
        made = making;
        steps.forEach(step -> UsedThings.of(step).forEach(id -> use(step, id)));
        Weights.of(steps).forEach(this::weights);
        steps.forEach(this::toFillTrays);
        steps.forEach(this::toChangeBaths);
        // Weights stand by their mass already, the balance with what weighing needs.
        schedule.map(ScheduleReading::new).ifPresent(reading -> reading.shared().stream().filter(one ->
                !List.of(StationCut.SUPERVISOR, StationCut.WEIGHT, StationCut.BALANCE).contains(one.thing()))
                .forEach(one -> shared(one, reading)));
        making.list().forEach(item -> items.put("making " + item.id() + item.words(), item));
        NeededThings.of(bench.source(), steps, making.preparations(), bench.library(),
                new NeededThings.Users(course.stations(), inUse(schedule, StationCut.SINK), inUse(schedule, StationCut.METER),
                        using -> places(schedule, using))).forEach(item ->
                items.put("needed " + item.id(), item));
        worn(care);
        return List.copyOf(items.values());
    }

    /** At how many stations some steps are done at one time; one where no plan tells. */
    private static int places(Optional<ClassSchedule> schedule, Collection<String> using) {
        List<ScheduleReading.Turn> turns = schedule.map(ScheduleReading::new).stream().flatMap(reading -> reading.turns().stream())
                .filter(turn -> using.contains(turn.step()) && (turn.isMainWork() || turn.isHold())).toList();
        return turns.stream().mapToInt(turn -> (int) turns.stream().filter(other -> !other.from().isAfter(turn.from())
                && other.to().isAfter(turn.from())).map(ScheduleReading.Turn::station).distinct().count()).max().orElse(1);
    }

    /** How many of a shared thing are in use at once, in the order of the plan; one where no plan tells. */
    private static int inUse(Optional<ClassSchedule> schedule, String thing) {
        return schedule.map(ScheduleReading::new).stream().flatMap(reading -> reading.shared().stream())
                .filter(one -> one.thing().equals(thing)).mapToInt(ScheduleReading.Sharing::most).filter(most -> most > 0)
                .findFirst().orElse(1);
    }

    private void sheets() {
        int each = course.sheetsEach();
        count("sheet", "sheets", each, course.stations(), 0, course.stores().spare().sheets()).ifPresent(all ->
                items.put("sheet", new LaidOut("sheet", Kind.SHEET, Optional.of(Quantity.count(each)), Optional.of(all), "",
                        List.of()).sized(steps.stream().limit(1).flatMap(step -> bench.source().object().sizeOf(step.of()).stream())
                                .map(PieceSize::of).findFirst())));
    }

    private void use(Step step, String id) {
        if (items.values().stream().anyMatch(item -> item.id().equals(id))) {
            return;
        }
        // What a station makes in its tray is there when it is made: its liquid and its stock are laid out.
        if (ClassProvider.isMadeInTrays(bench, id, steps)) {
            return;
        }
        if (bench.source().solution(id).isPresent()) {
            items.put(id, new LaidOut(id, Kind.SOLUTION, made.portion(id).or(() -> ofSolution(step, id)), made.amount(id),
                    made.portion(id).filter(portion -> isMoreThanUsed(portion, step, id)).map(any -> rows.get("portion").words())
                            .orElse(""),
                    steps.stream().filter(one -> UsedThings.of(one).contains(id)).map(Step::id).toList()));
        } else {
            material(step, id);
        }
    }

    private boolean isMoreThanUsed(Quantity portion, Step step, String id) {
        return portion.equals(bench.constant("paste-portion").value().exact()) && ofSolution(step, id).filter(used ->
                used.highIn(Unit.GRAM) < portion.in(Unit.GRAM)).isPresent();
    }

    /** How much one station has of a solution, where a step says how much one sheet takes. */
    private Optional<Quantity> ofSolution(Step step, String id) {
        boolean wakes = step.part(Part.Mend.class).flatMap(Part.Mend::activation).flatMap(Part.Activation::with)
                .filter(id::equals).isPresent();
        String amount = step.part(Part.Mist.class).filter(part -> part.of().equals(id)).isPresent() ? ".amount"
                : step.part(Part.Bath.class).isPresent() ? ".tray-volume" : wakes ? ".activator-mass" : ".paste-mass";
        return bench.ledger().figure(step.id() + amount).or(() -> bench.ledger().figure(step.id() + ".volume"))
                .map(Figure::value);
    }

    /** What a step uses up, then the pieces in which it is laid out besides. */
    private void material(Step step, String id) {
        List<Step> using = steps.stream().filter(one -> UsedThings.of(one).contains(id)).toList();
        List<Pieces> pieces = Pieces.of(id, using, bench.library(), bench.ledger().figures());
        List<String> usedUp = using.stream().filter(one -> isCounted(one, id) || pieces.stream().noneMatch(cut ->
                cut.steps().contains(one.id()))).map(Step::id).toList();
        if (!usedUp.isEmpty()) {
            items.put(id, usedUp(step, id, usedUp));
            if (step.part(Part.Mend.class).filter(mend -> mend.tissue().equals(id)).isPresent()) {
                tissueSheets(id, usedUp);
            }
        }
        for (int i = 0; i < pieces.size(); i++) {
            items.put(id + " in pieces " + i, pieces(id, pieces.get(i), i));
        }
    }

    /** Whether a step counts it by a figure of its own. */
    private static boolean isCounted(Step step, String id) {
        return step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).filter(id::equals).isPresent()
                || step.part(Part.Mend.class).filter(mend -> mend.tissue().equals(id)).isPresent();
    }

    private LaidOut usedUp(Step step, String id, List<String> using) {
        Optional<Figure> torn = step.part(Part.Mend.class).filter(part -> part.tissue().equals(id))
                .flatMap(part -> bench.ledger().figure(step.id() + ".pieces"));
        if (torn.isPresent()) {
            return torn(id, (int) Math.ceil(torn.get().value().high()), using).sized(step.part(Part.Mend.class).flatMap(mend ->
                    Pieces.torn(mend, bench.library())));
        }
        if (bench.uses().of(id).stream().noneMatch(Uses.Use::step)) {
            return new LaidOut(id, Kind.MATERIAL, Optional.empty(), Optional.empty(), "", using);
        }
        Optional<Figure> blotters = step.part(Part.Blotters.class).filter(part -> part.blotter().filter(id::equals)
                .isPresent()).flatMap(part -> bench.ledger().figure(step.id() + ".total"));
        return new LaidOut(id, Kind.MATERIAL, blotters.map(Figure::value).or(() -> ofSolution(step, id)),
                bench.ledger().figure("total." + id).map(Figure::value), "", using).sized(bench.material(id)
                        .filter(any -> blotters.isPresent()).flatMap(Pieces::asBought));
    }

    private LaidOut pieces(String id, Pieces pieces, int place) {
        boolean forSheets = pieces.row().per().equals("sheet");
        int users = forSheets ? course.stations() * course.sheetsEach() : course.stations();
        Quantity spare = course.stores().spare().pieces();
        String name = place == 0 ? "laid-out" : "laid-out-" + (place + 1);
        return new LaidOut(id, Kind.MATERIAL, Optional.of(Quantity.count((long) pieces.each() * (forSheets ? course.sheetsEach() : 1))),
                pieces.row().usedUp() ? count(id, name, pieces.each(), users, spare.high(), bench.scale().extra(spare,
                        forSheets ? pieces.each() : 0)) : count(id, name, pieces.each(), users, 0, 0),
                pieces.row().words(), pieces.steps()).sized(pieces.size());
    }

    /** What a station fills its tray with and brings to its pH: liquid and stock stand in the room, a pipette lies at the station. */
    private void toFillTrays(Step step) {
        step.part(Part.Bath.class).flatMap(bath -> bench.source().solution(bath.of())).filter(one -> one.recipe() instanceof Recipe.Adjust)
                .ifPresent(solution -> {
                    Recipe.Adjust adjust = (Recipe.Adjust) solution.recipe();
                    inTheRoom(adjust.liquid(), made.amount(adjust.liquid()).or(() -> intoTrays(solution, adjust.liquid())), "bath liquid",
                            step);
                    toRinse(adjust.liquid(), step);
                    inTheRoom(adjust.with(), made.amount(adjust.with()), "bath stock", step);
                    bench.ledger().figure(solution.id() + ".dose-ceiling").map(Figure::value).flatMap(measuring::dropper)
                            .map(Preparation.Dropper::vessel)
                            .ifPresent(pipette -> items.putIfAbsent(pipette, pipette(pipette, step)));
                });
    }

    /** What rinses the trays stands with what fills them. */
    private void toRinse(String liquid, Step step) {
        List<Uses.Use> uses = bench.uses().of(liquid).stream().filter(use -> use.figure().key().name().equals(RinsingWater.NAME)
                && use.by().equals(step.id())).toList();
        if (!uses.isEmpty()) {
            items.putIfAbsent("rinse " + liquid, new LaidOut(liquid, Kind.MATERIAL, Optional.empty(), bench.ledger().value("sum",
                    Uses.sum(uses, course.place()).inputs(), "total"), rows.get("rinse water").words(), List.of(step.id())));
        }
    }

    /** What all fillings of a bath take of its liquid; empty where nobody knows how much one takes. */
    private Optional<Quantity> intoTrays(Solution bath, String liquid) {
        List<Uses.Use> uses = bench.uses().of(liquid).stream().filter(use -> use.by().equals(bath.id())).toList();
        return uses.isEmpty() ? Optional.empty() : bench.ledger().value("sum", Uses.sum(uses, course.place()).inputs(), "total");
    }

    private LaidOut pipette(String name, Step step) {
        LayOutRow row = rows.get("pipette");
        return new LaidOut(name, Kind.VESSEL, Optional.of(Quantity.count(row.each())), count("pipette", "laid-out", row.each(),
                course.stations(), 0, 0), row.words(), List.of(step.id()));
    }

    private void inTheRoom(String id, Optional<Quantity> all, String row, Step step) {
        items.putIfAbsent(id, new LaidOut(id, bench.source().solution(id).isPresent() ? Kind.SOLUTION : Kind.MATERIAL, Optional.empty(),
                all, rows.get(row).words(), List.of(step.id())));
    }

    /** The sheet lies on its carrier beside the tray while a bath is changed. */
    private void toChangeBaths(Step step) {
        step.part(Part.Bath.class).filter(bath -> bath.baths() > 1).ifPresent(bath -> {
            LayOutRow row = rows.get(DRAINING_BOARD);
            items.putIfAbsent(DRAINING_BOARD, new LaidOut(DRAINING_BOARD, Kind.BENCH, Optional.of(Quantity.count(row.each())),
                    count(DRAINING_BOARD, "laid-out", row.each(), course.stations(), 0, 0), row.words(), List.of(step.id()))
                            .sized(Pieces.carrier(step, bench.ledger().figures()).map(PieceSize::atLeast)));
        });
    }

    private void weights(Weights weights) {
        int each = weights.count() * rows.get("weight").each();
        items.put("weight " + weights.mass(), new LaidOut(weights.mass(), Kind.WEIGHT, Optional.of(Quantity.count(
                (long) each * course.sheetsEach())), count("weight-" + weights.mass().replace(' ', '-'), "laid-out", each,
                course.stations() * course.sheetsEach(), 0, 0), rows.get("weight").words(), weights.steps()));
    }

    /** Pieces of tissue, of which every station has some more; so have the spare sheets. */
    private LaidOut torn(String id, int each, List<String> using) {
        Quantity spare = course.stores().spare().pieces();
        int one = (int) bench.ledger().value("pieces", pieces(each, course.sheetsEach(), spare.high(), spare.high() > 0 ? 1 : 0).inputs(),
                "total").orElseThrow().value();
        return new LaidOut(id, Kind.MATERIAL, Optional.of(Quantity.count(one)), count(id, "laid-out", one, course.stations(), 0,
                one * course.stores().spare().sheets()), rows.get(spare.high() > 0 ? "tissue to spare" : "tissue").words(), using);
    }

    /** The sheets of tissue of which strips are torn, where it is known how many they are. */
    private void tissueSheets(String id, List<String> using) {
        bench.ledger().figure(FigureKey.ofClass(course.id(), id, "sheets").id()).map(Figure::value).ifPresent(sheets ->
                items.put(id + " in sheets", new LaidOut(id, Kind.MATERIAL, Optional.empty(), Optional.of(sheets),
                        rows.get("tissue sheet").words(), using).sized(bench.material(id).flatMap(Pieces::asBought))));
    }

    private Optional<Quantity> count(String of, String name, int each, int users, double spare, int extra) {
        return bench.ledger().one(pieces(each, users, spare, extra)
                .gives("total", FigureKey.ofClass(course.id(), of, name), "to lay out")).map(Figure::value);
    }

    private Job pieces(int each, int users, double spare, int extra) {
        return new Job("pieces", course.place()).given("each", Quantity.count(each), Job.USUAL)
                .given("users", Quantity.count(users), Origin.Place.CLASS)
                .given("spare", Quantity.of(spare, Unit.PERCENT), Origin.Place.CLASS)
                .given("extra", Quantity.count(extra), Origin.Place.CLASS);
    }

    private void shared(ScheduleReading.Sharing one, ScheduleReading reading) {
        if (one.most() > 0) {
            boolean own = List.of(StationCut.TRAY, StationCut.BOARD).contains(one.thing()) && one.most() % course.stations() == 0;
            List<String> using = reading.turns().stream().filter(turn -> turn.takes().stream()
                    .anyMatch(taken -> taken.endsWith(one.thing()))).map(ScheduleReading.Turn::step).distinct().toList();
            String words = Optional.ofNullable(ROWS.get(one.thing())).map(rows::get).map(LayOutRow::words).orElse("");
            items.put("shared " + one.thing(), new LaidOut(one.thing(), own ? Kind.BENCH : Kind.SHARED,
                    Optional.of(Quantity.count(one.most() / course.stations())).filter(any -> own),
                    Optional.of(Quantity.count(one.most())), words, using).marked(one.thing().equals(StationCut.TRAY) ? mark()
                            : Optional.empty()).sized(one.thing().equals(StationCut.BOARD) ? stack(using)
                                    : one.thing().equals(StationCut.TRAY) ? inside() : Optional.empty()));
        }
    }

    /** Boards are at least as large as the blotters between them. */
    private Optional<PieceSize> stack(List<String> using) {
        return steps.stream().filter(step -> using.contains(step.id())).flatMap(step -> step.part(Part.Blotters.class).stream())
                .flatMap(part -> part.blotter().stream()).flatMap(id -> bench.material(id).stream())
                .flatMap(blotter -> Pieces.asBought(blotter).stream()).map(PieceSize::atLeast).findFirst();
    }

    /** Which tray it is, and how far it is filled; the first bath's where there are several. */
    private Optional<Preparation.Mark> mark() {
        return steps.stream().flatMap(step -> step.part(Part.Bath.class).flatMap(bath -> TrayChoice.mark(bench.library(),
                bench.source().object(), step, bath)).stream()).findFirst();
    }

    /** The size of that tray, inside. */
    private Optional<PieceSize> inside() {
        return mark().flatMap(Preparation.Mark::tray).flatMap(id -> bench.library().studio().trays().stream().filter(tray ->
                tray.id().equals(id)).findFirst()).flatMap(tray -> PieceSize.of(Optional.of(tray.height()), Optional.of(tray.width())));
    }

    /** What the steps ask for, for all who work at them; what preparing asks for, for the technician. */
    private void worn(Map<String, StepCare> care) {
        Map<String, List<String>> codes = new LinkedHashMap<>();
        steps.forEach(step -> Optional.ofNullable(care.get(step.id())).map(StepCare::wear).orElse(List.of()).forEach(code ->
                codes.computeIfAbsent(code, any -> new ArrayList<>()).add(step.id())));
        int people = course.stations() * course.day().traineesEach() + course.day().supervisors().orElse(0);
        codes.forEach((code, using) -> items.put(code, worn(code, people + (made.worn().containsKey(code) ? 1 : 0),
                course.day().traineesEach(), using)));
        made.worn().forEach((code, using) -> items.computeIfAbsent(code, any -> worn(code, 1, 0, using)));
    }

    private LaidOut worn(String code, int people, int atStation, List<String> using) {
        Reference.Equipment equipment = bench.library().reference().equipment().get(code);
        LayOutRow row = rows.getOrDefault("worn " + equipment.kind(), rows.get("worn"));
        return equipment.kind().equals("air") ? new LaidOut(code, Kind.WORN, Optional.empty(), Optional.empty(),
                        items.containsKey("shared " + StationCut.HOOD) ? row.words() : "", using)
                : new LaidOut(code, Kind.WORN, Optional.of(Quantity.count((long) row.each() * atStation)).filter(any -> atStation > 0),
                        count(code.toLowerCase(Locale.ROOT), "worn", row.each(), people, 0, 0), row.words(), using);
    }
}
