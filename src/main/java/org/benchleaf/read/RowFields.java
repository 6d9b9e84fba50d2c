package org.benchleaf.read;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.RuleMessages;

/** Takes the fields of one row of a rule file, and says what is missing. */
final class RowFields {

    private final Node.Mapping row;
    private final Messages messages;

    RowFields(Node.Mapping row, Messages messages) {
        this.row = row;
        this.messages = messages;
    }

    /** Says every key that is not one of these. */
    void only(Collection<String> known) {
        row.entries().forEach((key, entry) -> {
            if (!known.contains(key)) {
                messages.add(RuleMessages.RULE_KEY_UNKNOWN.at(entry.keyPlace(), "key", key, "known", list(known.stream())));
            }
        });
    }

    Node.Mapping row() {
        return row;
    }

    Optional<String> text(String key) {
        return row.get(key).filter(Node.Scalar.class::isInstance).map(node -> ((Node.Scalar) node).text().strip())
                .filter(text -> !text.isEmpty());
    }

    /** The text, or a message that it is missing. */
    Optional<String> needed(String key) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            missing(key);
        }
        return text;
    }

    void missing(String key) {
        messages.add(RuleMessages.RULE_ROW_INCOMPLETE.at(row.place(), "key", key));
    }

    boolean yes(String key) {
        return text(key).filter("yes"::equals).isPresent();
    }

    Optional<Node.Mapping> mapping(String key) {
        return row.get(key).filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast);
    }

    /** The words of a list, or the one word that stands in its place. */
    static List<String> words(Node node) {
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().filter(Node.Scalar.class::isInstance)
                    .map(item -> ((Node.Scalar) item).text().strip()).toList();
        }
        return node instanceof Node.Scalar scalar && !scalar.isNothing() ? List.of(scalar.text().strip()) : List.of();
    }

    List<String> words(String key) {
        return row.get(key).map(RowFields::words).orElse(List.of());
    }

    static String list(Stream<String> words) {
        return words.map(word -> "'" + word + "'").collect(Collectors.joining(", "));
    }
}
