package org.benchleaf.derive.classes;

import java.util.List;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Unit;

/** When a step is looked at, as the words of what is looked for tell it: "colour at 5 min". */
public final class Looks {

    private Looks() {
    }

    /** Whole minutes after the sheet was laid in at which something is looked for, in order, each once. */
    public static List<Integer> after(Step step) {
        return step.checks().stream().flatMap(look -> Step.lookTime(look).stream()).map(time -> (int) Math.ceil(time.highIn(Unit.MINUTE)))
                .filter(minute -> minute > 0).distinct().sorted().toList();
    }

    /** What a step looks for so many minutes after the sheet was laid in. */
    public static List<String> at(Step step, int minute) {
        return step.checks().stream().filter(look -> Step.lookTime(look)
                .filter(time -> Math.ceil(time.highIn(Unit.MINUTE)) == minute).isPresent()).toList();
    }
}
