package org.benchleaf.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReferenceMessages;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** One row of a table of hazards or care while it is read: whatever is wrong with it is said, and the row then left out. */
final class ReferenceRow {

    private final String key;
    private final Node.Mapping node;
    private final RowExamples examples;
    private final Messages messages;
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<ReferenceRow> inner = new ArrayList<>();
    private boolean sound = true;

    ReferenceRow(String key, Node.Mapping node, RowExamples examples, Messages messages) {
        this.key = key;
        this.node = node;
        this.examples = examples;
        this.messages = messages;
    }

    String key() {
        return key;
    }

    /** Whether everything that was asked for could be read and nothing else stands in the row. */
    boolean isSound() {
        Set<String> unknown = new LinkedHashSet<>(node.entries().keySet());
        unknown.removeAll(asked);
        for (String one : unknown) {
            messages.add(ReferenceMessages.ROW_KEY_UNKNOWN.at(node.entries().get(one).keyPlace(), "row", key,
                    "key", one, "known", String.join(", ", asked)));
            sound = false;
        }
        return sound & inner.stream().map(ReferenceRow::isSound).reduce(true, Boolean::logicalAnd);
    }

    String text(String name) {
        return optionalText(name).orElseGet(() -> {
            messages.add(ReferenceMessages.ROW_INCOMPLETE.at(node.place(), "row", key, "key", name,
                    "example", examples.of(name).map(text -> ", for example '" + text + "'").orElse("")));
            sound = false;
            return "";
        });
    }

    Optional<String> optionalText(String name) {
        return value(name).flatMap(value -> {
            if (value instanceof Node.Scalar scalar && !scalar.text().isBlank()) {
                return Optional.of(scalar.text().strip());
            }
            refuse(value.place(), name, "a list or nothing", "a text");
            return Optional.empty();
        });
    }

    /** The text, if it is one of the words allowed. */
    String oneOf(String name, Set<String> allowed) {
        String text = text(name);
        if (!text.isEmpty() && !allowed.contains(text)) {
            refuse(value(name).orElseThrow().place(), name, text,
                    allowed.stream().sorted().collect(Collectors.joining(", ", "one of: ", "")));
        }
        return text;
    }

    /** A class that the table of classes has; one that it has not is told with those that may be meant. */
    String classWord(String name, Set<String> known) {
        String text = text(name);
        if (!text.isEmpty() && !known.contains(text)) {
            List<String> near = Nearest.several(text, known);
            messages.add(ReferenceMessages.CLASS_UNKNOWN.at(value(name).orElseThrow().place(), "row", key, "found", text,
                    "remedy", near.isEmpty() ? "Write the class as section 2 of the safety data sheet has it."
                            : "Did you mean " + near.stream().map(one -> "'" + one + "'").collect(Collectors.joining(", ")) + "?"));
            sound = false;
        }
        return text;
    }

    List<String> texts(String name) {
        return value(name).map(value -> texts(name, value)).orElse(List.of());
    }

    private List<String> texts(String name, Node value) {
        List<String> texts = new ArrayList<>();
        if (value instanceof Node.Sequence list && list.items().stream().allMatch(Node.Scalar.class::isInstance)) {
            list.items().forEach(item -> texts.add(((Node.Scalar) item).text().strip()));
        } else {
            refuse(value.place(), name, "something else", "a list in square brackets");
        }
        return texts;
    }

    /** The texts, each of which must be known. */
    List<String> textsOf(String name, Set<String> known) {
        List<String> texts = texts(name);
        texts.stream().filter(text -> !known.contains(text)).findFirst().ifPresent(text ->
                refuse(value(name).orElseThrow().place(), name, text, "codes that the tables have"));
        return texts;
    }

    /** The texts, one for each place that has to be filled. */
    List<String> texts(String name, int places) {
        List<String> texts = texts(name);
        if (sound && texts.size() != places) {
            refuse(value(name).map(Node::place).orElse(node.place()), name, texts.size() + " texts",
                    places == 0 ? "nothing: this wording leaves no place open" : "a list of " + places
                            + ", one text for each open place of the wording; \"\" leaves the place out");
        }
        return texts;
    }

    Quantity quantity(String name, Dimension... dimensions) {
        Optional<Quantity> quantity = optionalQuantity(name, dimensions);
        if (quantity.isEmpty() && sound) {
            text(name);
        }
        // A stand-in: an unsound row is never used.
        return quantity.orElseGet(() -> Quantity.of(0, Unit.NONE));
    }

