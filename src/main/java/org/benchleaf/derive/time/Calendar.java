package org.benchleaf.derive.time;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Lays steps out on working days, once at the quickest and once at the slowest pace.
 *
 * <p>A step that needs a person begins only when it can be finished before closing; one that is longer than a day
 * goes on the next morning. A step that may run overnight begins in working hours and goes on by the clock; its
 * changes wait for the next opening where nobody is there.
 */
public final class Calendar {

    private final Map<String, StepTime> times;
    private final Map<String, List<String>> after;
    private final WorkHours hours;
    private final Messages messages;

    /** One step at one pace. */
    private record Laid(LocalDateTime start, LocalDateTime end, List<LocalDateTime> moments) {
    }

    /** A pace: which end of a time counts. */
    private record Pace(ToDoubleFunction<Minutes> step, ToDoubleFunction<Quantity> moment) {
    }

    private static final Pace QUICK = new Pace(Minutes::low, time -> time.lowIn(Unit.MINUTE));
    private static final Pace SLOW = new Pace(Minutes::high, time -> time.highIn(Unit.MINUTE));

    Calendar(Map<String, StepTime> times, Map<String, List<String>> after, WorkHours hours, Messages messages) {
        this.times = times;
        this.after = after;
        this.hours = hours;
        this.messages = messages;
    }

    List<Timeline.ClockedStep> days(LocalDateTime start, boolean asRecorded) {
        Map<String, Laid> quick = lay(start, QUICK, asRecorded, true);
        Map<String, Laid> slow = lay(start, SLOW, asRecorded, false);
        return times.keySet().stream().map(id -> clocked(times.get(id), quick.get(id), slow.get(id))).toList();
    }

    private static Timeline.ClockedStep clocked(StepTime time, Laid quick, Laid slow) {
        List<Timeline.ClockedMoment> moments = new ArrayList<>();
        for (int i = 0; i < time.moments().size(); i++) {
            Timeline.Moment moment = time.moments().get(i);
            moments.add(new Timeline.ClockedMoment(moment.kind(), moment.number(), quick.moments().get(i),
                    later(quick.moments().get(i), slow.moments().get(i))));
        }
        return new Timeline.ClockedStep(time.step().id(), quick.start(), later(quick.start(), slow.start()),
                quick.end(), later(quick.end(), slow.end()), moments);
    }

    private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private Map<String, Laid> lay(LocalDateTime start, Pace pace, boolean asRecorded, boolean tell) {
        Map<String, Laid> laid = new HashMap<>();
        for (String id : CriticalPath.order(after)) {
            LocalDateTime ready = after.get(id).stream().map(before -> laid.get(before).end())
                    .reduce(start, Calendar::later);
            StepTime time = times.get(id);
            ready = waited(time.step(), ready, pace);
            laid.put(id, asRecorded ? onItsDay(time, ready, pace, tell) : lay(time, ready, pace, tell));
        }
        return laid;
    }

    /** When the wait of a step is over; nights and days off count. */
    private LocalDateTime waited(Step step, LocalDateTime ready, Pace pace) {
        Optional<LocalDateTime> day = step.waiting().flatMap(Step.Wait::day).map(one -> one.atTime(hours.opens()));
        LocalDateTime after = step.waiting().flatMap(Step.Wait::time)
                .map(time -> WorkHours.plus(ready, pace.moment().applyAsDouble(time.span()))).orElse(ready);
        return day.map(one -> later(one, after)).orElse(after);
    }

    private Laid onItsDay(StepTime time, LocalDateTime ready, Pace pace, boolean tell) {
        Step step = time.step();
        if (step.on().isEmpty()) {
            return lay(time, ready, pace, tell);
        }
        LocalDateTime opening = step.on().get().atTime(hours.opens());
        LocalDateTime earliest = lay(time, ready, pace, false).start();
        if (tell && hours.days().contains(step.on().get().getDayOfWeek())
                && earliest.toLocalDate().isAfter(step.on().get())) {
            messages.add(FigureMessages.EARLIER_THAN_POSSIBLE.at(step.place(), "step", step.id(),
                    "on", step.on().get(), "earliest", earliest.toLocalDate()));
        }
        return lay(time, later(ready, opening), pace, tell);
    }

    private Laid lay(StepTime time, LocalDateTime ready, Pace pace, boolean tell) {
        double minutes = pace.step().applyAsDouble(time.takes());
        if (time.step().overnight()) {
            return throughTheNight(time, ready, pace, tell);
        }
        // The slow pace decides for both, so that a quicker step never begins later than a slower one.
        boolean manyDays = time.takes().high() > hours.dayLength();
        LocalDateTime begin = manyDays ? hours.atWork(ready) : hours.startFor(ready, minutes);
        List<LocalDateTime> moments = time.moments().stream()
                .map(moment -> hours.workedThrough(begin, pace.moment().applyAsDouble(moment.at()))).toList();
        return new Laid(begin, hours.workedThrough(begin, minutes), moments);
    }

    private Laid throughTheNight(StepTime time, LocalDateTime ready, Pace pace, boolean tell) {
        double first = time.moments().isEmpty() ? pace.step().applyAsDouble(time.takes())
                : pace.moment().applyAsDouble(time.moments().get(0).at());
        double hands = Math.min(first, pace.step().applyAsDouble(time.handsOn()));
        LocalDateTime begin = hours.startFor(ready, Math.min(hands, hours.dayLength()));
        List<LocalDateTime> moments = new ArrayList<>();
        LocalDateTime last = begin;
        double offset = 0;
        for (Timeline.Moment moment : time.moments()) {
            double at = pace.moment().applyAsDouble(moment.at());
            LocalDateTime planned = WorkHours.plus(last, at - offset);
            last = moment.overnight() ? hours.nextOpening(last.toLocalDate().plusDays(1).atStartOfDay())
                    : attended(time.step(), moment, planned, tell);
            offset = at;
            moments.add(last);
        }
        LocalDateTime end = WorkHours.plus(begin, pace.step().applyAsDouble(time.lying()));
        return new Laid(begin, later(end, last), moments);
    }

    private LocalDateTime attended(Step step, Timeline.Moment moment, LocalDateTime planned, boolean tell) {
        if (hours.isOpen(planned)) {
            return planned;
        }
        LocalDateTime opening = hours.nextOpening(planned);
        if (tell) {
            messages.add(FigureMessages.CHANGE_WHEN_NOBODY_IS_THERE.at(step.place(), "step", step.id(),
                    "moment", moment.kind(), "number", moment.number(), "until", opening));
        }
        return opening;
    }

    /** The earliest start of each step by its id. */
    static Map<String, LocalDateTime> starts(Timeline timeline) {
        Map<String, LocalDateTime> starts = new HashMap<>();
        timeline.days().forEach(day -> starts.put(day.step(), day.earliestStart()));
        return starts;
    }

    /** The step of that id on the calendar, if there is a calendar. */
    public static Optional<Timeline.ClockedStep> day(Timeline timeline, String step) {
        return timeline.days().stream().filter(day -> day.step().equals(step)).findFirst();
    }
}
