package org.benchleaf.derive.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.classes.Duty.Stretch;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.time.StepTime;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Constant;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Makes the practice sheets of a class ready by the morning of the working day before it, which is left for liquids and laying out: step by
 * step and sheet by sheet, worked backwards by one pair of hands. What a trial takes is there before the trial begins.
 */
final class PracticeSheets {

    /** What one use is called, as a figure and in words. */
    private static final Map.Entry<String, String> FOR_A_TRIAL = Map.entry(ClassProvider.FOR_A_TRIAL, "liquid for one trial");
    private static final Map.Entry<String, String> FOR_A_SHEET = Map.entry("for-a-sheet", "wax for one sheet");
    private static final Map.Entry<String, String> FOR_THIN_PLACES = Map.entry("for-thin-places", "wax for thin places of one sheet");
    private static final Quantity NO_WAIT = Quantity.of(0, Unit.MINUTE);

    private final CourseClass course;
    private final Bench bench;
    private final WorkHours hours;
    private final List<Outlasting> outlasting;
    private final FreeTime free;
    private final List<Duty> duties = new ArrayList<>();
    private final Map<String, ClassDraws.Draw> draws = new LinkedHashMap<>();

    /**
     * Plans the making of the sheets and puts what their trials use with what the steps of the class use.
     *
     * @param bench holds what the steps use
     * @param hours without the days on which the class is closed
     * @param outlasting where a bath of the class touches a colour for longer than was tested
     */
    PracticeSheets(CourseClass course, Bench bench, WorkHours hours, List<Outlasting> outlasting) {
        this.course = course;
        this.bench = bench;
        this.hours = hours;
        this.outlasting = List.copyOf(outlasting);
        this.free = new FreeTime(hours, course.day().breaks());
        course.papers().making().filter(making -> making.isWork() && !making.bought()).ifPresent(this::plan);
    }

    /** What is done to the sheets, in the order to begin. */
    List<Duty> duties() {
        return duties;
    }

    /** When each step draws what it tries, by its id. */
    Map<String, ClassDraws.Draw> draws() {
        return draws;
    }

    private int sheets() {
        return course.stations() * course.sheetsEach() + course.stores().spare().sheets();
    }

    private void plan(SheetMaking making) {
        LocalDateTime needed = hours.before(course.starts().toLocalDate(), 1).atTime(hours.opens());
        if (making.how().isPresent() && making.takesEach().isPresent()) {
            needed = work(new Work(Duty.Kind.SHEETS_MADE, Optional.empty(), making.takesEach().get(), NO_WAIT, Map.of()), making, needed);
        }
        List<Step> steps = new ArrayList<>(bench.source().steps().stream().filter(step -> making.steps().contains(step.id())).toList());
        Collections.reverse(steps);
        for (Step step : steps) {
            StepTime time = StepTime.of(step, Optional.empty(), hours, new Messages());
            int hands = (int) Math.ceil(time.handsOn().high());
            int takes = (int) Math.ceil(time.takes().high());
            SheetTrial trial = SheetTrial.of(step, bench, making.steps(), outlasting);
            Map<String, Optional<Quantity>> with = new LinkedHashMap<>();
            UsedThings.of(step).forEach(id -> with.put(id, Optional.empty()));
            Work work = new Work(Duty.Kind.SHEETS_GO_THROUGH, Optional.of(step.id()), Quantity.of(hands, Unit.MINUTE),
                    Quantity.of(trial.liquids().isEmpty() ? takes - hands : trial.lasts(), Unit.MINUTE), with);
            with.putAll(tried(step, trial, trial.rounds(sheets(), trial.touch(hands)).size()));
            needed = trial.liquids().isEmpty() ? work(work, making, needed) : tried(work, trial, making, needed);
            liquids(step, needed);
            step.part(Part.Fixing.class).filter(StationCut::isVolatileWax).ifPresent(fixing -> {
                used(step, fixing.with(), "wax-for-a-patch", sheets(), FOR_A_SHEET);
                used(step, fixing.with(), "wax-for-thin-places", sheets(), FOR_THIN_PLACES);
            });
        }
        Collections.reverse(duties);
    }

