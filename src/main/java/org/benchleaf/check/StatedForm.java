package org.benchleaf.check;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/**
 * Reads a value as a report states it: {@code mean 7.2, n = 5, sd 0.1}, {@code 6 to 7, n = 3}, {@code about 7},
 * {@code less than 5}, {@code reported 7}.
 */
final class StatedForm {

    private static final Map<String, Form> FORMS = Map.of("mean ", Form.MEAN, "about ", Form.ABOUT,
            "less than ", Form.LESS_THAN, "reported ", Form.ONE, "more than ", Form.MORE_THAN);
    private static final String COUNT = "n";
    private static final String DEVIATION = "sd";

    private final Fields fields;
    private final Unit unit;

    StatedForm(Fields fields, Unit unit) {
        this.fields = fields;
        this.unit = unit;
    }

    /**
     * A pH that is aimed at: a quantity, or told as a report does, such as {@code about pH 8}; empty where there is none or it cannot be
     * read, which is said.
     */
    static Optional<StatedValue> ph(Fields fields, String key) {
        Optional<Node.Scalar> written = fields.isScalar(key) ? fields.scalar(key) : Optional.empty();
        String text = written.map(scalar -> scalar.text().strip()).orElse("");
        if (FORMS.keySet().stream().noneMatch(text::startsWith)) {
            return fields.ph(key).map(value -> StatedValue.of(value, text));
        }
        Optional<StatedValue> told = new StatedForm(fields, Unit.PH).read(key);
        fields.asPh(key, told.map(StatedValue::value).map(Quantity::asStated));
        return told;
    }

    /** The value under a key; empty where words stand there, or a value that cannot be read, which is said. */
    Optional<StatedValue> read(String key) {
        Optional<Node.Scalar> written = fields.isScalar(key) ? fields.scalar(key) : Optional.empty();
        return written.flatMap(scalar -> {
            String text = scalar.text().strip();
            Optional<String> word = FORMS.keySet().stream().filter(text::startsWith).findFirst();
            return read(scalar, word.map(FORMS::get), text.substring(word.map(String::length).orElse(0)));
        });
    }

    private Optional<StatedValue> read(Node.Scalar scalar, Optional<Form> form, String rest) {
        List<String> parts = Arrays.stream(rest.split(",")).map(String::strip).toList();
        Optional<Quantity> value = quantity(parts.get(0));
        Optional<Integer> count = part(parts, COUNT).filter(text -> text.matches("[1-9][0-9]{0,3}")).map(Integer::valueOf);
        Optional<Quantity> deviation = part(parts, DEVIATION).flatMap(this::quantity);
        int known = 1 + (count.isPresent() ? 1 : 0) + (deviation.isPresent() ? 1 : 0);
        if (value.isPresent() && known == parts.size() && (known == 1 || form.equals(Optional.of(Form.MEAN))
                || form.isEmpty() && deviation.isEmpty() && value.get().spread() == Quantity.Spread.RANGE)) {
            return Optional.of(new StatedValue(form.orElse(value.get().spread() == Quantity.Spread.RANGE ? Form.RANGE
                    : Form.ONE), QuantityReader.asReading(value.get(), parts.get(0)), count, deviation, parts.get(0)));
        }
        if (form.isPresent() || count.isPresent()) {
            fields.soundness().spoil(scalar.place());
            fields.messages().add(FormMessages.STATED_VALUE.at(scalar.place(), "found", scalar.text().strip()));
        }
        return Optional.empty();
    }

    private Optional<Quantity> quantity(String text) {
        boolean bare = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        String symbol = unit.symbol().isEmpty() || unit == Unit.COUNT || unit == Unit.PH || !bare ? "" : " " + unit.symbol();
        return QuantityReader.read(text + symbol, unit.dimension()).quantity().map(quantity -> quantity.to(unit));
    }

    /** What stands behind a word such as {@code n} or {@code n =}. */
    private static Optional<String> part(List<String> parts, String word) {
        return parts.stream().skip(1).filter(part -> part.startsWith(word)).map(part -> part.substring(word.length()).strip())
                .map(text -> text.startsWith("=") ? text.substring(1).strip() : text).findFirst();
    }
}
