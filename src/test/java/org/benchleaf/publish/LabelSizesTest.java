package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;

/** The style of labels keeps the sizes of the table of labels. */
class LabelSizesTest {

    private static final double POINT = 25.4 / 72;
    private static final double X_HEIGHT = 0.5;

    @Test
    void every_label_is_as_large_as_its_bottle_asks() throws IOException {
        String css = Files.readString(Path.of("templates/style/label-sheet.css"));
        List<Reference.LabelSize> sizes = ReferenceReader.shipped().labels();
        assertThat(sizes).hasSize(5);
        String every = rule(css, ".label").orElseThrow();
        assertThat(value(every, "font-size-adjust", "")).contains(X_HEIGHT);
        assertThat(value(every, "line-height", "").orElseThrow()).isGreaterThanOrEqualTo(1.2);
        for (int i = 0; i < sizes.size(); i++) {
            Reference.LabelSize size = sizes.get(i);
            String label = rule(css, ".label--" + (i + 1)).orElseThrow();
            String drawing = rule(css, ".label__pictogram--" + (i + 1) + " svg")
                    .or(() -> rule(css, ".label__pictogram svg")).orElseThrow();
            double letters = value(label, "font-size", "pt").or(() -> value(every, "font-size", "pt")).orElseThrow();
            assertThat(value(label, "inline-size", "mm").orElseThrow()).isGreaterThanOrEqualTo(size.width().in(Unit.MILLIMETRE));
            assertThat(value(label, "min-block-size", "mm").orElseThrow())
                    .isGreaterThanOrEqualTo(size.height().in(Unit.MILLIMETRE));
            assertThat(value(drawing, "inline-size", "mm").orElseThrow())
                    .isGreaterThanOrEqualTo(size.pictogram().in(Unit.MILLIMETRE) * StrictMath.sqrt(2));
            assertThat(letters * POINT * X_HEIGHT).isGreaterThanOrEqualTo(size.xHeight().in(Unit.MILLIMETRE));
        }
    }

    private static Optional<String> rule(String css, String selector) {
        Matcher rule = Pattern.compile("(?m)^\\s*" + Pattern.quote(selector) + " \\{([^}]*)}").matcher(css);
        return rule.find() ? Optional.of(rule.group(1)) : Optional.empty();
    }

    private static Optional<Double> value(String rule, String property, String unit) {
        Matcher value = Pattern.compile("(?<![a-z-])" + property + ": ([0-9.]+)" + unit + ";").matcher(rule);
        return value.find() ? Optional.of(Double.valueOf(value.group(1))) : Optional.empty();
    }
}
