package org.benchleaf.derive.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.PartFigures;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out what is bought, bottled and thrown away for a class. */
final class ClassProvider {

    /** The name of the figure of what one trial takes of a liquid. */
    static final String FOR_A_TRIAL = "for-a-trial";

    /** The names of the figures of what water is used for besides the baths of the class. */
    private static final Set<String> BESIDE_BATHS = Set.of(FOR_A_TRIAL, RinsingWater.NAME);
    private static final String WATER = "water";
    /** What is made ready, at which no sheet is needed yet. */
    private static final Set<Duty.Kind> READIED = Set.of(Duty.Kind.METER_CALIBRATED, Duty.Kind.BATH_FOR_A_TRIAL);

    private final CourseClass course;
    private final Bench bench;
    private final List<Step> steps;
    private final WorkHours hours;
    private final List<Duty> before;

    /**
     * Makes ready to work it out.
     *
     * @param hours without the days on which the class is closed
     * @param before what is done to the practice sheets
     */
    ClassProvider(CourseClass course, Bench bench, List<Step> steps, WorkHours hours, List<Duty> before) {
        this.course = course;
        this.bench = bench;
        this.steps = steps;
        this.hours = hours;
        this.before = before;
    }

    /** Whether each station makes it in its own tray. */
    static boolean isMadeInTrays(Bench bench, String solution, List<Step> steps) {
        return bench.source().solution(solution).filter(one -> one.recipe() instanceof Recipe.Adjust).isPresent()
                && steps.stream().anyMatch(step -> step.part(Part.Bath.class)
                        .filter(bath -> bath.of().equals(solution)).isPresent());
    }

    /** How many stations find room along the bench; too few are told. */
    Optional<Figure> benchPlaces(Messages messages) {
        return course.stores().bench().flatMap(space -> bench.ledger().one(new Job("bench-places", course.place())
                .given("there", space.there(), Origin.Place.CLASS).given("each", space.each(), Origin.Place.CLASS)
                .gives("places", FigureKey.ofClass(course.id(), "bench", "places"), "places along the bench")).map(places -> {
                    long found = Math.round(places.value().value());
                    if (found < course.stations()) {
                        messages.add(ClassMessages.BENCH_TOO_SHORT.at(space.place(), "stations", course.stations(), "there",
                                Reading.of(space.there()), "each", Reading.of(space.each()), "places", found));
                    }
                    return places;
                }));
    }

    /**
     * One line for each material.
     *
     * @param starts when each solution is begun
     */
    List<ClassSupplies.Order> orders(List<ClassPlan.Start> starts) {
        List<ClassSupplies.Order> orders = new ArrayList<>();
        bench.ledger().figures().values().stream().filter(figure -> figure.key().owner() == FigureKey.Owner.TOTAL)
                .forEach(figure -> orders.add(order(figure, starts)));
        return orders;
    }

    /** One line for each material of which pieces are cut the working day before, and that nothing uses up by an amount of its own. */
    List<ClassSupplies.Order> cut(List<ClassSupplies.LaidOut> layOut, List<ClassPlan.Start> starts) {
        Map<String, List<ClassSupplies.LaidOut>> pieces = new LinkedHashMap<>();
        layOut.stream().filter(item -> item.kind() == ClassSupplies.Kind.MATERIAL && item.size().isPresent() && item.all().isPresent()
                && bench.ledger().figure("total." + item.id()).isEmpty()).forEach(item ->
                pieces.computeIfAbsent(item.id(), any -> new ArrayList<>()).add(item));
        List<ClassSupplies.Order> orders = new ArrayList<>();
        pieces.forEach((id, all) -> area(id, all).ifPresent(figure ->
                orders.add(order(id, figure, hours.before(firstDay(id, starts), 1)))));
        return orders;
    }