    /**
     * Round by round, the last first. A bath that stations make in their trays is tried out of a beaker, made before the first sheet of a
     * round by the calibrated meter and fresh until the last one's drop; when the first round, or what it takes, is begun.
     */
    private LocalDateTime tried(Work work, SheetTrial trial, SheetMaking making, LocalDateTime needed) {
        Quantity beaker = bench.constant("making-a-beaker-for-a-trial").value();
        Quantity calibrating = bench.constant("calibrating-a-meter").value();
        int before = trial.bath().isPresent() ? StationCut.minutes(beaker) : 0;
        int touch = trial.touch(StationCut.minutes(work.hands()));
        List<Integer> rounds = trial.rounds(sheets(), touch);
        List<Stretch> beakers = new ArrayList<>();
        List<Stretch> sheets = new ArrayList<>();
        List<List<LocalDateTime>> touches = new ArrayList<>();
        for (int round = rounds.size() - 1; round >= 0; round--) {
            int lasts = rounds.get(round) * touch;
            List<FreeTime.Piece> pieces = trial.touches().stream().map(after -> new FreeTime.Piece(after == 0 ? 0 : before + after,
                    after == 0 ? before + lasts : lasts)).toList();
            List<Stretch> found = free.latest(needed, pieces, before == 0 ? 0 : StationCut.minutes(calibrating));
            LocalDateTime made = found.get(0).from().plusMinutes(before);
            beakers.add(new Stretch(found.get(0).from(), made));
            sheets.add(new Stretch(made, found.get(0).to()));
            sheets.addAll(found.subList(1, found.size()));
            touches.addAll(0, IntStream.range(0, rounds.get(round)).mapToObj(sheet -> trial.touches().stream().map(after ->
                    made.plusMinutes(after + (long) sheet * touch)).toList()).toList());
        }
        Collections.sort(beakers, Comparator.comparing(Stretch::from));
        duties.add(new Duty(work.kind(), work.step(), making.by(), joined(sheets), work.hands(), sheets(), work.waits(), needed,
                work.with(), touches));
        if (trial.bath().isEmpty()) {
            return beakers.get(0).from();
        }
        duties.add(new Duty(Duty.Kind.BATH_FOR_A_TRIAL, work.step(), making.by(), beakers, beaker, beakers.size(), NO_WAIT,
                touches.get(0).get(0), Map.of(trial.bath().orElseThrow(), work.with().get(trial.bath().orElseThrow()))));
        return calibrated(beakers, work.step(), making, calibrating);
    }

    /** Stretches in order, those that follow on each other as one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> joined = new ArrayList<>();
        stretches.stream().sorted(Comparator.comparing(Stretch::from)).forEach(one -> {
            boolean follows = !joined.isEmpty() && joined.get(joined.size() - 1).to().equals(one.from());
            joined.add(follows ? new Stretch(joined.remove(joined.size() - 1).from(), one.to()) : one);
        });
        return joined;
    }

    /** The meter is calibrated on each day on which a beaker is made; when first. */
    private LocalDateTime calibrated(List<Stretch> beakers, Optional<String> step, SheetMaking making, Quantity calibrating) {
        Map<LocalDate, LocalDateTime> first = new TreeMap<>(Collections.reverseOrder());
        beakers.forEach(one -> first.putIfAbsent(one.from().toLocalDate(), one.from()));
        LocalDateTime earliest = beakers.get(0).from();
        for (LocalDateTime used : first.values()) {
            Stretch found = free.latest(used, StationCut.minutes(calibrating), 0);
            duties.add(new Duty(Duty.Kind.METER_CALIBRATED, step, making.by(), List.of(found), calibrating, 1, NO_WAIT, used, Map.of()));
            earliest = found.from();
        }
        return earliest;
    }

