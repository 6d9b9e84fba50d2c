package org.benchleaf.compose.part;

import java.util.Optional;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** Words a value as a report states it: "mean 7.2 (n = 5, standard deviation 0.1)", "about 7", "6 to 7". */
public final class StatedWords {

    private final Words words;
    private final NumberText numbers;
    private final Unit unit;

    public StatedWords(Words words, NumberText numbers, Unit unit) {
        this.words = words;
        this.numbers = numbers;
        this.unit = unit;
    }

    /** The value in words; that it was not recorded where there is none. */
    public String of(Optional<StatedValue> value) {
        return of(value, Optional.empty());
    }

    /** The value in words, or what the case says in its place. */
    public String of(Optional<StatedValue> value, Optional<MissingValue> missing) {
        return value.map(this::of).orElseGet(() -> words.missing(missing));
    }

    /** The value as a sentence takes it, a mean with what is known of its readings behind it: "7.2 (mean, n = 5)", "about 7". */
    String cited(StatedValue value) {
        return value.form() != StatedValue.Form.MEAN ? of(value) : words.say("stated.mean-cited",
                "value", numbers.spaced(value.withUnit(unit)),
                "readings", value.readings().map(count -> words.say("stated.readings-cited", "n", count)).orElse(""),
                "spread", spread(value));
    }

    /** The value in words, its digits as they were written. */
    public String of(StatedValue value) {
        String number = numbers.spaced(value.withUnit(unit));
        return switch (value.form()) {
            case ONE -> number;
            case RANGE -> value.readings().map(count -> words.say("stated.range", "value", number,
                    "readings", words.say("stated.readings", "n", count))).orElse(number);
            case ABOUT -> words.say("stated.about", "value", number);
            case LESS_THAN -> words.say("stated.less", "value", number);
            case MORE_THAN -> words.say("stated.more", "value", number);
            case MEAN -> words.say("stated.mean", "value", number,
                    "readings", value.readings().map(count -> words.say("stated.readings", "n", count))
                            .orElseGet(() -> words.say("stated.readings-not-recorded")),
                    "spread", spread(value));
        };
    }

    private String spread(StatedValue value) {
        return value.deviation().map(sd -> words.say("stated.deviation", "sd", numbers.written(sd).number())).orElse("");
    }
}
