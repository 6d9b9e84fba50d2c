package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Messages;
import org.benchleaf.message.PlanMessages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Library;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.plan.Classroom;
import org.benchleaf.plan.Delay;
import org.benchleaf.plan.Floor;
import org.benchleaf.plan.KeptPlans;
import org.benchleaf.plan.SameCard;
import org.benchleaf.plan.Timetable;
import org.benchleaf.plan.TimetableCheck;

/** Plans the stations of a class: from its file and its case to a timetable, or to what stands in the way of one. */
public final class ClassScheduler {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final CourseClass course;
    private final WorkHours hours;
    private final Messages messages = new Messages();
    private final StationCut cut;
    private final int calibrating;
    private final int briefing;

    /**
     * A class and the hours in which it is planned.
     *
     * @param care what each step of the case needs for the protection of the person, by its id
     * @param ofCase the figures of the case, for one sheet
     * @throws IllegalArgumentException if the case has no step of a name with which the class begins or ends
     */
    public ClassScheduler(WorkHours hours, Library library, CourseClass course, TreatmentCase source, Map<String, StepCare> care,
            Map<String, Figure> ofCase) {
        this.course = course;
        this.hours = hours.without(course.stores().closed());
        List<Step> steps = course.steps(source);
        this.cut = new StationCut(source, steps, course, this.hours, library,
                PlanCare.of(course, steps, care, library.reference()), new BathAdditions(source, ofCase,
                        StationCut.minutes(library.formulary().constant("one-addition").value())));
        this.briefing = cut.minutesOf(ClassWork.BRIEFING);
        this.calibrating = StationCut.minutes(library.formulary().constant("calibrating-a-meter").value());
    }

    /** What there is to say about the plan, after {@link #schedule}. */
    public Messages messages() {
        return messages;
    }

    /** The schedule; empty if something stands in its way, which the messages then tell. */
    public Optional<ClassSchedule> schedule() {
        asked();
        if (messages.hasErrors()) {
            return Optional.empty();
        }
        Classroom classroom = new ClassroomMaker(course, cut, hours, calibrating, briefing).classroom();
        new PlanObstacles(course, cut, messages).tell(classroom);
        if (messages.hasErrors()) {
            return Optional.empty();
        }
        Floor floor = Floor.of(classroom);
        tooShort(classroom, floor);
        return messages.hasErrors() ? Optional.empty() : planned(classroom, floor);
    }

    private void asked() {
        if (course.day().endsBy().filter(by -> !by.isAfter(course.starts())).isPresent() || cut.parts().isEmpty()) {
            messages.add(PlanMessages.ENDS_BEFORE_IT_BEGINS.at(course.place()));
        }
        if (!hours.isOpen(course.starts())) {
            messages.add(PlanMessages.BEGINS_WHEN_CLOSED.at(course.place(), "begins", dayAndTime(course.starts()),
                    "hours", hours.opens() + " to " + hours.closes()));
        }
        cut.untimed().forEach(step -> messages.add(PlanMessages.STEP_WITHOUT_MINUTES.at(course.place(),
                "step", step.id())));
        notCounted();
        course.day().mostTraineesEach().ifPresent(this::heads);
    }

    private static String dayAndTime(LocalDateTime time) {
        return time.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + MOMENT.format(time);
    }

    private void notCounted() {
        Map<String, String> firstUse = new LinkedHashMap<>();
        cut.takings().forEach(taking -> firstUse.putIfAbsent(taking.thing(), taking.step()));
        Set<String> counted = new LinkedHashSet<>(course.day().shared().keySet());
        counted.addAll(List.of(StationCut.HANDS, StationCut.SECOND_HANDS));
        counted.addAll(cut.turns());
        course.day().supervisors().ifPresent(some -> counted.add(StationCut.SUPERVISOR));
        firstUse.forEach((thing, step) -> {
            if (!counted.contains(thing)) {
                messages.add(PlanMessages.NOT_COUNTED.at(course.place(), "thing", thing, "step", step,
                        "remedy", thing.equals(StationCut.SUPERVISOR) ? "'supervisors: 1' under 'people:'"
                                : "'- {thing: " + thing + ", count: 1}' under 'shared:', with the right number"));
            }
        });
    }

    private void heads(int most) {
        int trainees = course.stations() * course.day().traineesEach();
        int supervisors = course.day().supervisors().orElse(0);
        if (trainees > most * supervisors) {
            messages.add(PlanMessages.TOO_MANY_TRAINEES.at(course.place(), "trainees", trainees,
                    "supervisors", PlanObstacles.supervisors(supervisors), "most", most));
        }
    }

    private void tooShort(Classroom classroom, Floor floor) {
        course.day().endsBy().ifPresent(by -> {
            if (course.starts().plusMinutes(floor.minutes()).isAfter(by)) {
                new PlanObstacles(course, cut, messages).dayTooShort(classroom, floor, by);
            }
        });
    }

    private Optional<ClassSchedule> planned(Classroom classroom, Floor floor) {
        boolean sameCard = course.day().rhythm() == ClassDay.Rhythm.SAME_CARD;
        Optional<Timetable> found = sameCard ? SameCard.of(classroom).map(SameCard::timetable)
                : KeptPlans.plan(classroom, floor);
        if (found.isEmpty()) {
            messages.add(PlanMessages.NO_PLAN.at(course.place(),
                    "days", classroom.horizon() / ClassroomMaker.DAY));
            return Optional.empty();
        }
        Timetable timetable = found.get();
        List<String> faults = TimetableCheck.faults(timetable);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the plan of " + course.id() + " does not hold: " + faults);
        }
        LocalDateTime end = course.starts().plusMinutes(timetable.end());
        course.day().endsBy().filter(end::isAfter).ifPresent(by -> messages.add(PlanMessages.ENDS_TOO_LATE.at(
                course.place(), "by", MOMENT.format(by), "end", MOMENT.format(end),
                "floor", MOMENT.format(course.starts().plusMinutes(floor.minutes())))));
        return Optional.of(new ClassSchedule(course, briefing, floor, timetable, Delay.of(timetable)));
    }
}
