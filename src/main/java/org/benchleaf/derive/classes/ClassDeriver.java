package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Scale;
import org.benchleaf.derive.hazard.HazardAssessor;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.derive.preparation.Groundwork;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.derive.time.TimelineMaker;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Step;
import org.benchleaf.model.TestedContact;
import org.benchleaf.model.TreatmentCase;

/** Works out amounts and start times for a class that works through a case. */
public final class ClassDeriver {

    private final Groundwork.Maker groundwork;

    public ClassDeriver(Groundwork.Maker groundwork) {
        this.groundwork = groundwork;
    }

    /**
     * The plan of a class.
     *
     * @param course the class
     * @param source the case that it names
     * @param assessment the hazards and the care of the case
     * @param ofCase the figures of the case, for one sheet
     * @param tested what the colours of the case were tested with, and for how long
     * @param messages for what stands in the way of a plan
     * @throws IllegalArgumentException if the case has no step of the name with which the class begins
     */
    public ClassPlan plan(CourseClass course, TreatmentCase source, HazardAssessor.Assessment assessment,
            Map<String, Figure> ofCase, List<TestedContact> tested, Messages messages) {
        Optional<ClassSchedule> schedule = schedule(course, source, assessment.care(), ofCase, messages);
        ClassPlan plan = plan(course, source, assessment, ofCase, schedule, schedule.map(ScheduleReading::new)
                .map(reading -> Outlasting.of(tested, reading)).orElse(List.of()), messages);
        ClassPlan stated = plan.stating(IssueMaker.of(plan, assessment.care()));
        IssueMaker.check(stated, messages);
        return stated;
    }

    /**
     * The same plan in other words: what the program says of it in those of the library, what its class and its case say in theirs.
     *
     * @param plan in the words of the case
     * @param source the case in these words
     * @param assessment hazards and care of the case, as the library words them
     * @param told the case in the other words
     * @param course the class in the other words
     */
    public ClassPlan told(ClassPlan plan, TreatmentCase source, HazardAssessor.Assessment assessment, Map<String, Figure> ofCase,
            TreatmentCase told, CourseClass course) {
        return plan(plan.source(), source, assessment, ofCase, plan.schedule(), plan.outlasting(), new Messages())
                .stating(plan.papers()).in(told, course);
    }

