package org.benchleaf.derive.classes;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** When a step is looked at, as the words of what is looked for tell it: "colour at 5 min". */
public final class Looks {

    private Looks() {
    }

    /** Whole minutes after the sheet was laid in at which something is looked for, in order, each once. */
    public static List<Integer> after(Step step) {
        return step.checks().stream().flatMap(look -> time(look).stream()).map(time -> (int) Math.ceil(time.highIn(Unit.MINUTE)))
                .filter(minute -> minute > 0).distinct().sorted().toList();
    }

    /** What a step looks for so many minutes after the sheet was laid in. */
    public static List<String> at(Step step, int minute) {
        return step.checks().stream().filter(look -> time(look).filter(time -> Math.ceil(time.highIn(Unit.MINUTE)) == minute).isPresent())
                .toList();
    }

    /** What is looked for at a time is told with the time at its end. */
    private static Optional<Quantity> time(String look) {
        String[] words = look.strip().split(" ");
        return words.length < 2 ? Optional.empty()
                : QuantityReader.read(words[words.length - 2] + " " + words[words.length - 1], Dimension.TIME).quantity();
    }
}
