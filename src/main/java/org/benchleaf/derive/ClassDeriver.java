package org.benchleaf.derive;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out amounts and start times for a class that works through a case. */
final class ClassDeriver {

    private final Groundwork.Maker groundwork;

    ClassDeriver(Groundwork.Maker groundwork) {
        this.groundwork = groundwork;
    }

    /**
     * The plan of a class.
     *
     * @param course the class
     * @param source the case that it names
     * @param assessment the hazards and the care of the case
     * @param ofCase the figures of the case, for one sheet
     * @param messages for what stands in the way of a plan
     * @throws IllegalArgumentException if the case has no step of the name with which the class begins
     */
    ClassPlan plan(CourseClass course, TreatmentCase source, HazardAssessor.Assessment assessment,
            Map<String, Figure> ofCase, Messages messages) {
        List<Step> steps = course.steps(source);
        Scale scale = new Scale(course.stations(), course.sheetsEach(), Optional.of(course.stores().spare()));
        // The case itself has already been told of; here only what concerns the class would be news.
        Groundwork work = groundwork.make(source, steps, scale, new Messages());
        Timeline timeline = work.maker().onTheCalendar(Optional.of(course.starts()), false);
        work.tell(timeline, steps);
        Optional<ClassSchedule> schedule = schedule(course, source, messages);
        List<Preparation> used = work.preparations().stream().filter(one -> !one.usedIn().isEmpty()).toList();
        WorkHours hours = groundwork.hours().without(course.stores().closed());
        Map<String, ClassPlan.Start> starts = starts(work, used, needed(timeline, schedule), hours);
        List<ClassPlan.Start> ordered = starts.values().stream()
                .sorted(Comparator.comparing(ClassPlan.Start::begin)).toList();
        List<Preparation> preparations = ordered.stream().flatMap(start -> used.stream()
                .filter(one -> one.solution().equals(start.solution()))).toList();
        Optional<ScheduleReading> reading = schedule.map(ScheduleReading::new);
        ClassProvider provider = new ClassProvider(course, work.bench(), steps, hours);
        ClassSupplies supplies = new ClassSupplies(provider.orders(ordered), provider.fillings(preparations),
                new LayingOut(course, work.bench(), steps).list(assessment.care(), schedule),
                provider.waste(preparations, assessment.hazards()), provider.benchPlaces(messages), reading.map(planned ->
                        new ClassLoads(course, work.bench().ledger(), messages).of(planned)).orElse(List.of()), reading.map(planned ->
                        new ClassAir(course, work.bench(), ofCase, messages).of(steps, planned)).orElse(List.of()));
        course.papers().issue().ifPresent(issue -> new IssueDay(course, issue, messages).check(ordered, supplies.orders()));
        ClassPlan plan = new ClassPlan(course, source.title(), scale.sheetCount(), steps, work.bench().ledger().figures(), timeline,
                preparations, ordered, supplies, schedule, IssuedPapers.NONE);
        ClassPlan stated = plan.stating(IssueMaker.of(plan, assessment.care()));
        IssueMaker.check(stated, messages);
        return stated;
    }

    /** When each step is first begun: by the plan, else as early as its steps allow. */
    private static Map<String, LocalDateTime> needed(Timeline timeline, Optional<ClassSchedule> schedule) {
        Map<String, LocalDateTime> needed = new HashMap<>(Calendar.starts(timeline));
        schedule.map(ScheduleReading::new).ifPresent(reading -> List.copyOf(needed.keySet()).forEach(step ->
                reading.first(step).ifPresent(first -> needed.put(step, first))));
        return needed;
    }

    private Optional<ClassSchedule> schedule(CourseClass course, TreatmentCase source, Messages messages) {
        if (!course.isPlanned()) {
            return Optional.empty();
        }
        ClassScheduler scheduler = new ClassScheduler(groundwork.hours(), groundwork.formulary(), course, source);
        Optional<ClassSchedule> schedule = scheduler.schedule();
        messages.addAll(scheduler.messages());
        return schedule;
    }

    /** Worked backwards: what a solution is needed for is known before the solution itself. */
    private static Map<String, ClassPlan.Start> starts(Groundwork work, List<Preparation> used,
            Map<String, LocalDateTime> needed, WorkHours hours) {
        Map<String, ClassPlan.Start> starts = new java.util.LinkedHashMap<>();
        for (Preparation one : used) {
            boolean inTrays = ClassProvider.isMadeInTrays(work.bench(), one.solution(), work.bench().source().steps());
            Stream<LocalDateTime> uses = work.bench().uses().of(one.solution()).stream()
                    .flatMap(use -> Optional.ofNullable(needed.get(use.by())).stream());
            uses.min(Comparator.naturalOrder()).ifPresent(readyFor -> {
                Quantity hands = one.handsOn().orElse(work.bench().constant("making-time").value());
                double ready = one.beginBefore().map(time -> time.highIn(Unit.MINUTE)).orElse(hands.highIn(Unit.MINUTE));
                // What a station makes in its tray is made when the plan says so.
                LocalDateTime begin = inTrays ? readyFor : hours.latestStart(WorkHours.minus(readyFor, ready),
                        hands.highIn(Unit.MINUTE));
                needed.put(one.solution(), begin);
                starts.put(one.solution(), new ClassPlan.Start(one.solution(), begin, hands, readyFor, inTrays));
            });
        }
        return starts;
    }
}
