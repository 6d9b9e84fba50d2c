package org.benchleaf.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.read.Node;

/** Reads how long something takes: {@code 3 h}, {@code 20 min to 40 min}, {@code about 3 h}, {@code less than 10 min}. */
final class TimeForm {

    private static final Map<String, Form> FORMS = Map.of("about ", Form.ABOUT, "less than ", Form.LESS_THAN, "more than ", Form.MORE_THAN);

    private TimeForm() {
    }

    /** Whether words stand there that tell of a time how well it is known. */
    static boolean isTold(String text) {
        return FORMS.keySet().stream().anyMatch(word -> text.startsWith(word)
                && text.length() > word.length() && Character.isDigit(text.charAt(word.length())));
    }

    /** The time under a key, above nothing; empty where there is none or it cannot be read, which is said. */
    static Optional<StatedTime> read(Fields fields, String key, Formulary formulary) {
        Optional<Node.Scalar> told = fields.isScalar(key) ? fields.scalar(key).filter(scalar -> isTold(scalar.text())) : Optional.empty();
        return told.isPresent() ? told(fields, told.get(), formulary) : fields.positive(key, Dimension.TIME).map(StatedTime::of);
    }

    /** The times under a key, one or a list of them, each as {@link #read} takes it. */
    static List<StatedTime> readAll(Fields fields, String key, Formulary formulary) {
        if (fields.isScalar(key) || !fields.has(key)) {
            return read(fields, key, formulary).stream().toList();
        }
        return fields.scalars(key).stream().flatMap(scalar -> (isTold(scalar.text()) ? told(fields, scalar, formulary)
                : fields.positive(scalar, Dimension.TIME).map(StatedTime::of)).stream()).toList();
    }

    private static Optional<StatedTime> told(Fields fields, Node.Scalar written, Formulary formulary) {
        String text = written.text();
        String word = FORMS.keySet().stream().filter(text::startsWith).findFirst().orElseThrow();
        return fields.positive(new Node.Scalar(text.substring(word.length()), written.plain(), written.place()), Dimension.TIME)
                .map(quantity -> StatedTime.told(FORMS.get(word), quantity, formulary));
    }
}
