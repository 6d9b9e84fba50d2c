package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.classes.ClassSupplies.Filling;
import org.benchleaf.derive.classes.Duty.Stretch;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * What the technician does with solutions that are made: draws the clear part off before it is needed, and fills the portion of each
 * station before it begins with it.
 *
 * @param steps of the class
 * @param draws when each station begins with what it has a portion of
 */
record HandingOut(Bench bench, List<Step> steps, ClassDraws draws) {

    /** Both, the drawing off in time that is free; of what is handed out only where a plan tells the stations apart. */
    List<Duty> of(List<Filling> fillings, List<ClassPlan.Start> starts, FreeTime free) {
        List<Duty> duties = new ArrayList<>();
        fillings.forEach(filling -> {
            filling.clear().ifPresent(clear -> starts.stream().filter(start -> start.solution().equals(filling.solution())).forEach(start ->
                    duties.add(drawnOff(filling, clear, start, free))));
            if (filling.stations() > 0) {
                portioned(filling).ifPresent(duty -> {
                    duty.stretches().forEach(free::take);
                    duties.add(duty);
                });
            }
        });
        return duties;
    }

    private Duty drawnOff(Filling filling, ClassSupplies.Clear clear, ClassPlan.Start start, FreeTime free) {
        Quantity each = bench.constant("drawing-off-the-clear").value();
        Stretch found = free.latest(start.readyFor(), StationCut.minutes(each), 0);
        return new Duty(Duty.Kind.CLEAR_DRAWN_OFF, Optional.empty(), ClassDay.Doer.TECHNICIAN, List.of(found), each, 1,
                Quantity.of(0, Unit.MINUTE), start.readyFor(), Map.of(filling.solution(), clear.all().or(filling::each)));
    }

    private Optional<Duty> portioned(Filling filling) {
        Quantity each = bench.constant("filling-a-portion").value();
        List<ClassDraws.Draw> drawn = steps.stream().filter(step -> bench.uses().of(filling.solution()).stream()
                .anyMatch(use -> use.by().equals(step.id()))).flatMap(step -> draws.of(step, filling.solution()).stream())
                .filter(draw -> draw.station() != ClassDraws.ALL).toList();
        List<Stretch> stretches = new ArrayList<>();
        drawn.forEach(draw -> join(stretches, draw.from(), draw.from().plusMinutes(StationCut.minutes(each))));
        return stretches.isEmpty() ? Optional.empty() : Optional.of(new Duty(Duty.Kind.PORTIONS_FILLED, Optional.empty(),
                ClassDay.Doer.TECHNICIAN, stretches, each, drawn.size(), Quantity.of(0, Unit.MINUTE), stretches.get(0).to(),
                Map.of(filling.solution(), filling.inStation())));
    }

    private static void join(List<Stretch> stretches, LocalDateTime from, LocalDateTime to) {
        int last = stretches.size() - 1;
        if (last >= 0 && stretches.get(last).to().equals(from)) {
            stretches.set(last, new Stretch(stretches.get(last).from(), to));
        } else {
            stretches.add(new Stretch(from, to));
        }
    }
}
