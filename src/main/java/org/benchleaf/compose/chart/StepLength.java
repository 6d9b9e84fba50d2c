package org.benchleaf.compose.chart;

import java.util.function.UnaryOperator;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TimeWords;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** Words how long a step takes, as the case tells it: "20–40 min", "about 3 h", "less than 10 min", "at least 60 min". */
public final class StepLength {

    private final Words words;
    private final NumberText numbers;
    private final TimeWords told;

    public StepLength(Sheet sheet) {
        this.words = sheet.words();
        this.numbers = sheet.numbers();
        this.told = new TimeWords(sheet);
    }

    /** The time of a step; that none is recorded where nobody told it. */
    public String of(Step step, Timeline.TimedStep timed) {
        return of(step, timed, UnaryOperator.identity());
    }

    /**
     * The time of a step, that none is recorded where nobody told it.
     *
     * @param shown what is shown of a time that was worked out, or told as a number or a range
     */
    public String of(Step step, Timeline.TimedStep timed, UnaryOperator<Quantity> shown) {
        if (!timed.known()) {
            return words.untimed(step.timeMissing());
        }
        return step.takes().flatMap(told::qualified).orElseGet(() -> {
            String length = numbers.duration(shown.apply(timed.takes())).text();
            return timed.atLeast() ? words.say("missing.at-least", "value", length) : length;
        });
    }

    /** What of a step needs a person, as the case tells it, else as it was worked out. */
    public String ofHands(Step step, Timeline.TimedStep timed, UnaryOperator<Quantity> shown) {
        return step.handsOn().flatMap(told::qualified).orElseGet(() -> numbers.duration(shown.apply(timed.handsOn())).text());
    }
}