    /** How much room the blotters of the steps take when they are spread out to dry. */
    void areaOfBlotters(List<ClassSupplies.LaidOut> layOut) {
        steps.stream().flatMap(step -> step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).stream()).distinct().forEach(id ->
                area(id, layOut.stream().filter(item -> item.id().equals(id) && item.size().isPresent() && item.all().isPresent())
                        .limit(1).toList()));
    }

    private Optional<Figure> area(String id, List<ClassSupplies.LaidOut> pieces) {
        return pieces.isEmpty() ? Optional.empty() : bench.ledger().one(new Job("sum", course.place())
                .given("amounts", pieces.stream().map(item -> areaOf(item.size().orElseThrow())).toList(), Job.CASE_FILE)
                .given("times", pieces.stream().map(item -> Quantity.number(item.all().orElseThrow().value())).toList(), Origin.Place.CLASS)
                .gives("total", key(id, "area"), "area of all pieces"));
    }

    private Quantity areaOf(PieceSize size) {
        return bench.ledger().value("lining", Inputs.none().with("height", size.height(), Job.CASE_FILE).with("width", size.width(),
                Job.CASE_FILE).with("lap", Quantity.of(0, Unit.MILLIMETRE), Job.USUAL), "area").orElseThrow().to(Unit.SQUARE_METRE);
    }

    private ClassSupplies.Order order(Figure total, List<ClassPlan.Start> starts) {
        return order(total.key().of(), inSheets(total).or(() -> poured(total)).orElse(total), firstDay(total.key().of(), starts));
    }

    /** Water that is weighed out is bought and kept by its volume. */
    private Optional<Figure> poured(Figure total) {
        String id = total.key().of();
        return bench.material(id).flatMap(Material::substance).filter(WATER::equals)
                .filter(any -> total.value().dimension() == Dimension.MASS && !isByMass(id))
                .flatMap(any -> bench.ledger().one(new Job("mass-and-volume", course.place()).given("amount", total)
                        .given("density", bench.waterDensity(), Job.USUAL).gives("volume", key(id, "volume"), "as a volume")));
    }

    private boolean isByMass(String id) {
        return Optional.ofNullable(course.stores().supplies().get(id)).map(ClassStores.Supply::pack)
                .or(() -> Optional.ofNullable(course.stores().stock().get(id)).map(ClassStores.Stock::amount))
                .filter(one -> one.dimension() == Dimension.MASS).isPresent();
    }

    private ClassSupplies.Order order(String id, Figure needed, LocalDate used) {
        Optional<Quantity> stock = Optional.ofNullable(course.stores().stock().get(id)).map(ClassStores.Stock::amount)
                .filter(amount -> amount.dimension() == needed.value().dimension());
        Optional<ClassStores.Supply> supply = Optional.ofNullable(course.stores().supplies().get(id))
                .filter(one -> one.pack().dimension() == needed.value().dimension());
        LocalDate inHouse = hours.before(used, 1);
        if (supply.isEmpty()) {
            Map<String, Figure> shelf = stock.map(there -> onTheShelf(id, needed, there)).orElse(Map.of());
            Optional<Figure> missing = Optional.ofNullable(shelf.get(key(id, "missing").id()));
            return new ClassSupplies.Order(id, needed, stock, missing, Optional.empty(), Optional.empty(),
                    Optional.ofNullable(shelf.get(key(id, "left").id())).filter(any -> missing.orElseThrow().value().high() <= 0),
                    Optional.empty(), inHouse);
        }
        Quantity pack = supply.get().pack();
        Map<String, Figure> made = bench.ledger().work(packs(needed, stock, pack)
                .gives("missing", key(id, "missing"), "missing").gives("packs", key(id, "packs"), "packs to buy")
                .gives("left", key(id, "left"), "left over"));
        Optional<Figure> packs = Optional.ofNullable(made.get(key(id, "packs").id()))
                .filter(figure -> figure.value().value() > 0);
        return new ClassSupplies.Order(id, needed, stock, Optional.ofNullable(made.get(key(id, "missing").id())), packs,
                Optional.of(pack), Optional.ofNullable(made.get(key(id, "left").id())),
                packs.map(any -> hours.before(inHouse, supply.get().delivery())), inHouse);
    }

    /** How many sheets of a paper are bought, where the studio tells their size and the class does not buy it by its mass. */
    private Optional<Figure> inSheets(Figure total) {
        String id = total.key().of();
        return bench.material(id).filter(any -> !isByMass(id) && total.value().dimension() == Dimension.MASS).flatMap(this::massOfASheet)
                .flatMap(sheet -> bench.ledger().one(packs(total, Optional.empty(), sheet.value()).gives("packs", key(id, "sheets"),
                        "sheets that this is cut from")));
    }

    private Optional<Figure> massOfASheet(Material material) {
        return material.grammage().flatMap(grammage -> material.height().flatMap(height -> material.width().flatMap(width ->
                bench.ledger().one(new Job("sheet-mass", course.place()).given("grammage", grammage, Job.MATERIAL)
                        .given("height", height, Job.MATERIAL).given("width", width, Job.MATERIAL)
                        .gives("mass", key(material.id(), "sheet-mass"), "mass of one sheet")))));
    }

    /** What the shelf lacks; what is left where it lacks nothing, which needs no pack to be known. */
    private Map<String, Figure> onTheShelf(String id, Figure needed, Quantity stock) {
        return bench.ledger().work(packs(needed, Optional.of(stock), Quantity.of(1, needed.value().unit()))
                .gives("missing", key(id, "missing"), "missing").gives("left", key(id, "left"), "left over"));
    }

    private Job packs(Figure needed, Optional<Quantity> stock, Quantity pack) {
        return packs(new Job("packs", course.place()).given("needed", needed),
                stock.orElse(Quantity.of(0, needed.value().unit())), pack);
    }

    private static Job packs(Job needed, Quantity stock, Quantity pack) {
        return needed.given("stock", stock, Origin.Place.CLASS).given("pack", pack, Origin.Place.CLASS).readable();
    }

    private FigureKey key(String of, String name) {
        return FigureKey.ofClass(course.id(), of, name);
    }

    /** The day on which something is first made of it, or it is first used for a practice sheet, or that of the class. */
    private LocalDate firstDay(String material, List<ClassPlan.Start> starts) {
        return first(Stream.concat(bench.uses().of(material).stream().filter(use -> !use.step()).flatMap(use -> starts.stream()
                        .filter(start -> start.solution().equals(use.by()))).map(ClassPlan.Start::begin),
                begins(duty -> duty.with().containsKey(material))));
    }

    /**
     * What is bought though no recipe and no step takes it by an amount.
     *
     * @param practice what making the practice sheets takes besides what the class lays out
     * @param starts when each solution is begun
     * @param hazards of the solutions, by id
     * @param calibrations how often a meter is calibrated
     */
    List<ClassSupplies.Bought> beside(List<ClassSupplies.LaidOut> layOut, List<ClassSupplies.LaidOut> practice,
            List<ClassPlan.Start> starts, Map<String, Hazards> hazards, int calibrations) {
        Set<String> ofClass = layOut.stream().map(ClassSupplies.LaidOut::id).collect(Collectors.toSet());
        LocalDate first = first(Stream.concat(starts.stream().filter(start -> !start.inTrays()).map(ClassPlan.Start::begin),
                begins(any -> true)));
        return Stream.concat(layOut.stream(), practice.stream().filter(item -> !ofClass.contains(item.id()))).flatMap(item -> {
            if (item.kind() == ClassSupplies.Kind.SHEET) {
                return course.papers().like().map(any -> bought(item, first(begins(duty -> !READIED.contains(duty.kind()))),
                        course.papers().making().flatMap(SheetMaking::delivery), Optional.empty(), List.of())).stream();
            }
            if (item.id().equals(ClassStores.BUFFERS)) {
                ClassSupplies.LaidOut buffers = poured(item, calibrations);
                return Stream.of(bought(buffers, first(begins(duty -> duty.kind() == Duty.Kind.METER_CALIBRATED)), Optional.empty(),
                        supply(buffers), List.of()));
            }
            if (bench.library().reference().needs().stream().anyMatch(need ->
                    need.bought() && need.name().equals(item.id()))) {
                return Stream.of(bought(item, first(begins(duty -> practice.contains(item) ? !READIED.contains(duty.kind())
                        : duty.kind() == Duty.Kind.METER_CALIBRATED)), Optional.empty(), supply(item), List.of()));
            }
            return isWornOut(item) ? Stream.of(bought(withThat(item, layOut.contains(item) ? practice : List.of()), first,
                    Optional.empty(), supply(item), starts.stream()
                    .map(ClassPlan.Start::solution).distinct().filter(id -> Optional.ofNullable(hazards.get(id))
                            .filter(one -> one.wear().contains(item.id())).isPresent()).toList())) : Stream.empty();
        }).toList();
    }

    private Optional<ClassStores.Supply> supply(ClassSupplies.LaidOut item) {
        return Optional.ofNullable(course.stores().supplies().get(item.id())).filter(one -> one.pack().dimension()
                == item.all().map(Quantity::dimension).orElse(Dimension.COUNT));
    }

    /** What all calibrations take of each buffer. */
    private ClassSupplies.LaidOut poured(ClassSupplies.LaidOut buffers, int calibrations) {
        return new ClassSupplies.LaidOut(buffers.id(), buffers.kind(), buffers.station(), bench.ledger().value("sum", Inputs.none()
                .with("amounts", bench.constant("buffer-portion").value(), Job.USUAL).with("times", Quantity.number(calibrations),
                        Origin.Place.CLASS), "total"), buffers.words(), buffers.steps());
    }

    /** With what is worn out of the same before the class. */
    private ClassSupplies.LaidOut withThat(ClassSupplies.LaidOut item, List<ClassSupplies.LaidOut> before) {
        List<Quantity> amounts = Stream.concat(Stream.of(item), before.stream().filter(one -> one.id().equals(item.id())))
                .flatMap(one -> one.all().stream()).toList();
        return amounts.size() < 2 ? item : new ClassSupplies.LaidOut(item.id(), item.kind(), item.station(), bench.ledger().value("sum",
                Inputs.none().with("amounts", amounts, Origin.Place.CLASS), "total"), item.words(), item.steps());
    }

    private Stream<LocalDateTime> begins(Predicate<Duty> some) {
        return before.stream().filter(some).map(Duty::begin);
    }

    /** The day of the first of these, or that of the class. */
    private LocalDate first(Stream<LocalDateTime> begins) {
        return begins.min(LocalDateTime::compareTo).orElse(course.starts()).toLocalDate();
    }

    private ClassSupplies.Bought bought(ClassSupplies.LaidOut item, LocalDate used, Optional<Integer> delivery,
            Optional<ClassStores.Supply> supply, List<String> toMake) {
        LocalDate inHouse = hours.before(used, 1);
        return new ClassSupplies.Bought(item, toMake, delivery.or(() -> supply.map(ClassStores.Supply::delivery)).map(days ->
                hours.before(inHouse, days)), inHouse, supply.flatMap(one -> packs(item, one.pack())));
    }

    private Optional<ClassSupplies.Packs> packs(ClassSupplies.LaidOut item, Quantity pack) {
        return item.all().flatMap(all -> {
            String id = item.id().replace(' ', '-');
            FigureKey count = key(id, "packs");
            FigureKey left = key(id, "left");
            Map<String, Figure> made = bench.ledger().work(packs(new Job("packs", course.place()).given("needed", all,
                    Origin.Place.CLASS), Quantity.of(0, all.unit()), pack).gives("packs", count, "packs to buy")
                    .gives("left", left, "left over"));
            return Optional.ofNullable(made.get(count.id())).map(packs -> new ClassSupplies.Packs(packs, pack, made.get(left.id())));
        });
    }

    /** What is worn and thrown away. */
    private boolean isWornOut(ClassSupplies.LaidOut item) {
        Reference reference = bench.library().reference();
        return item.kind() == ClassSupplies.Kind.WORN && Optional.ofNullable(reference.layOut().get("worn " + reference.equipment()
                .get(item.id()).kind())).filter(LayOutRow::usedUp).isPresent();
    }

    /**
     * In what each preparation is made and handed out.
     *
     * @param starts when each batch of them is begun
     */
    List<ClassSupplies.Filling> fillings(List<Preparation> preparations, List<ClassPlan.Start> starts) {
        return preparations.stream().map(one -> filling(one, starts.stream().filter(start ->
                start.solution().equals(one.solution())).map(ClassPlan.Start::batch).toList())).toList();
    }

    /** Every station has a bottle from each batch of which it draws; from all where no plan tells the stations apart. */
    private int bottles(List<ClassPlan.Batch> batches) {
        return batches.stream().mapToInt(batch -> batch.stations().isEmpty() ? course.stations() : batch.stations().size()).sum();
    }

    private ClassSupplies.Filling filling(Preparation preparation, List<ClassPlan.Batch> batches) {
        String id = preparation.solution();
        if (isMadeInTrays(bench, id, steps)) {
            return new ClassSupplies.Filling(id, ClassSupplies.MadeAt.TRAY, Optional.of("tray"), Optional.empty(),
                    1, preparation.batches(), Optional.of(preparation.batch()), Optional.empty(), 0, Optional.empty());
        }
        int bottles = isDrawn(id) ? bottles(batches) : 0;
        Optional<Quantity> inBottle = bottles == 0 ? Optional.empty() : inOneBottle(id, bottles).map(used ->
                handed(used, preparation.batch(), bottles));
        boolean shaken = bench.source().solution(id).filter(one -> one.recipe() instanceof Recipe.Saturate).isPresent();
        Optional<ClassStores.Vessel> vessel = vessel(preparation.batch(), shaken);
        if (vessel.isEmpty()) {
            return new ClassSupplies.Filling(id, ClassSupplies.MadeAt.BENCH, Optional.empty(), Optional.empty(), 1,
                    preparation.batches(), Optional.of(preparation.batch()), Optional.empty(), bottles, inBottle);
        }
        Map<String, Figure> made = bench.ledger().work(new Job("containers", course.place())
                .given("volume", asVolume(preparation.batch()), Job.CASE_FILE)
                .given("holds", vessel.get().holds(), Origin.Place.CLASS)
                .gives("count", key(id, "vessels"), "vessels").gives("each", key(id, "in-each"), "in each"));
        int count = Optional.ofNullable(made.get(key(id, "vessels").id())).map(one -> (int) one.value().value()).orElse(1);
        return new ClassSupplies.Filling(id, ClassSupplies.MadeAt.BENCH, Optional.of(vessel.get().kind()),
                Optional.of(vessel.get().holds()), count, preparation.batches(), count == 1 ? Optional.of(preparation.batch())
                        : Optional.ofNullable(made.get(key(id, "in-each").id())).map(Figure::value),
                shaken ? clear(preparation, count) : Optional.empty(), bottles, inBottle);
    }

    /** Where no bottles would be full of it, in as many as it was made in, without room to shake. */
    private Optional<ClassSupplies.Clear> clear(Preparation preparation, int made) {
        return new ClearBottles(course, bench).of(preparation).or(() -> vessel(preparation.batch(), false).map(vessel ->
                new ClassSupplies.Clear(vessel.kind(), vessel.holds(), made, Optional.empty())));
    }

    /** What a station's bottle is filled with, rounded up to what can be measured; what is to spare stays with the technician. */
    private Optional<Quantity> inOneBottle(String id, int bottles) {
        return bench.ledger().one(Uses.sum(bench.uses().of(id).stream().filter(this::isOfTheClass).map(this::withoutSpare).toList(),
                course.place()).gives("total", key(id, "at-the-stations"), "into the bottles of all stations").readable())
                .flatMap(drawn -> bench.ledger().one(new Job("batch", course.place()).given("needed", drawn)
                        .given("batches", Quantity.count(bottles), Origin.Place.CLASS)
                .gives("batch", key(id, "for-one-station"), "into the bottle of one station").readable())).map(Figure::value);
    }

    /** What is weighed is handed out in a portion that can be weighed, as far as the batch reaches. */
    private Quantity handed(Quantity used, Quantity batch, int bottles) {
        Quantity least = bench.constant("paste-portion").value().exact();
        return used.dimension() == Dimension.MASS && batch.dimension() == Dimension.MASS && used.in(Unit.GRAM) < least.in(Unit.GRAM)
                && bench.ledger().value("sum", Inputs.none().with("amounts", least, Job.USUAL).with("times", Quantity.number(bottles),
                        Origin.Place.CLASS), "total").filter(all -> all.in(Unit.GRAM) <= batch.in(Unit.GRAM)).isPresent() ? least : used;
    }

    /** Not of a trial before it. */
    private boolean isOfTheClass(Uses.Use use) {
        return use.step() && steps.stream().anyMatch(step -> step.id().equals(use.by()));
    }

    private Uses.Use withoutSpare(Uses.Use use) {
        boolean left = use.figure().key().name().equals(PartFigures.LEFT_IN_BOTTLE);
        return use.counted(left ? course.stations() : course.stations() * course.sheetsEach());
    }

    /** The smallest vessel that holds it all, with room to shake where it is shaken, else the largest. */
    private Optional<ClassStores.Vessel> vessel(Quantity batch, boolean shaken) {
        List<ClassStores.Vessel> bySize = course.stores().vessels().stream()
                .sorted(java.util.Comparator.comparingDouble(vessel -> vessel.holds().in(Unit.LITRE))).toList();
        double litres = asVolume(batch).in(Unit.LITRE);
        return bySize.stream().filter(vessel -> shaken ? vessel.holds().lowIn(Unit.LITRE) > litres
                        : vessel.holds().lowIn(Unit.LITRE) >= litres).findFirst()
                .or(() -> bySize.stream().reduce((one, larger) -> larger));
    }

    /** What is weighed is taken to be as dense as water. */
    private Quantity asVolume(Quantity batch) {
        return batch.dimension() == Dimension.VOLUME ? batch : bench.ledger().value("mass-and-volume", Inputs.none()
                .with("amount", batch, Job.CASE_FILE).with("density", bench.waterDensity(), Job.USUAL), "volume").orElseThrow();
    }

    /** Whether the stations draw it from bottles of their own. */
    private boolean isDrawn(String solution) {
        return bench.uses().of(solution).stream().anyMatch(this::isOfTheClass) && steps.stream().noneMatch(step ->
                step.part(Part.Bath.class).filter(bath -> bath.of().equals(solution)).isPresent());
    }

    /** What the fillings to spare serve, of each step whose baths may be more than are planned. */
    List<ClassSupplies.FurtherBaths> furtherBaths() {
        List<ClassSupplies.FurtherBaths> further = new ArrayList<>();
        steps.forEach(step -> step.part(Part.Bath.class).ifPresent(bath -> bath.atMost().filter(most -> most > bath.baths())
                .ifPresent(most -> {
                    int trays = bench.scale().trays(bath.sheets());
                    int spare = bench.scale().fillings(bath.baths(), trays) - bath.baths() * trays;
                    int each = (most - bath.baths()) * trays / course.stations();
                    int left = Math.max(0, spare - bath.baths() * bench.scale().spareSheets());
                    further.add(new ClassSupplies.FurtherBaths(step.id(), most, spare, Math.min(course.stations(), spare / each),
                            Math.min(course.stations(), left / each)));
                })));
        return further;
    }

    /** What is collected in all, by kind; of a stock that goes into a bath all that is made, as if no bath took any. */
    List<ClassSupplies.Waste> waste(List<Preparation> preparations, Map<String, Hazards> hazards) {
        Map<Optional<String>, List<Preparation>> byKind = new LinkedHashMap<>();
        preparations.forEach(one -> byKind.computeIfAbsent(Optional.ofNullable(hazards.get(one.solution()))
                        .map(Hazards::waste).flatMap(Hazards.Waste::group), any -> new ArrayList<>()).add(one));
        List<ClassSupplies.Waste> waste = new ArrayList<>();
        byKind.forEach((kind, all) -> waste(kind, all).ifPresent(waste::add));
        return waste;
    }

    private Optional<ClassSupplies.Waste> waste(Optional<String> kind, List<Preparation> all) {
        String name = "waste-" + kind.orElse("unknown").replace(' ', '-');
        Optional<ClassStores.Can> can = kind.map(course.stores().cans()::get);
        boolean weighed = can.isEmpty() && all.stream().allMatch(one -> one.batch().dimension() == Dimension.MASS);
        List<Figure.Given> amounts = new ArrayList<>();
        List<Quantity> times = new ArrayList<>();
        all.forEach(one -> {
            amounts.add(new Figure.Given(one.solution() + ".batch", one.solution(), List.of(weighed ? one.batch() : asVolume(one.batch())),
                    Reading.of(one.batch()), new Origin.OfFigure(FigureKey.ofSolution(one.solution(), "batch"))));
            times.add(Quantity.number(one.batches()));
            beakers(one).forEach(beaker -> {
                amounts.add(Ledger.given(beaker.figure()));
                times.add(Quantity.number(beaker.times()));
            });
        });
        Optional<Figure> volume = bench.ledger().one(new Job("sum", course.place()).each("amounts", amounts)
                .given("times", times, Origin.Place.CLASS).gives("total", key(name, "volume"), "collected at most").readable());
        return volume.map(figure -> new ClassSupplies.Waste(kind, all.stream().map(Preparation::solution).toList(), figure,
                can.flatMap(one -> bench.ledger().one(new Job("containers", course.place()).given("volume", figure)
                        .given("holds", one.holds(), Origin.Place.CLASS).given("full", bench.constant("full-can"))
                        .gives("count", key(name, "cans"), "cans"))), can));
    }

    /** What goes into the beakers of a bath that stations make in their trays and sheets are tried with, and what rinses the trays. */
    private List<Uses.Use> beakers(Preparation made) {
        return isMadeInTrays(bench, made.solution(), steps) ? bench.source().solution(made.solution())
                .map(one -> bench.uses().of(((Recipe.Adjust) one.recipe()).liquid())).orElse(List.of()).stream()
                .filter(use -> use.step() && BESIDE_BATHS.contains(use.figure().key().name())).toList() : List.of();
    }
}
