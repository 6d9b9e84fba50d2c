package org.benchleaf.compose.chart;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** Words how long a step takes, as the case tells it: "20–40 min", "about 3 h", "less than 10 min", "at least 60 min". */
public final class StepLength {

    private final Words words;
    private final NumberText numbers;

    public StepLength(Sheet sheet) {
        this.words = sheet.words();
        this.numbers = sheet.numbers();
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
        return step.takes().flatMap(this::qualified).orElseGet(() -> {
            String told = numbers.duration(shown.apply(timed.takes())).text();
            return timed.atLeast() ? words.say("missing.at-least", "value", told) : told;
        });
    }

    /** A wait as it is told. */
    public String of(StatedTime time) {
        return qualified(time).orElseGet(() -> numbers.duration(time.stated()).text());
    }

    /** A time that is told with a word; empty for a number and a range. */
    private Optional<String> qualified(StatedTime time) {
        return key(time.form()).map(key -> words.say(key, "value", numbers.duration(time.stated()).text()));
    }

    private static Optional<String> key(Form form) {
        return switch (form) {
            case ABOUT -> Optional.of("stated.about");
            case LESS_THAN -> Optional.of("stated.less");
            case MORE_THAN -> Optional.of("stated.more");
            default -> Optional.empty();
        };
    }
}
