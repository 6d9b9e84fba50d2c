package org.benchleaf.derive.time;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.benchleaf.derive.figure.BathWork;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Puts the steps of a case on one clock, and on the studio's calendar where a start is known. */
public final class TimelineMaker {

    private final List<Step> steps;
    private final WorkHours hours;
    private final Messages messages;
    private final Map<String, StepTime> times = new LinkedHashMap<>();
    private final Map<String, List<String>> after = new LinkedHashMap<>();

    /**
     * Reads the times of the steps.
     *
     * @param steps in the order of the case; what they come after counts only among themselves
     * @param ledger holds how long baths take to fill and to change
     */
    public TimelineMaker(List<Step> steps, Ledger ledger, WorkHours hours, Messages messages) {
        this.steps = List.copyOf(steps);
        this.hours = hours;
        this.messages = messages;
        Set<String> ids = new java.util.LinkedHashSet<>(steps.stream().map(Step::id).toList());
        for (Step step : steps) {
            times.put(step.id(), StepTime.of(step, BathWork.of(step, ledger), hours, messages));
            after.put(step.id(), step.after().stream().filter(ids::contains).distinct().toList());
        }
        openCircles();
    }

    /** The check refuses circles; a timeline of steps that were never checked still comes to an end. */
    private void openCircles() {
        Set<String> circle = CriticalPath.circle(after);
        circle.forEach(id -> after.put(id, after.get(id).stream().filter(one -> !circle.contains(one)).toList()));
    }

    /** How long each step takes, by its id. */
    public Map<String, Minutes> lengths() {
        Map<String, Minutes> lengths = new LinkedHashMap<>();
        times.forEach((id, time) -> lengths.put(id, time.takes()));
        return lengths;
    }

    /** The timeline without a calendar. */
    Timeline onTheClock() {
        CriticalPath quick = path(Minutes::low);
        CriticalPath usual = path(Minutes::usual);
        CriticalPath slow = path(Minutes::high);
        List<Timeline.TimedStep> timed = new ArrayList<>();
        Set<String> waitsForUnknown = waitsForUnknown();
        Minutes handsOn = Minutes.NONE;
        for (Step step : steps) {
            StepTime time = times.get(step.id());
            String id = step.id();
            double slack = usual.slack(id);
            timed.add(new Timeline.TimedStep(id, time.isKnown(), time.atLeast(), !waitsForUnknown.contains(id),
                    range(quick.start(id), usual.start(id), slow.start(id)),
                    range(quick.end(id), usual.end(id), slow.end(id)), time.takes().quantity(),
                    time.handsOn().quantity(), Quantity.of(slack, Unit.MINUTE), slack < 1e-9, time.moments()));
            handsOn = handsOn.plus(time.handsOn());
        }
        return new Timeline(timed, times.values().stream().allMatch(StepTime::isWhole)
                && steps.stream().noneMatch(TimelineMaker::waitsWithoutTime), range(quick.total(), usual.total(), slow.total()),
                handsOn.quantity(), List.of());
    }

    /** The steps of which a step before, near or far, has a time that nobody told. */
    private Set<String> waitsForUnknown() {
        Set<String> waiting = new HashSet<>(steps.stream().filter(TimelineMaker::waitsWithoutTime).map(Step::id).toList());
        for (boolean more = true; more;) {
            more = false;
            for (Map.Entry<String, List<String>> step : after.entrySet()) {
                more |= step.getValue().stream().anyMatch(one -> waiting.contains(one) || !times.get(one).isWhole())
                        && waiting.add(step.getKey());
            }
        }
        return waiting;
    }

    /** A day or a sign ends a wait whose length nobody told. */
    private static boolean waitsWithoutTime(Step step) {
        return step.waiting().isPresent() && step.waiting().flatMap(Step.Wait::time).filter(time -> !time.isOpen()).isEmpty();
    }

    private static Quantity range(double low, double usual, double high) {
        return Quantity.between(low, Math.min(Math.max(low, usual), high), high, Unit.MINUTE);
    }

    private CriticalPath path(ToDoubleFunction<Minutes> pace) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        times.forEach((id, time) -> lengths.put(id, pace.applyAsDouble(time.takes())));
        Map<String, Double> waits = new LinkedHashMap<>();
        steps.forEach(step -> step.waiting().flatMap(Step.Wait::time)
                .ifPresent(time -> waits.put(step.id(), pace.applyAsDouble(Minutes.of(time.span())))));
        return new CriticalPath(lengths, waits, after);
    }

    /**
     * The same timeline with its days.
     *
     * @param start when the first step begins; the timeline stays without days if empty
     * @param asRecorded whether a step waits for the day on which it is recorded
     */
    public Timeline onTheCalendar(Optional<LocalDateTime> start, boolean asRecorded) {
        Timeline clock = onTheClock();
        return start.map(begin -> new Timeline(clock.steps(), clock.complete(), clock.total(), clock.handsOn(),
                new Calendar(times, after, hours, messages).days(begin, asRecorded))).orElse(clock);
    }

    /** The steps whose day is on record; what the plan says of them is told no author again. */
    public List<DayOnRecord> daysOnRecord() {
        Map<String, DayOnRecord.PlannedDays> planned = new LinkedHashMap<>();
        Set<String> open = waitsForUnknown();
        firstDay().ifPresent(begin -> new Calendar(times, after, hours, new Messages()).days(begin, false).stream()
                .filter(day -> !open.contains(day.step())).forEach(day -> planned.put(day.step(), new DayOnRecord.PlannedDays(
                        day.earliestStart().toLocalDate(), day.latestStart().toLocalDate()))));
        return steps.stream().flatMap(step -> step.on().stream().map(on -> new DayOnRecord(step.id(), on,
                Optional.ofNullable(planned.get(step.id()))))).toList();
    }

    /** The opening of the first day on which a step is recorded; empty if none is. */
    public Optional<LocalDateTime> firstDay() {
        return steps.stream().findFirst().flatMap(Step::on).map(day -> day.atTime(hours.opens()));
    }
}
