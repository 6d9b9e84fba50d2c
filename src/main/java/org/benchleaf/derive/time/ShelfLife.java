package org.benchleaf.derive.time;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Holds the day on which a solution was made, and how long it keeps, against the days on which it is used. */
public final class ShelfLife {

    private final TreatmentCase source;
    private final WorkHours hours;
    private final Messages messages;

    public ShelfLife(TreatmentCase source, WorkHours hours, Messages messages) {
        this.source = source;
        this.hours = hours;
        this.messages = messages;
    }

    public void check(List<Preparation> preparations, Timeline timeline) {
        for (Preparation preparation : preparations) {
            Solution solution = source.solution(preparation.solution()).orElseThrow();
            List<Step> users = preparation.usedIn().stream().flatMap(id -> source.step(id).stream()).toList();
            solution.madeOn().ifPresent(made -> users.forEach(step -> checkDay(solution, made, step)));
            if (preparation.batches() == 1 && users.size() > 1) {
                solution.keeps().ifPresent(keeps -> checkSpan(solution, keeps, users, timeline));
            }
        }
    }

    private void checkDay(Solution solution, LocalDate made, Step step) {
        if (step.on().isEmpty()) {
            return;
        }
        LocalDate used = step.on().get();
        // The latest hour of the day it was made and the earliest of the day it is used: the benefit of the doubt.
        LocalDateTime spoils = WorkHours.plus(made.atTime(hours.closes()),
                solution.keeps().map(keeps -> keeps.highIn(Unit.MINUTE)).orElse(0.0));
        if (solution.keeps().isPresent() && spoils.isBefore(used.atTime(hours.opens()))) {
            messages.add(FigureMessages.MADE_TOO_EARLY.at(solution.place(), "solution", solution.id(), "made", made,
                    "keeps", Reading.of(solution.keeps().get()), "step", step.id(), "used", used));
        }
        Quantity ready = solution.readyIn().orElse(Quantity.of(0, Unit.MINUTE));
        if (WorkHours.plus(made.atTime(hours.opens()), ready.lowIn(Unit.MINUTE)).isAfter(used.atTime(hours.closes()))) {
            messages.add(FigureMessages.NOT_YET_READY.at(solution.place(), "solution", solution.id(), "made", made,
                    "ready", Reading.of(ready), "step", step.id(), "used", used));
        }
    }

    private void checkSpan(Solution solution, Quantity keeps, List<Step> users, Timeline timeline) {
        Map<String, LocalDateTime> days = Calendar.starts(timeline);
        Optional<Step> first = users.stream().min(Comparator.comparingDouble(step -> start(step, timeline, days, users)));
        Optional<Step> last = users.stream().max(Comparator.comparingDouble(step -> start(step, timeline, days, users)));
        double apart = start(last.orElseThrow(), timeline, days, users)
                - start(first.orElseThrow(), timeline, days, users);
        if (apart > keeps.highIn(Unit.MINUTE)) {
            messages.add(FigureMessages.USED_LONGER_THAN_IT_KEEPS.at(solution.place(), "solution", solution.id(),
                    "keeps", Reading.of(keeps), "apart", Reading.minutes(apart), "step", last.get().id()));
        }
    }

    /** Minutes after the first use on the calendar, or after the first step where there is none. */
    private static double start(Step step, Timeline timeline, Map<String, LocalDateTime> days, List<Step> users) {
        LocalDateTime day = days.get(step.id());
        if (day != null) {
            LocalDateTime origin = users.stream().map(user -> days.get(user.id())).filter(java.util.Objects::nonNull)
                    .min(Comparator.naturalOrder()).orElse(day);
            return ChronoUnit.MINUTES.between(origin, day);
        }
        return timeline.steps().stream().filter(timed -> timed.step().equals(step.id()))
                .mapToDouble(timed -> timed.start().lowIn(Unit.MINUTE)).findFirst().orElse(0);
    }
}
