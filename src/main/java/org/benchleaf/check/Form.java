package org.benchleaf.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.json.JsonSchema;
import org.benchleaf.json.JsonTree;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.MissingValue;
import org.benchleaf.read.Node;
import org.benchleaf.read.YamlText;

/**
 * Holds a file against its JSON Schema and says in our own words, at the place of the value or key, what does not fit.
 *
 * <p>A form is loaded when it is first needed: the validator takes longer to start than all the rest of a check.
 */
enum Form {
    CASE, TRANSLATION, STUDIO, MATERIALS, GLOSSARY, SOURCES, CLASS, ISSUES, RECORD;

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d{0,15})(\\.\\d{1,15})?");
    private static final String NOT_KNOWN = MissingValue.Kind.NOT_KNOWN.word();
    private static final int MOST_WORDS_LISTED = 12;

    private JsonTree description;
    private JsonSchema schema;

    /** Says everything that does not fit the form. */
    void check(Node.Mapping root, Messages messages) {
        check(gaps(root, false), messages);
    }

    /**
     * What a file leaves open.
     *
     * @param draft whether it may
     */
    Gaps gaps(Node.Mapping root, boolean draft) {
        return new Gaps(root, draft, this::meaning);
    }

    /** Says everything that does not fit the form and is not only left open. */
    void check(Gaps gaps, Messages messages) {
        load();
        for (JsonSchema.Misfit misfit : schema.misfits(json(gaps.known()))) {
            new Slip(misfit, gaps, messages).tell();
        }
        gaps.tellMarks(messages);
    }

    /** What stands at a JSON Pointer; empty if nothing does by this form. */
    private Optional<FieldDescription> meaning(String pointer) {
        load();
        JsonTree part = description;
        for (String key : pointer.substring(1).split("/")) {
            String plain = key.replace("~1", "/").replace("~0", "~");
            part = part.at("properties").has(plain) ? part.at("properties").at(plain)
                    : part.at("additionalProperties").isObject() ? part.at("additionalProperties") : part.at("items");
        }
        return part.isMissing() ? Optional.empty()
                : Optional.of(new FieldDescription(part.at("description").textOr("It is needed."), example(part), takesWords(part),
                        part.has("enum"), part.at("type").text().equals("array")));
    }

    /** Whether any text may stand there, or these words by name, and so the words for a value that nobody recorded. */
    private static boolean takesWords(JsonTree part) {
        JsonTree types = part.at("type");
        boolean text = types.isList() ? types.items().stream().anyMatch(Form::isString) : isString(types);
        boolean open = !part.has("enum") || part.at("enum").items().stream().anyMatch(word -> word.text().equals(NOT_KNOWN));
        return text && open && !part.has("pattern");
    }

    private static boolean isString(JsonTree type) {
        return type.text().equals("string");
    }

    /** Loads the form, which takes longer than all the rest of a check, before it is needed. */
    synchronized void load() {
        if (schema != null) {
            return;
        }
        String resource = "/schema/" + name().toLowerCase(Locale.ROOT) + ".schema.json";
        try (InputStream in = Form.class.getResourceAsStream(resource)) {
            description = JsonTree.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(resource + " cannot be read", broken);
        }
        schema = new JsonSchema(description);
    }

    /** The tree as an editor's validator would see it: plain numbers are numbers, everything else is text. */
    private static JsonTree json(Node node) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, JsonTree> entries = new LinkedHashMap<>();
            mapping.entries().forEach((key, entry) -> entries.put(key, json(entry.value())));
            return JsonTree.object(entries);
        }
        if (node instanceof Node.Sequence sequence) {
            return JsonTree.list(sequence.items().stream().map(Form::json).toList());
        }
        Node.Scalar scalar = (Node.Scalar) node;
        if (scalar.isNothing()) {
            return JsonTree.nothing();
        }
        return scalar.plain() && NUMBER.matcher(scalar.text()).matches() ? JsonTree.number(new BigDecimal(scalar.text()))
                : JsonTree.text(scalar.text());
    }

    /** One thing that does not fit. */
    private final class Slip {
        private final JsonSchema.Misfit misfit;
        private final Gaps gaps;
        private final Messages messages;
        private Node node;
        private JsonTree part = description;
        private JsonTree around = description;

        Slip(JsonSchema.Misfit misfit, Gaps gaps, Messages messages) {
            this.misfit = misfit;
            this.gaps = gaps;
            this.messages = messages;
            this.node = gaps.known();
            misfit.way().forEach(this::descend);
        }

        private void descend(String key) {
            around = part;
            if (node instanceof Node.Mapping mapping) {
                node = mapping.get(key).orElse(node);
                part = part.at("properties").has(key) ? part.at("properties").at(key)
                        : part.at("additionalProperties");
            } else if (node instanceof Node.Sequence sequence) {
                node = sequence.items().get(Integer.parseInt(key));
                part = part.at("items");
            }
        }

        void tell() {
            switch (misfit.keyword()) {
                case "required" -> missing();
                case "additionalProperties" -> unknownKey();
                case "enum" -> notOneOf();
                case "type" -> wrongShape();
                case "pattern" -> messages.add(FormMessages.BAD_ID.at(node.place(), "found", text(node)));
                case "propertyNames" -> badKey();
                case "minItems", "minProperties", "maxProperties" -> tooFew();
                default -> messages.add(FormMessages.WRONG_SHAPE.at(node.place(), "found", "something",
                        "wanted", "another value", "example", example()));
            }
        }

        /** An example of the part, else what the example of the list or group around it begins with. */
        private String example() {
            Optional<JsonTree> first = around.at("examples").at(0).items().stream().findFirst();
            return part.has("examples") || first.isEmpty() ? Form.example(part) : written(first.get());
        }

        private void missing() {
            String key = misfit.property().orElseThrow();
            JsonTree wanted = part.at("properties").at(key);
            gaps.missing(node, key, FormMessages.MISSING.at(node.place(), "key", key,
                    "why", wanted.at("description").textOr("It is needed."),
                    "example", key + ": " + Form.example(wanted)), messages);
        }

        private void unknownKey() {
            String key = misfit.property().orElseThrow();
            Set<String> known = part.at("properties").fields().keySet();
            if (node instanceof Node.Mapping mapping && mapping.get(key).filter(Slip::isNothing).isPresent()) {
                messages.add(FormMessages.UNKNOWN_KEY.at(keyPlace(key), "key", key, "remedy",
                        "A comma ends a value inside braces: put the whole text before it and this into double quotes."));
                return;
            }
            messages.add(FormMessages.UNKNOWN_KEY.at(keyPlace(key), "key", key,
                    "remedy", Nearest.to(key, known).map(near -> "Did you mean '" + near + "'?")
                            .orElse("Keys here are: " + String.join(", ", known) + ".")));
        }

        private static boolean isNothing(Node value) {
            return value instanceof Node.Scalar scalar && scalar.isNothing();
        }

        private Place keyPlace(String key) {
            return node instanceof Node.Mapping mapping && mapping.entries().containsKey(key)
                    ? mapping.entries().get(key).keyPlace() : node.place();
        }

        private void notOneOf() {
            messages.add(FormMessages.NOT_ONE_OF.at(node.place(), "found", text(node),
                    "remedy", remedy(text(node), part.at("enum"))));
        }

        private String remedy(String found, JsonTree words) {
            List<String> known = words.items().stream().map(JsonTree::text).toList();
            Optional<String> near = known.contains("yes") && found.matches("(?i)true|false")
                    ? Optional.of(found.equalsIgnoreCase("true") ? "yes" : "no") : Nearest.to(found, known);
            return near.map(word -> "Did you mean '" + word + "'?" + (known.size() > MOST_WORDS_LISTED ? ""
                    : " The words are: " + String.join(", ", known) + "."))
                    .orElse("The words are: " + String.join(", ", known) + ".");
        }

        private void wrongShape() {
            if (node instanceof Node.Scalar scalar && scalar.isNothing()) {
                messages.add(FormMessages.NOTHING_WRITTEN.at(node.place()));
                return;
            }
            messages.add(FormMessages.WRONG_SHAPE.at(node.place(), "found", shape(node), "wanted", wanted(),
                    "example", example()));
        }

        private String wanted() {
            List<String> shapes = new ArrayList<>();
            JsonTree types = part.at("type");
            (types.isList() ? types.items() : List.of(types)).forEach(type -> {
                String shape = switch (type.text()) {
                    case "array" -> "a list";
                    case "object" -> "a group of keys";
                    default -> "a single value";
                };
                if (!shapes.contains(shape)) {
                    shapes.add(shape);
                }
            });
            return String.join(" or ", shapes);
        }

        private void badKey() {
            String key = misfit.value().filter(JsonTree::isText).map(JsonTree::text).or(misfit::property).orElseThrow();
            JsonTree names = part.at("propertyNames");
            messages.add(names.has("enum")
                    ? FormMessages.NOT_ONE_OF.at(keyPlace(key), "found", key, "remedy", remedy(key, names.at("enum")))
                    : FormMessages.BAD_ID.at(keyPlace(key), "found", key));
        }

        private void tooFew() {
            if (gaps.explains(node.place())) {
                return;
            }
            messages.add(node instanceof Node.Mapping
                    ? FormMessages.WRONG_SHAPE.at(node.place(), "found", "a group with other keys",
                            "wanted", "exactly one liquid with its strength, 'rest' and 'from'",
                            "example", example())
                    : FormMessages.NOTHING_WRITTEN.at(node.place()));
        }
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : shape(node);
    }

    private static String shape(Node node) {
        return node instanceof Node.Mapping ? "a group of keys" : node instanceof Node.Sequence ? "a list"
                : "a single value";
    }

    /** The first example of a part, as one would write it in YAML. */
    private static String example(JsonTree part) {
        return written(part.at("examples").at(0));
    }

    private static String written(JsonTree value) {
        if (value.isList()) {
            List<String> items = new ArrayList<>();
            value.items().forEach(item -> items.add(written(item)));
            return "[" + String.join(", ", items) + "]";
        }
        if (value.isObject()) {
            List<String> entries = new ArrayList<>();
            value.fields().forEach((key, one) -> entries.add(key + ": " + written(one)));
            return "{" + String.join(", ", entries) + "}";
        }
        return value.isText() ? YamlText.inBraces(value.text()) : value.text();
    }
}