    /** A kind of work on each sheet. */
    private record Work(Duty.Kind kind, Optional<String> step, Quantity hands, Quantity waits, Map<String, Optional<Quantity>> with) {
    }

    /** Plans it for all sheets, the last first; when the first is begun. */
    private LocalDateTime work(Work work, SheetMaking making, LocalDateTime needed) {
        List<Stretch> stretches = new ArrayList<>();
        for (int sheet = 0; sheet < sheets(); sheet++) {
            Stretch found = free.latest(needed, StationCut.minutes(work.hands()), StationCut.minutes(work.waits()));
            boolean joined = !stretches.isEmpty() && stretches.get(0).from().equals(found.to());
            stretches.add(0, joined ? new Stretch(found.from(), stretches.remove(0).to()) : found);
        }
        duties.add(new Duty(work.kind(), work.step(), making.by(), stretches, work.hands(), sheets(), work.waits(), needed, work.with()));
        return stretches.get(0).from();
    }

    /** What the trials take of each liquid, which is put with what the class uses; of a bath, what one beaker holds. */
    private Map<String, Optional<Quantity>> tried(Step step, SheetTrial trial, int beakers) {
        Map<String, Optional<Quantity>> tried = new LinkedHashMap<>();
        trial.liquids().forEach(id -> tried.put(id, Optional.of(trial.bath().filter(id::equals).isPresent()
                ? portion(step, id, beakers) : drops(step, id, sheets()))));
        return tried;
    }

    private Quantity drops(Step step, String id, int count) {
        return bench.ledger().one(new Job("sum", course.place()).given("amounts", used(step, id, "drop-for-a-trial", count))
                .given("times", Quantity.number(count), Origin.Place.CLASS)
                .gives("total", FigureKey.ofClass(course.id(), id, "for-the-trials"), "liquid for all trials")).orElseThrow().value();
    }

    /** Of a bath that each station makes in its tray, a beaker is made as its recipe tells. */
    private Quantity portion(Step step, String id, int beakers) {
        Recipe.Adjust adjust = (Recipe.Adjust) bench.source().solution(id).map(Solution::recipe).orElseThrow();
        drops(step, adjust.with(), beakers);
        return used(step, adjust.liquid(), "bath-for-a-trial", beakers).value();
    }

    /** What one trial uses, so often. */
    private Figure used(Step step, String id, String constant, int times) {
        return used(step, id, constant, times, FOR_A_TRIAL);
    }

    private Figure used(Step step, String id, String constant, int times, Map.Entry<String, String> name) {
        Constant usual = bench.constant(constant);
        Figure figure = bench.ledger().put(FigureKey.ofClass(course.id(), id, name.getKey()), name.getValue(), usual.value(),
                "as-given", List.of(Ledger.given("amount", "usual amount", usual.value(), Job.USUAL)));
        bench.uses().add(new Uses.Use(id, step.id(), true, figure, times, 1));
        return figure;
    }

    /** Before a trial its liquids are made by the same hands, and what settles for the night is drawn off when it has. */
    private void liquids(Step step, LocalDateTime begins) {
        draws.put(step.id(), new ClassDraws.Draw(step.id(), ClassDraws.ALL, begins, begins));
        List<Solution> tried = bench.source().solutions().stream().filter(solution ->
                bench.uses().of(solution.id()).stream().anyMatch(use -> use.by().equals(step.id()))).toList();
        for (Solution solution : tried) {
            Quantity hands = solution.handsOn().orElse(bench.constant("making-time").value());
            double ready = solution.readyIn().orElse(hands).highIn(Unit.MINUTE);
            LocalDateTime begun = FreeTime.latestBegin(hours, course.day().breaks(), begins, ready, hands.highIn(Unit.MINUTE));
            free.take(new Stretch(begun, begun.plusMinutes(StationCut.minutes(hands))));
        }
        tried.stream().filter(solution -> solution.recipe() instanceof Recipe.Saturate).forEach(any -> free.latest(begins,
                StationCut.minutes(bench.constant("drawing-off-the-clear").value()), 0));
    }
}
