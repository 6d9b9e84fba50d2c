package org.benchleaf.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
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
    static Optional<StatedTime> read(Fields fields, String key) {
        Optional<String> told = fields.isScalar(key) ? fields.text(key).filter(TimeForm::isTold) : Optional.empty();
        if (told.isEmpty()) {
            return fields.positive(key, Dimension.TIME).map(StatedTime::of);
        }
        Node.Scalar written = fields.scalar(key).orElseThrow();
        String word = FORMS.keySet().stream().filter(told.get()::startsWith).findFirst().orElseThrow();
        Node.Scalar time = new Node.Scalar(told.get().substring(word.length()), written.plain(), written.place());
        Optional<Quantity> read = Amounts.read(time, List.of(Dimension.TIME), fields.messages());
        if (read.isEmpty()) {
            fields.soundness().spoil(written.place());
        } else if (read.get().low() <= 0) {
            fields.messages().add(FormMessages.NOT_POSITIVE.at(written.place(), "found", told.get()));
        }
        return read.map(quantity -> new StatedTime(FORMS.get(word), quantity));
    }
}
