package org.benchleaf.check;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
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
    private static final int MOST_WORDS_LISTED = 12;
    private static final ObjectMapper JSON = new ObjectMapper();
    /** One for all forms, so that what JSON Schema is made of is read once. */
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private JsonNode description;
    private Schema schema;

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
        for (Error error : schema.validate(json(gaps.known()))) {
            new Slip(error, gaps, messages).tell();
        }
        gaps.tellMarks(messages);
    }

    /** What stands at a JSON Pointer; empty if nothing does by this form. */
    private Optional<FieldDescription> meaning(String pointer) {
        load();
        JsonNode part = description;
        for (String key : pointer.substring(1).split("/")) {
            String plain = key.replace("~1", "/").replace("~0", "~");
            part = part.path("properties").has(plain) ? part.path("properties").path(plain)
                    : part.path("additionalProperties").isObject() ? part.path("additionalProperties") : part.path("items");
        }
        return part.isMissingNode() ? Optional.empty()
                : Optional.of(new FieldDescription(part.path("description").asText("It is needed."), example(part), takesWords(part),
                        part.path("type").asText().equals("array")));
    }

    /** Whether any text may stand there, and so the words for a value that nobody recorded. */
    private static boolean takesWords(JsonNode part) {
        JsonNode types = part.path("type");
        boolean text = types.isArray() ? StreamSupport.stream(types.spliterator(), false).anyMatch(Form::isString) : isString(types);
        return text && !part.has("enum") && !part.has("pattern");
    }

    private static boolean isString(JsonNode type) {
        return type.asText().equals("string");
    }

    /** Loads the form, which takes longer than all the rest of a check, before it is needed. */
    synchronized void load() {
        if (schema != null) {
            return;
        }
        String resource = "/schema/" + name().toLowerCase(Locale.ROOT) + ".schema.json";
        try (InputStream in = Form.class.getResourceAsStream(resource)) {
            description = JSON.readTree(in);
        } catch (IOException broken) {
            throw new UncheckedIOException(resource + " cannot be read", broken);
        }
        schema = REGISTRY.getSchema(description);
    }

    /** The tree as an editor's validator would see it: plain numbers are numbers, everything else is text. */
    private static JsonNode json(Node node) {
        if (node instanceof Node.Mapping mapping) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            mapping.entries().forEach((key, entry) -> object.set(key, json(entry.value())));
            return object;
        }
        if (node instanceof Node.Sequence sequence) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            sequence.items().forEach(item -> array.add(json(item)));
            return array;
        }
        Node.Scalar scalar = (Node.Scalar) node;
        if (scalar.isNothing()) {
            return JsonNodeFactory.instance.nullNode();
        }
        if (scalar.plain() && NUMBER.matcher(scalar.text()).matches()) {
            return JsonNodeFactory.instance.numberNode(new BigDecimal(scalar.text()));
        }
        return JsonNodeFactory.instance.textNode(scalar.text());
    }

    /** One thing that does not fit. */
    private final class Slip {
        private final Error error;
        private final Gaps gaps;
        private final Messages messages;
        private Node node;
        private JsonNode part = description;
        private JsonNode around = description;

        Slip(Error error, Gaps gaps, Messages messages) {
            this.error = error;
            this.gaps = gaps;
            this.messages = messages;
            this.node = gaps.known();
            for (int i = 0; i < error.getInstanceLocation().getNameCount(); i++) {
                descend(error.getInstanceLocation().getElement(i));
            }
        }

        private void descend(Object element) {
            around = part;
            if (node instanceof Node.Mapping mapping) {
                String key = element.toString();
                node = mapping.get(key).orElse(node);
                part = part.path("properties").has(key) ? part.path("properties").path(key)
                        : part.path("additionalProperties");
            } else if (node instanceof Node.Sequence sequence) {
                node = sequence.items().get(Integer.parseInt(element.toString()));
                part = part.path("items");
            }
        }

        void tell() {
            switch (error.getKeyword()) {
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
            Iterator<JsonNode> first = around.path("examples").path(0).elements();
            return part.has("examples") || !first.hasNext() ? Form.example(part) : written(first.next());
        }

        private void missing() {
            String key = error.getProperty();
            JsonNode wanted = part.path("properties").path(key);
            gaps.missing(node, key, FormMessages.MISSING.at(node.place(), "key", key,
                    "why", wanted.path("description").asText("It is needed."),
                    "example", key + ": " + Form.example(wanted)), messages);
        }

        private void unknownKey() {
            String key = error.getProperty();
            List<String> known = new ArrayList<>();
            part.path("properties").fieldNames().forEachRemaining(known::add);
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
                    "remedy", remedy(text(node), part.path("enum"))));
        }

        private String remedy(String found, JsonNode words) {
            List<String> known = new ArrayList<>();
            words.forEach(word -> known.add(word.asText()));
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
            JsonNode types = part.path("type");
            (types.isArray() ? types : JsonNodeFactory.instance.arrayNode().add(types)).forEach(type -> {
                String shape = switch (type.asText()) {
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
            String key = error.getInstanceNode().isTextual() ? error.getInstanceNode().asText() : error.getProperty();
            JsonNode names = part.path("propertyNames");
            messages.add(names.has("enum")
                    ? FormMessages.NOT_ONE_OF.at(keyPlace(key), "found", key, "remedy", remedy(key, names.path("enum")))
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
    private static String example(JsonNode part) {
        return written(part.path("examples").path(0));
    }

    private static String written(JsonNode value) {
        if (value.isArray()) {
            List<String> items = new ArrayList<>();
            value.forEach(item -> items.add(written(item)));
            return "[" + String.join(", ", items) + "]";
        }
        if (value.isObject()) {
            List<String> entries = new ArrayList<>();
            value.properties().forEach(entry -> entries.add(entry.getKey() + ": " + written(entry.getValue())));
            return "{" + String.join(", ", entries) + "}";
        }
        return value.isTextual() ? YamlText.inBraces(value.asText()) : value.asText();
    }
}