    private ClassPlan plan(CourseClass course, TreatmentCase source, HazardAssessor.Assessment assessment, Map<String, Figure> ofCase,
            Optional<ClassSchedule> schedule, List<Outlasting> outlasting, Messages messages) {
        List<Step> steps = course.steps(source);
        Scale scale = new Scale(course.stations(), course.sheetsEach(), Optional.of(course.stores().spare()));
        // The case itself has already been told of; here only what concerns the class would be news.
        Bench bench = groundwork.used(source, steps, scale, new Messages());
        TimelineMaker maker = groundwork.timeline(bench, steps);
        Timeline timeline = maker.onTheCalendar(Optional.of(course.starts()), false);
        WorkHours hours = groundwork.hours().without(course.stores().closed());
        PracticeSheets sheets = new PracticeSheets(course, bench, hours, outlasting);
        new RinsingWater(course, bench).use(steps);
        int filling = StationCut.minutes(bench.constant("filling-a-portion").value());
        ClassDraws draws = new ClassDraws(course.stations(), filling, timeline, schedule, sheets.draws());
        ClassBatches batches = new ClassBatches(course, bench, draws, hours, messages);
        Groundwork work = groundwork.make(bench, maker, batches);
        work.tell(timeline, steps);
        Map<String, Preparation> used = used(work);
        List<ClassPlan.Start> ordered = batches.starts().stream().filter(start -> used.containsKey(start.solution())).toList();
        List<Preparation> preparations = ordered.stream().map(start -> used.get(start.solution())).distinct().toList();
        ClassProvider provider = new ClassProvider(course, work.bench(), steps, hours, sheets.duties());
        List<ClassSupplies.Order> orders = provider.orders(ordered);
        List<ClassSupplies.Filling> fillings = provider.fillings(preparations, ordered);
        List<ClassSupplies.Waste> waste = provider.waste(preparations, assessment.hazards());
        MakingThings making = new MakingThings(work.bench(), steps, preparations, fillings, waste, assessment.hazards());
        List<ClassSupplies.LaidOut> layOut = new LayingOut(course, work.bench(), steps).list(assessment.care(), schedule, making);
        List<ClassSupplies.LaidOut> practice = practice(course, work, sheets).list(layOut, assessment.care());
        orders.addAll(provider.cut(layOut, ordered));
        provider.areaOfBlotters(layOut);
        ClassSupplies supplies = new ClassSupplies(orders, fillings, layOut, practice,
                provider.beside(layOut, practice, ordered, assessment.hazards(), calibrations(work, sheets, schedule)), waste,
                provider.furtherBaths(), StockForTrays.of(course, work.bench(), preparations), provider.benchPlaces(messages),
                schedule.map(planned -> new ClassLoads(course, work.bench().ledger(), messages).of(new ScheduleReading(planned)))
                        .orElse(List.of()),
                schedule.map(planned -> new ClassAir(course, work.bench(), ofCase, messages).of(steps, new ScheduleReading(planned)))
                        .orElse(List.of()));
        course.papers().issue().ifPresent(issue -> new IssueDay(course, issue, bench.library().reference(), messages).check(ordered,
                supplies));
        return new ClassPlan(course, source.title(), scale.sheetCount(), steps, work.bench().ledger().figures(), timeline,
                preparations, ordered, duties(sheets, ordered,
                        free -> new HandingOut(work.bench(), steps, draws).of(fillings, ordered, free),
                        free -> schedule.map(planned -> new StationDuties(course, work.bench(), hours, layOut).around(planned, free))
                                .orElse(List.of()), new FreeTime(hours, course.day().breaks())), supplies, schedule,
                IssuedPapers.NONE, outlasting);
    }

    private static PracticeThings practice(CourseClass course, Groundwork work, PracticeSheets sheets) {
        return new PracticeThings(work.bench(), sheets.duties(), course.papers().like().isPresent());
    }

    /** How often a meter is calibrated, for trials and on the days of the class. */
    private static int calibrations(Groundwork work, PracticeSheets sheets, Optional<ClassSchedule> schedule) {
        return (int) sheets.duties().stream().filter(duty -> duty.kind() == Duty.Kind.METER_CALIBRATED).count()
                + schedule.map(planned -> Calibration.of(new ScheduleReading(planned),
                        work.bench().constant("calibrating-a-meter").value()).size()).orElse(0);
    }

    private static Map<String, Preparation> used(Groundwork work) {
        Map<String, Preparation> used = new LinkedHashMap<>();
        work.preparations().stream().filter(one -> !one.usedIn().isEmpty()).forEach(one -> used.put(one.solution(), one));
        return used;
    }

    /** What the technician does besides preparing, in the order to begin; sheets may be made by others. */
    private static List<Duty> duties(PracticeSheets sheets, List<ClassPlan.Start> starts, Function<FreeTime, List<Duty>> handingOut,
            Function<FreeTime, List<Duty>> around, FreeTime free) {
        List<Duty> duties = new ArrayList<>(sheets.duties());
        duties.forEach(duty -> duty.stretches().forEach(free::take));
        starts.stream().filter(start -> !start.inTrays()).forEach(start -> free.take(new Duty.Stretch(start.begin(),
                start.boundUntil())));
        duties.addAll(handingOut.apply(free));
        duties.addAll(around.apply(free));
        duties.sort(Comparator.comparing(Duty::begin));
        return duties;
    }

    private Optional<ClassSchedule> schedule(CourseClass course, TreatmentCase source, Map<String, StepCare> care,
            Map<String, Figure> ofCase, Messages messages) {
        if (!course.isPlanned()) {
            return Optional.empty();
        }
        ClassScheduler scheduler = new ClassScheduler(groundwork.hours(), groundwork.library(), course, source, care, ofCase);
        Optional<ClassSchedule> schedule = scheduler.schedule();
        messages.addAll(scheduler.messages());
        return schedule;
    }
}
