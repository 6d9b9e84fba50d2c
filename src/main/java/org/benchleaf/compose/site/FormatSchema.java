package org.benchleaf.compose.site;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.KeyList;

/** One file format's schema, read for people: every key with its meaning, its words and an example. */
final class FormatSchema {

    /** The formats, in the order in which an author meets them. */
    static final List<String> NAMES = List.of("case", "translation", "studio", "materials", "glossary", "sources",
            "class", "issues", "substances", "record");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final String name;
    private final String text;
    private final JsonNode root;

    private FormatSchema(String name, String text, JsonNode root) {
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
            return new FormatSchema(name, text, JSON.readTree(text));
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
        return root.path("title").asText();
    }

    String description() {
        return root.path("description").asText();
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

    /** The keys at the head of the file that hold others, with all below them. */
    Map<String, List<KeyList.Entry>> groups() {
        Map<String, List<KeyList.Entry>> groups = new LinkedHashMap<>();
        heads().forEach((key, node) -> {
            if (!children(node).isEmpty()) {
                List<KeyList.Entry> entries = new ArrayList<>();
                collect(key, node, needed(holder(), key), entries);
                groups.put(node.path("title").asText(key), entries);
            }
        });
        return groups;
    }

    /** Where keys are ids, as in a glossary, the head of the file is one such entry. */
    private JsonNode holder() {
        return root.path("properties").isObject() ? root : root.path("additionalProperties");
    }

    private Map<String, JsonNode> heads() {
        return fields(holder().path("properties"));
    }

    private static void collect(String path, JsonNode node, boolean needed, List<KeyList.Entry> into) {
        into.add(entry(path, node, needed));
        children(node).forEach((key, child) -> collect(path + (isList(node) ? "[]." : ".") + key, child,
                needed(isList(node) ? node.path("items") : node, key), into));
    }

    /** What stands below a key: its own keys, those of a list's items, or what stands under each id. */
    private static Map<String, JsonNode> children(JsonNode node) {
        JsonNode holder = isList(node) ? node.path("items") : node;
        Map<String, JsonNode> children = fields(holder.path("properties"));
        if (holder.path("additionalProperties").isObject()) {
            children.put("…", holder.path("additionalProperties"));
        }
        return children;
    }

    private static boolean isList(JsonNode node) {
        return node.path("items").isObject();
    }

    private static Map<String, JsonNode> fields(JsonNode object) {
        Map<String, JsonNode> fields = new LinkedHashMap<>();
        object.properties().forEach(one -> fields.put(one.getKey(), one.getValue()));
        return fields;
    }

    private static boolean needed(JsonNode holder, String key) {
        return StreamSupport.stream(holder.path("required").spliterator(), false)
                .anyMatch(name -> name.asText().equals(key));
    }

    private static KeyList.Entry entry(String path, JsonNode node, boolean needed) {
        JsonNode holder = node.has("enum") ? node : node.path("items");
        List<KeyList.Word> allowed = new ArrayList<>();
        for (int at = 0; at < holder.path("enum").size(); at++) {
            allowed.add(new KeyList.Word(holder.path("enum").get(at).asText(),
                    Optional.of(holder.path("enumDescriptions").path(at).asText()).filter(means -> !means.isEmpty())));
        }
        Optional<String> example = children(node).isEmpty() && node.path("examples").size() > 0
                ? Optional.of(written(node.path("examples").get(0))) : Optional.empty();
        return new KeyList.Entry(path, needed, node.path("description").asText(), allowed, example);
    }

    /** An example as it stands in a case file: a list in brackets, a group in braces. */
    private static String written(JsonNode value) {
        if (value.isArray()) {
            List<String> items = new ArrayList<>();
            value.forEach(item -> items.add(written(item)));
            return "[" + String.join(", ", items) + "]";
        }
        if (value.isObject()) {
            List<String> pairs = new ArrayList<>();
            fields(value).forEach((key, item) -> pairs.add(key + ": " + written(item)));
            return "{" + String.join(", ", pairs) + "}";
        }
        return value.asText();
    }
}
