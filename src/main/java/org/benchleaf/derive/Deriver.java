package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.classes.ClassDeriver;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ClassScheduler;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.ResultFigures;
import org.benchleaf.derive.figure.Scale;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.derive.hazard.Compositions;
import org.benchleaf.derive.hazard.HazardAssessor;
import org.benchleaf.derive.preparation.Groundwork;
import org.benchleaf.derive.time.ShelfLife;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.PhKind;
import org.benchleaf.model.Result;
import org.benchleaf.model.TestedContact;
import org.benchleaf.model.Translation;
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
    private final Groundwork.Maker groundwork;
    private final TestedContact.Finder tested;

    /** Makes ready for the cases of one studio; plans of classes are not held against what was tested. */
    public Deriver(Library library) {
        this(library, (source, any, ph) -> List.of());
    }

    /**
     * Makes ready for the cases of one studio.
     *
     * @param tested finds what was tested of the baths of a case, against which plans of classes are held
     */
    public Deriver(Library library, TestedContact.Finder tested) {
        this.library = library;
        this.tested = tested;
        this.groundwork = new Groundwork.Maker(library);
    }

    /** Works out a case for the one sheet that it tells of. */
    public Derived derive(TreatmentCase source, List<Finding> findings) {
        return derive(source, findings, 1);
    }

    /** Works out a case for several sheets like the one that it tells of. */
    public Derived derive(TreatmentCase source, List<Finding> findings, int sheets) {
        Messages messages = new Messages();
        Groundwork work = groundwork.make(source, source.steps(), Scale.sheets(sheets), messages);
        Timeline timeline = work.maker().onTheCalendar(work.maker().firstDay(), true);
        work.tell(timeline, source.steps());
        List<WorkedResult> results = results(work.bench(), source.results());
        new ShelfLife(source, groundwork.hours(), messages).check(work.preparations(), timeline);
        surfaceAndExtract(source, messages);
        HazardAssessor.Assessment assessment = new HazardAssessor(work.bench()).assess(findings);
        Map<String, Figure> figures = work.bench().ledger().figures();
        Citations.check(source, citable(figures, results), messages);
        return new Derived(new WorkedCase(source, figures, timeline, work.maker().daysOnRecord(), work.inOrder(timeline), results,
                assessment.hazards(), assessment.care(), assessment.findings(), classes(source, assessment, figures, messages),
                List.copyOf(assessment.substances())), messages);
    }

    /** What a story can cite: figures, and what a report states in words. */
    private static Set<String> citable(Map<String, Figure> figures, List<WorkedResult> results) {
        Set<String> citable = new LinkedHashSet<>(figures.keySet());
        results.forEach(result -> citable.addAll(result.asStated().keySet()));
        return citable;
    }

    /**
     * A worked case in the words of one of its translations, what the program itself says of it in those of this library
     * ({@link LibraryTexts#in}); every number stays.
     *
     * @param worked the case, worked out for the same studio
     */
    public WorkedCase told(WorkedCase worked, Translation translation) {
        // From the case itself, since cautions are found by words of its steps.
        Groundwork work = groundwork.make(worked.source(), worked.source().steps(), Scale.sheets(1), new Messages());
        work.tell(worked.timeline(), worked.source().steps());
        WorkedCase told = worked.in(translation);
        List<WorkedResult> results = results(work.bench(), told.source().results());
        HazardAssessor.Assessment assessment = new HazardAssessor(work.bench()).assess(List.of());
        Map<String, Figure> figures = work.bench().ledger().figures();
        ClassDeriver classes = new ClassDeriver(groundwork);
        return told.saying(figures, work.inOrder(worked.timeline()), results, assessment.hazards(), assessment.care(),
                worked.classes().stream().map(plan -> classes.told(plan, worked.source(), assessment, figures, told.source(),
                        LibraryTexts.in(translation.phrases(), plan.source()))).toList());
    }

    /** The pH of the liquids of a case by their equilibrium, as a function of their ids; see {@link org.benchleaf.model.LiquidPh}. */
    public Function<String, Optional<Quantity>> ph(TreatmentCase source) {
        Compositions compositions = new Compositions(groundwork.bench(source, Scale.sheets(1), new Messages()));
        return id -> compositions.of(id).ph();
    }

    private List<ClassPlan> classes(TreatmentCase source, HazardAssessor.Assessment assessment,
            Map<String, Figure> figures, Messages messages) {
        ClassDeriver classes = new ClassDeriver(groundwork);
        return library.classes().stream().filter(course -> course.caseId().equals(source.id()))
                .filter(course -> Stream.concat(course.firstStep().stream(), course.lastStep().stream())
                        .allMatch(id -> source.step(id).isPresent()))
                .map(course -> classes.plan(course, source, assessment, figures,
                        tested.of(source, library, this::ph), messages)).toList();
    }

    /**
     * Plans the stations of a class.
     *
     * @throws IllegalArgumentException if the case has no step of a name with which the class begins or ends
     */
    public ClassScheduler scheduler(CourseClass course, TreatmentCase source) {
        Groundwork work = groundwork.make(source, source.steps(), Scale.sheets(1), new Messages());
        return new ClassScheduler(groundwork.hours(), groundwork.library(), course, source,
                new HazardAssessor(work.bench()).assess(List.of()).care(), work.bench().ledger().figures());
    }

    /**
     * The results worked out, in the words of those. Figures rest on the words of the case, which tell the instrument; their names
     * tell the places of colours as those do.
     */
    private static List<WorkedResult> results(Bench bench, List<Result> told) {
        List<WorkedResult> worked = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        boolean both = surface(bench.source()).isPresent() && extract(bench.source()).isPresent();
        for (int at = 0; at < told.size(); at++) {
            Result result = bench.source().results().get(at);
            String name = FigureKey.named(result.measure().word());
            String unique = name;
            for (int number = 2; !names.add(unique); number++) {
                unique = name + "-" + number;
            }
            WorkedResult one = (told.get(at) instanceof Result.Colour ? told.get(at) : result).ask(new ResultFigures(bench, unique));
            WorkedResult there = new WorkedResult(told.get(at), unique, one.figures(), one.cautions());
            worked.add(both && isPh(result) ? with(there, "surface-and-extract-not-compared") : there);
        }
        return worked;
    }

    private static WorkedResult with(WorkedResult result, String caution) {
        List<String> cautions = new ArrayList<>(result.cautions());
        cautions.add(caution);
        return new WorkedResult(result.source(), result.name(), new LinkedHashMap<>(result.figures()), cautions);
    }

    private static boolean isPh(Result result) {
        return result instanceof Result.Readings readings && readings.unit() == Unit.PH
                || result instanceof Result.Stated stated && stated.unit() == Unit.PH;
    }

    private static Optional<Result> surface(TreatmentCase source) {
        return ph(source, kind -> kind == PhKind.SURFACE);
    }

    private static Optional<Result> extract(TreatmentCase source) {
        return ph(source, PhKind::isExtract);
    }

    private static Optional<Result> ph(TreatmentCase source, Predicate<PhKind> kind) {
        return source.results().stream().filter(Deriver::isPh)
                .filter(result -> conditions(result).ph().stream().anyMatch(kind)).findFirst();
    }

    private static MeasuringConditions conditions(Result ph) {
        return ph instanceof Result.Readings readings ? readings.conditions() : ((Result.Stated) ph).conditions();
    }

    private static String method(Result ph) {
        return ph instanceof Result.Readings readings ? readings.method() : ((Result.Stated) ph).method();
    }

    private static void surfaceAndExtract(TreatmentCase source, Messages messages) {
        Optional<Result> surface = surface(source);
        Optional<Result> extract = extract(source);
        if (surface.isPresent() && extract.isPresent()) {
            messages.add(FigureMessages.SURFACE_AND_EXTRACT.at(extract.get().place(),
                    "one", method(surface.get()), "other", method(extract.get())));
        }
    }
}
