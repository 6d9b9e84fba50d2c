package org.benchleaf.compose.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.json.JsonTree;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.KeyList;

/** One file format's schema, read for people: every key with its meaning, its words and an example. */
final class FormatSchema {

    /** The formats, in the order in which an author meets them. */
    static final List<String> NAMES = List.of("case", "translation", "studio", "materials", "glossary", "sources",
            "class", "issues", "substances", "rules", "record");

    private final String name;
    private final String text;
    private final JsonTree root;

    private FormatSchema(String name, String text, JsonTree root) {
        this.name = name;
        this.text = text;
        this.root = root;
    }

    static FormatSchema named(String name) {
        try (InputStream file = FormatSchema.class.getResourceAsStream("/schema/" + name + ".schema.json")) {
            if (file == null) {
                throw new IllegalStateException("the schema of " + name + " is missing from the program");
            }
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return new FormatSchema(name, text, JsonTree.read(text));
        } catch (IOException broken) {
            throw new UncheckedIOException("the schema of " + name + " cannot be read", broken);
        }
    }

    /** The schema's own file, for editors that complete keys. */
    DataFile file() {
        return new DataFile(path(), text);
    }

    /** Whether the file belongs to one case; the others belong to the studio. */
    boolean isOfCase() {
        return name.equals("case") || name.equals("translation") || name.equals("record");
    }

    String path() {
        return "schema/" + name + ".schema.json";
    }

    String title() {
        return root.at("title").text();
    }

    String description() {
        return root.at("description").text();
    }

    /** The keys at the head of the file that hold no others. */
    List<KeyList.Entry> plainKeys() {
        List<KeyList.Entry> entries = new ArrayList<>();
        heads().forEach((key, node) -> {
            if (children(node).isEmpty()) {
                entries.add(entry(key, node, needed(holder(), key)));
            }
        });
        return entries;
    }

    /** The keys at the head of the file that hold others, with all below them; then what several keys take, such as conditions. */
    Map<String, List<KeyList.Entry>> groups() {
        Map<String, List<KeyList.Entry>> groups = new LinkedHashMap<>();
        heads().forEach((key, node) -> {
            if (!children(node).isEmpty()) {
                List<KeyList.Entry> entries = new ArrayList<>();
                collect(key, node, needed(holder(), key), entries);
                groups.put(node.at("title").textOr(key), entries);
            }
        });
        root.at("$defs").fields().forEach((name, node) -> {
            List<KeyList.Entry> entries = new ArrayList<>();
            collect(name, node, false, entries);
            groups.put(node.at("title").textOr(name), entries);
        });
        return groups;
    }

    /** Where keys are ids, as in a glossary, the head of the file is one such entry. */
    private JsonTree holder() {
        return root.at("properties").isObject() ? root : root.at("additionalProperties");
    }

    private Map<String, JsonTree> heads() {
        return holder().at("properties").fields();
    }

    private static void collect(String path, JsonTree node, boolean needed, List<KeyList.Entry> into) {
        into.add(entry(path, node, needed));
        children(node).forEach((key, child) -> collect(path + (isList(node) ? "[]." : ".") + key, child,
                needed(isList(node) ? node.at("items") : node, key), into));
    }

    /** What stands below a key: its own keys, those of a list's items, or what stands under each id. */
    private static Map<String, JsonTree> children(JsonTree node) {
        JsonTree holder = isList(node) ? node.at("items") : node;
        Map<String, JsonTree> children = holder.at("properties").fields();
        if (holder.at("additionalProperties").isObject()) {
            children.put("…", holder.at("additionalProperties"));
        }
        return children;
    }

    private static boolean isList(JsonTree node) {
        return node.at("items").isObject();
    }

    private static boolean needed(JsonTree holder, String key) {
        return holder.at("required").items().stream().anyMatch(name -> name.text().equals(key));
    }

    private static KeyList.Entry entry(String path, JsonTree node, boolean needed) {
        JsonTree holder = node.has("enum") || node.has("knownWords") ? node : node.at("items");
        List<KeyList.Word> allowed = new ArrayList<>();
        List<JsonTree> words = holder.at("enum").items();
        for (int at = 0; at < words.size(); at++) {
            allowed.add(new KeyList.Word(words.get(at).text(),
                    Optional.of(holder.at("enumDescriptions").at(at).text()).filter(means -> !means.isEmpty())));
        }
        holder.at("knownWords").fields().forEach((word, means) -> allowed.add(new KeyList.Word(word, Optional.of(means.text()))));
        Optional<String> example = children(node).isEmpty()
                ? node.at("examples").items().stream().findFirst().map(FormatSchema::written) : Optional.empty();
        return new KeyList.Entry(path, needed, node.at("description").text(), allowed, holder.has("knownWords"), example);
    }

    /** An example as it stands in a case file: a list in brackets, a group in braces. */
    private static String written(JsonTree value) {
        if (value.isList()) {
            List<String> items = new ArrayList<>();
            value.items().forEach(item -> items.add(written(item)));
            return "[" + String.join(", ", items) + "]";
        }
        if (value.isObject()) {
            List<String> pairs = new ArrayList<>();
            value.fields().forEach((key, item) -> pairs.add(key + ": " + written(item)));
            return "{" + String.join(", ", pairs) + "}";
        }
        return value.text();
    }
}