    Optional<Quantity> optionalQuantity(String name, Dimension... dimensions) {
        return optionalText(name).flatMap(text -> {
            for (Dimension dimension : dimensions) {
                Optional<Quantity> read = QuantityReader.read(text, dimension).quantity();
                if (read.isPresent()) {
                    return read;
                }
            }
            refuse(value(name).orElseThrow().place(), name, text, "a quantity with its unit, as in '"
                    + Unit.usual(dimensions[0]).symbol() + "'");
            return Optional.empty();
        });
    }

    /** One of a closed list of words. */
    <T> Optional<T> optionalWord(String name, T[] all, Function<T, String> word) {
        if (optionalText(name).isEmpty()) {
            return Optional.empty();
        }
        String found = oneOf(name, Stream.of(all).map(word).collect(Collectors.toSet()));
        return Stream.of(all).filter(one -> word.apply(one).equals(found)).findFirst();
    }

    /** A measured value: bare, then with the source of the row, or with keys of its own. */
    Optional<Substance.Measured> measured(String name, Dimension... dimensions) {
        if (!isGroup(name)) {
            return optionalQuantity(name, dimensions).map(value ->
                    new Substance.Measured(value, Optional.empty(), text("source")));
        }
        return row(name).map(inner -> new Substance.Measured(inner.quantity("value", dimensions),
                inner.optionalQuantity("at", Dimension.TEMPERATURE), inner.text("source")));
    }

    /** A plain number from a least to a greatest one. */
    Optional<Double> optionalNumber(String name, double least, double greatest) {
        return optionalText(name).flatMap(text -> {
            if (text.matches("\\d+(\\.\\d+)?")) {
                double number = Double.parseDouble(text);
                if (number >= least && number <= greatest) {
                    return Optional.of(number);
                }
            }
            refuse(value(name).orElseThrow().place(), name, text, "a number from " + least + " to " + greatest);
            return Optional.empty();
        });
    }

    boolean yes(String name) {
        return optionalText(name).isPresent() && oneOf(name, Set.of("yes", "no")).equals("yes");
    }

    /** Says that a key does not go with what else the row says. */
    void refuse(String name, String wanted) {
        refuse(value(name).map(Node::place).orElse(node.place()), name,
                optionalText(name).orElse("a list"), wanted);
    }

    /** Says that the row is milder than the shipped one of the same key. */
    void refuseMilder(List<Substance.HazardClass> left) {
        messages.add(ReferenceMessages.CLASS_TAKEN_AWAY.at(node.place(), "row", key, "classes", left.stream()
                .map(one -> one.name() + ", " + one.statement()).collect(Collectors.joining("; ")), "lines", left.stream()
                .map(one -> "'{class: " + one.name() + ", statement: " + one.statement() + "}'").collect(Collectors.joining(", "))));
        sound = false;
    }

    boolean has(String name) {
        return value(name).isPresent();
    }

    /** Whether keys of its own stand under the name. */
    boolean isGroup(String name) {
        return value(name).filter(Node.Mapping.class::isInstance).isPresent();
    }

    Optional<ReferenceRow> row(String name) {
        return value(name).flatMap(value -> {
            if (value instanceof Node.Mapping mapping) {
                return Optional.of(inner(mapping));
            }
            refuse(value.place(), name, "something else", "keys with values");
            return Optional.empty();
        });
    }

    List<ReferenceRow> rows(String name) {
        List<ReferenceRow> rows = new ArrayList<>();
        value(name).ifPresent(value -> {
            if (value instanceof Node.Sequence list && list.items().stream().allMatch(Node.Mapping.class::isInstance)) {
                list.items().forEach(item -> rows.add(inner((Node.Mapping) item)));
            } else {
                refuse(value.place(), name, "something else", "a list of keys with values");
            }
        });
        return rows;
    }

    Set<String> set(String name) {
        return new HashSet<>(texts(name));
    }

    private ReferenceRow inner(Node.Mapping mapping) {
        ReferenceRow row = new ReferenceRow(key, mapping, examples, messages);
        inner.add(row);
        return row;
    }

    private Optional<Node> value(String name) {
        asked.add(name);
        return node.get(name);
    }

    private void refuse(Place place, String name, String found, String wanted) {
        messages.add(ReferenceMessages.ROW_UNREADABLE.at(place, "row", key, "key", name, "found", found,
                "wanted", wanted));
        sound = false;
    }
}
