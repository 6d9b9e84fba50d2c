package org.benchleaf.derive;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.Result;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Works out everything that follows from a case: figures, times, preparations, results, hazards.
 *
 * <p>Made once for a studio; keeps nothing of a case, so that several cases may be worked out at once.
 */
public final class Deriver {

    private final Library library;
    private final Calculations calculations;
    private final WorkHours hours;
    private final VesselTolerances tolerances;

    /** Makes ready for the cases of one studio. */
    public Deriver(Library library) {
        this.library = library;
        this.calculations = new Calculations(library.formulary());
        this.hours = WorkHours.of(library.studio());
        this.tolerances = StandardVessels.of(library.formulary().table("glassware"));
    }

    /** Works out a case for the one sheet that it tells of. */
    public static Derived derive(TreatmentCase source, List<Finding> findings, Library library) {
        return new Deriver(library).derive(source, findings);
    }

    /** Works out a case for the one sheet that it tells of. */
    public Derived derive(TreatmentCase source, List<Finding> findings) {
        return derive(source, findings, 1);
    }

    /** Works out a case for several sheets like the one that it tells of. */
    public Derived derive(TreatmentCase source, List<Finding> findings, int sheets) {
        Messages messages = new Messages();
        Work work = work(source, source.steps(), Scale.sheets(sheets), messages);
        Timeline timeline = work.maker().onTheCalendar(work.maker().firstDay(), true);
        timelineFigures(work, timeline, source.steps());
        List<WorkedResult> results = results(work.bench());
        new ShelfLife(source, hours, messages).check(work.preparations(), timeline);
        surfaceAndExtract(source, messages);
        HazardAssessor.Assessment assessment = new HazardAssessor(work.bench()).assess(findings);
        Map<String, Figure> figures = work.bench().ledger().figures();
        Citations.check(source, figures.keySet(), messages);
        return new Derived(new WorkedCase(source, figures, timeline, inOrder(work, timeline), results,
                assessment.hazards(), assessment.care(), assessment.findings(), classes(source)), messages);
    }

    /** The pH of the liquids of a case by their equilibrium, as a function of their ids; see {@link org.benchleaf.model.LiquidPh}. */
    public Function<String, Optional<Quantity>> ph(TreatmentCase source) {
        Messages unheard = new Messages();
        Compositions compositions = new Compositions(new Bench(source, library, Scale.sheets(1),
                new Ledger(calculations, library.methods(), unheard), new Uses(), tolerances, unheard));
        return id -> compositions.of(id).ph();
    }

    private List<ClassPlan> classes(TreatmentCase source) {
        ClassDeriver classes = new ClassDeriver(this);
        return library.classes().stream().filter(course -> course.caseId().equals(source.id()))
                .filter(course -> Stream.concat(course.firstStep().stream(), course.lastStep().stream())
                        .allMatch(id -> source.step(id).isPresent()))
                .map(course -> classes.plan(course, source)).toList();
    }

    /**
     * What is needed before a timeline and results.
     *
     * @param made preparations, users before what they use
     */
    record Work(Bench bench, TimelineMaker maker, Preparations planner, List<Preparation> preparations) {
    }

    Work work(TreatmentCase source, List<Step> steps, Scale scale, Messages messages) {
        Ledger ledger = new Ledger(calculations, library.methods(), messages);
        Bench bench = new Bench(source, library, scale, ledger, new Uses(), tolerances, messages);
        TimelineMaker maker = new TimelineMaker(steps, hours, messages);
        steps.forEach(step -> new PartFigures(bench, step).work());
        Preparations planner = new Preparations(bench, maker.lengths());
        List<Preparation> preparations = planner.make();
        Totals.work(bench);
        return new Work(bench, maker, planner, preparations);
    }

    WorkHours hours() {
        return hours;
    }

    Library library() {
        return library;
    }

