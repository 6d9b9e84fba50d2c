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
 * @param searched what is searched for them: the whole text without the values themselves; one that stands at a wrong place as well
 *        is in it, and must be found there
 */
record YamlFile(Optional<Node.Mapping> root, Lines lines, Confidential confidential, SourceText searched) {

    private static final String PRIVATE_IN = "object";
    private static final String PRIVATE = "private";
    private static final String WITHHELD = "withheld";

    static YamlFile read(TextFile file, int start, int end, Messages messages) {
        Lines lines = file.lines();
        Lines byLines = lines.shownAs(PrivateBlots.ofLines(file));
        Optional<YamlReader.Events> events = YamlReader.events(file.text().substring(start, end), start, byLines, messages);
        if (events.isEmpty()) {
            return new YamlFile(Optional.empty(), byLines, Confidential.none(), byLines.shown());
        }
        Optional<Node> root = YamlReader.tree(events.get(), lines, new Messages());
        Optional<Node> secret = root.flatMap(YamlFile::secret);
        // Read again, so that every place of the tree shows the text with the private values blotted out.
        Lines shown = root.map(node -> lines.shownAs(PrivateBlots.of(file, node))).orElse(lines);
        Optional<Node> open = YamlReader.tree(events.get(), shown, messages);
        List<Confidential.Secret> secrets = new ArrayList<>();
        secret.ifPresent(node -> gather("", node, shown.shown(), secrets));
        Optional<Node.Mapping> top = mapping(open, shown, start, messages).map(YamlFile::withoutSecrets);
        return new YamlFile(top, shown, new Confidential(secrets),
                secret.map(node -> PrivateBlots.ofValue(file, node)).orElse(lines.shown()));
    }

    private static Optional<Node> secret(Node root) {
        return in(root, PRIVATE_IN).flatMap(node -> in(node, PRIVATE));
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
