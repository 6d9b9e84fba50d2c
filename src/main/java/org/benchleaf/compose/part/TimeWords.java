package org.benchleaf.compose.part;

import java.util.Optional;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue.Form;

/** Words a time as the case tells it: "20–40 min", "about 3 h", "less than 10 min". */
public final class TimeWords {

    private final Sheet sheet;

    public TimeWords(Sheet sheet) {
        this.sheet = sheet;
    }

    /** A wait, or how long a bath lies. */
    public String of(StatedTime time) {
        return qualified(time).orElseGet(() -> sheet.numbers().duration(time.stated()).text());
    }

    /** A time that is told with a word; empty for a number and a range. */
    public Optional<String> qualified(StatedTime time) {
        return key(time.form()).map(key -> sheet.words().say(key, "value", sheet.numbers().duration(time.stated()).text()));
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