    static void timelineFigures(Work work, Timeline timeline, List<Step> steps) {
        List<Figure.Given> critical = timeline.steps().stream().filter(Timeline.TimedStep::critical)
                .map(step -> Ledger.given(step.step(), "step on the longest path", step.takes(), Job.CASE_FILE)).toList();
        List<Figure.Given> hands = timeline.steps().stream()
                .map(step -> Ledger.given(step.step(), "hands-on time", step.handsOn(), Job.CASE_FILE)).toList();
        Ledger ledger = work.bench().ledger();
        ledger.put(FigureKey.ofTimeline("total"), "from the first start to the last end, without nights and days off",
                hoursOf(timeline.total()), "critical-path", critical);
        ledger.put(FigureKey.ofTimeline("hands-on"), "time that needs a person", hoursOf(timeline.handsOn()), "sum", hands);
        int people = steps.stream().mapToInt(Step::people).max().orElse(1);
        ledger.put(FigureKey.ofTimeline("people"), "people needed at once", Quantity.count(people), "largest",
                steps.stream().map(step -> Ledger.given(step.id(), "people", Quantity.count(step.people()),
                        Job.CASE_FILE)).toList());
    }

    private static Quantity hoursOf(Quantity time) {
        return time.highIn(Unit.HOUR) >= 2 ? time.to(Unit.HOUR) : time;
    }

    static List<Preparation> inOrder(Work work, Timeline timeline) {
        Map<String, Double> starts = new HashMap<>();
        timeline.steps().forEach(step -> starts.put(step.step(), step.start().lowIn(Unit.MINUTE)));
        Optional<LocalDateTime> origin = timeline.days().stream().map(Timeline.ClockedStep::earliestStart)
                .min(java.util.Comparator.naturalOrder());
        origin.ifPresent(zero -> timeline.days().forEach(day -> starts.put(day.step(),
                (double) java.time.Duration.between(zero, day.earliestStart()).toMinutes())));
        return Preparations.inOrderOfBeginning(work.preparations(), work.planner().begins(work.preparations(), starts));
    }

    private static List<WorkedResult> results(Bench bench) {
        List<WorkedResult> worked = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        boolean both = surface(bench.source()).isPresent() && extract(bench.source()).isPresent();
        for (Result result : bench.source().results()) {
            String name = ResultFigures.name(result.measure());
            String unique = name;
            for (int number = 2; !names.add(unique); number++) {
                unique = name + "-" + number;
            }
            WorkedResult one = result.ask(new ResultFigures(bench, unique));
            worked.add(both && isPh(result) ? with(one, "surface-and-extract-not-compared") : one);
        }
        return worked;
    }

    private static WorkedResult with(WorkedResult result, String caution) {
        List<String> cautions = new ArrayList<>(result.cautions());
        cautions.add(caution);
        return new WorkedResult(result.source(), new LinkedHashMap<>(result.figures()), cautions);
    }

    private static boolean isPh(Result result) {
        return result instanceof Result.Readings readings && readings.unit() == Unit.PH;
    }

    private static Optional<Result.Readings> surface(TreatmentCase source) {
        return ph(source, "surface");
    }

    private static Optional<Result.Readings> extract(TreatmentCase source) {
        return ph(source, "extract");
    }

    private static Optional<Result.Readings> ph(TreatmentCase source, String method) {
        return source.results().stream().filter(Deriver::isPh).map(Result.Readings.class::cast)
                .filter(readings -> readings.method().toLowerCase(java.util.Locale.ROOT).contains(method)).findFirst();
    }

    private static void surfaceAndExtract(TreatmentCase source, Messages messages) {
        Optional<Result.Readings> surface = surface(source);
        Optional<Result.Readings> extract = extract(source);
        if (surface.isPresent() && extract.isPresent()) {
            messages.add(FigureMessages.SURFACE_AND_EXTRACT.at(extract.get().place(),
                    "one", surface.get().method(), "other", extract.get().method()));
        }
    }
}
