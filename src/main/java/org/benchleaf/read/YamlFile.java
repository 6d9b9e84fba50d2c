package org.benchleaf.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.model.MissingValue;

/**
 * The YAML of one file, its private values taken out of the tree and of the text that messages show.
 *
 * @param root the mapping at its top; empty if there is none
 * @param lines the file's lines as messages may show them
 * @param confidential the private values
 */
record YamlFile(Optional<Node.Mapping> root, Lines lines, Confidential confidential) {

    private static final String PRIVATE_IN = "object";
    private static final String PRIVATE = "private";
    private static final String WITHHELD = "withheld";

    static YamlFile read(TextFile file, int start, int end, Messages messages) {
        Lines lines = file.lines();
        Lines byLines = lines.shownAs(new SourceText(file.name(), PrivateBlots.ofLines(file)));
        Optional<YamlReader.Events> events = YamlReader.events(file.text().substring(start, end), start, byLines, messages);
        if (events.isEmpty()) {
            return new YamlFile(Optional.empty(), lines, Confidential.none());
        }
        Messages first = new Messages();
        Optional<Node> root = YamlReader.tree(events.get(), lines, first);
        Optional<Node> secret = root.flatMap(node -> in(node, PRIVATE_IN)).flatMap(node -> in(node, PRIVATE));
        String blotted = root.map(node -> PrivateBlots.of(file, node)).orElse(file.text());
        if (secret.isEmpty() && blotted.equals(file.text())) {
            messages.addAll(first);
            return new YamlFile(mapping(root, lines, start, messages), lines, Confidential.none());
        }
        List<Confidential.Secret> secrets = new ArrayList<>();
        // Read again, so that every place of the tree shows the text with the private values blotted out.
        Lines shown = lines.shownAs(new SourceText(file.name(), blotted));
        Optional<Node> open = YamlReader.tree(events.get(), shown, messages);
        open.flatMap(node -> in(node, PRIVATE_IN)).flatMap(node -> in(node, PRIVATE))
                .ifPresent(shownSecret -> gather("", secret.get(), shownSecret.place().text(), secrets));
        Optional<Node.Mapping> top = mapping(open, shown, start, messages).map(YamlFile::withoutSecrets);
        return new YamlFile(top, shown, new Confidential(secrets));
    }

    private static Optional<Node.Mapping> mapping(Optional<Node> root, Lines lines, int start, Messages messages) {
        if (root.isPresent() && root.get() instanceof Node.Mapping mapping) {
            return Optional.of(mapping);
        }
        messages.add(ReadingMessages.NO_KEYS.at(root.map(Node::place).orElse(lines.place(start, start + 1, ""))));
        return Optional.empty();
    }

    private static Optional<Node> in(Node node, String key) {
        return node instanceof Node.Mapping mapping ? mapping.get(key) : Optional.empty();
    }

    /** Each text, each entry of a list, and each group of keys of single texts is a secret. */
    private static void gather(String field, Node node, SourceText shown, List<Confidential.Secret> secrets) {
        if (node instanceof Node.Scalar scalar && isSecret(scalar)) {
            secrets.add(Confidential.Secret.plain(field, scalar.text().strip(), shownAs(shown, scalar.place())));
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> gather(field, item, shown, secrets));
        } else if (node instanceof Node.Mapping mapping) {
            group(field, mapping, shown, secrets);
        }
    }

    /** Whether there is something to keep: the words for a missing value are nobody's. */
    private static boolean isSecret(Node.Scalar scalar) {
        return !scalar.text().isBlank() && MissingValue.read(scalar.text()).isEmpty();
    }

    private static void group(String field, Node.Mapping mapping, SourceText shown, List<Confidential.Secret> secrets) {
        Map<String, String> parts = new LinkedHashMap<>();
        mapping.entries().forEach((key, entry) -> {
            if (!field.isEmpty() && entry.value() instanceof Node.Scalar scalar) {
                parts.put(key, isSecret(scalar) ? scalar.text().strip() : "");
            } else {
                gather(field.isEmpty() ? key : field, entry.value(), shown, secrets);
            }
        });
        parts.values().removeIf(String::isEmpty);
        if (!parts.isEmpty()) {
            secrets.add(new Confidential.Secret(field, parts, shownAs(shown, mapping.place())));
        }
    }

    private static Place shownAs(SourceText shown, Place place) {
        return new Place(shown, place.line(), place.column(), place.length(), place.pointer());
    }

    private static Node.Mapping withoutSecrets(Node.Mapping root) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>(root.entries());
        entries.computeIfPresent(PRIVATE_IN, (key, object) -> object.value() instanceof Node.Mapping mapping
                ? new Node.Entry(object.keyPlace(), withheld(mapping)) : object);
        return new Node.Mapping(entries, root.place());
    }

    private static Node.Mapping withheld(Node.Mapping object) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>(object.entries());
        entries.computeIfPresent(PRIVATE, (key, entry) -> new Node.Entry(entry.keyPlace(), blank(entry.value())));
        return new Node.Mapping(entries, object.place());
    }

    private static Node blank(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return new Node.Scalar(isSecret(scalar) ? WITHHELD : MissingValue.read(scalar.text())
                    .map(missing -> missing.kind().word()).orElse(""), scalar.plain(), scalar.place());
        }
        if (node instanceof Node.Sequence sequence) {
            return new Node.Sequence(sequence.items().stream().map(YamlFile::blank).toList(), sequence.place());
        }
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        ((Node.Mapping) node).entries().forEach((key, entry) ->
                entries.put(key, new Node.Entry(entry.keyPlace(), blank(entry.value()))));
        return new Node.Mapping(entries, node.place());
    }
}
