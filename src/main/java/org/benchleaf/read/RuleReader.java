package org.benchleaf.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Messages;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Source;

/** Reads the rules of the trade and the matrix: those shipped with the program, then what a studio changes and adds. */
public final class RuleReader {

    private static final String SHIPPED = "/reference/";
    private static final String STUDIO_FILE = "rules.yaml";
    private static final List<String> OWN_KEYS = List.of("terms", "actions", "rules", "rows");
    private static final List<String> STUDIO_KEYS = List.of("terms", "rules", "changes", "rows", "cells");

    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final Map<String, Matrix.Action> actions = new LinkedHashMap<>();
    private final Map<String, Matrix.Row> rows = new LinkedHashMap<>();
    private final Map<String, Condition> terms = new HashMap<>();
    private final Set<String> sources;

    private RuleReader(Set<String> sources) {
        this.sources = sources;
    }

    /**
     * The rules and the matrix that hold for a content folder.
     *
     * @param otherSources keys of the published sources that a studio's rules may cite besides those of the rules
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static RuleBook read(Path contentRoot, Set<String> otherSources, Messages messages) {
        List<Source> own = sources();
        Set<String> known = new HashSet<>(otherSources);
        own.forEach(source -> known.add(source.key()));
        RuleReader reader = new RuleReader(known);
        // The matrix first: rules name its actions and share its terms.
        reader.shipped("matrix.yaml");
        reader.shipped("rules.yaml");
        ContentFolder content = new ContentFolder(contentRoot);
        if (content.holds(STUDIO_FILE)) {
            content.read(content.resolve(STUDIO_FILE), FrontMatter.MOST_BYTES, messages)
                    .flatMap(text -> YamlFile.read(text, 0, text.text().length(), messages).root())
                    .ifPresent(root -> reader.take(root, true, messages));
        }
        return new RuleBook(List.copyOf(reader.rules.values()),
                new Matrix(List.copyOf(reader.actions.values()), List.copyOf(reader.rows.values())), own);
    }

    private static List<Source> sources() {
        return OwnYaml.list(SHIPPED + "sources-trade.yaml").stream().map(row -> new Source(row.text("key"),
                row.text("author"), row.text("year"), row.text("title"), row.text("where"),
                row.optionalText("address"), row.text("status"), !row.flag("unpublished"))).toList();
    }

    private void shipped(String name) {
        Messages messages = new Messages();
        take(OwnFile.tree(SHIPPED + name), false, messages);
        if (!messages.isEmpty()) {
            throw new IllegalStateException(SHIPPED + name + " cannot be read: " + messages.all());
        }
    }

    private void take(Node.Mapping root, boolean ofStudio, Messages messages) {
        ConditionReader conditions = new ConditionReader(terms, actions.keySet(), messages);
        RuleRows read = new RuleRows(conditions, sources, ofStudio, messages);
        new RowFields(root, messages).only(ofStudio ? STUDIO_KEYS : OWN_KEYS);
        root.get("terms").ifPresent(conditions::terms);
        items(root, "actions", messages).forEach(node ->
                read.action(node).ifPresent(action -> actions.put(action.id(), action)));
        items(root, "rules", messages).forEach(node -> read.rule(node).ifPresent(rule -> add(rule, messages)));
        items(root, "rows", messages).forEach(node ->
                read.row(node, actions.keySet()).ifPresent(row -> add(row, messages)));
        items(root, "changes", messages).forEach(node ->
                read.change(node, rules).ifPresent(rule -> rules.put(rule.id(), rule)));
        items(root, "cells", messages).forEach(node -> read.cell(node, rows, actions.keySet())
                .ifPresent(row -> rows.put(row.id(), row)));
    }

    private void add(Rule rule, Messages messages) {
        if (rules.putIfAbsent(rule.id(), rule) != null) {
            messages.add(RuleMessages.RULE_ID_TWICE.at(rule.place(), "rule", rule.id()));
        }
    }

    private void add(Matrix.Row row, Messages messages) {
        if (rows.putIfAbsent(row.id(), row) != null) {
            messages.add(RuleMessages.RULE_ID_TWICE.at(row.place(), "rule", row.id()));
        }
    }

    private static List<Node.Mapping> items(Node.Mapping root, String key, Messages messages) {
        Optional<Node> list = root.get(key);
        if (list.isEmpty()) {
            return List.of();
        }
        List<Node.Mapping> mappings = new ArrayList<>();
        List<Node> items = list.get() instanceof Node.Sequence sequence ? sequence.items() : List.of(list.get());
        for (Node item : items) {
            if (item instanceof Node.Mapping mapping) {
                mappings.add(mapping);
            } else {
                messages.add(RuleMessages.RULE_ROW_INCOMPLETE.at(item.place(), "key", key));
            }
        }
        return mappings;
    }
}
