package org.benchleaf.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of JSON with all in it. Asked for something that it does not hold, it gives a missing value, never an error. */
public final class JsonTree {

    private static final ObjectMapper JSON = new ObjectMapper(JsonForm.FACTORY);
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonNode node;

    JsonTree(JsonNode node) {
        this.node = node;
    }

    /**
     * Reads a text.
     *
     * @throws IOException if it is no JSON
     */
    public static JsonTree read(String text) throws IOException {
        return new JsonTree(JSON.readTree(text));
    }

    /** An object of these values, in their order. */
    public static JsonTree object(Map<String, JsonTree> values) {
        ObjectNode object = NODES.objectNode();
        values.forEach((name, value) -> object.set(name, value.node));
        return new JsonTree(object);
    }

    /** A list of these values. */
    public static JsonTree list(List<JsonTree> values) {
        ArrayNode list = NODES.arrayNode();
        values.forEach(value -> list.add(value.node));
        return new JsonTree(list);
    }

    /** A text. */
    public static JsonTree text(String text) {
        return new JsonTree(NODES.textNode(text));
    }

    /** A number, as exactly as it was written. */
    public static JsonTree number(BigDecimal number) {
        return new JsonTree(NODES.numberNode(number));
    }

    /** The value that says that nothing stands there. */
    public static JsonTree nothing() {
        return new JsonTree(NODES.nullNode());
    }

    JsonNode node() {
        return node;
    }

    /** The value under a name of an object. */
    public JsonTree at(String name) {
        return new JsonTree(node.path(name));
    }

    /** The value at a place of a list, the first being 0. */
    public JsonTree at(int place) {
        return new JsonTree(node.path(place));
    }

    /** Whether an object has the name. */
    public boolean has(String name) {
        return node.has(name);
    }

    /** Whether it is no value at all. */
    public boolean isMissing() {
        return node.isMissingNode();
    }

    /** Whether it is an object. */
    public boolean isObject() {
        return node.isObject();
    }

    /** Whether it is a list. */
    public boolean isList() {
        return node.isArray();
    }

    /** Whether it is a text. */
    public boolean isText() {
        return node.isTextual();
    }

    /** The words of a text, the digits of a number; empty for a list, an object or a missing value. */
    public String text() {
        return node.asText();
    }

    /** As {@link #text()}, with other words where the value is missing. */
    public String textOr(String otherwise) {
        return node.asText(otherwise);
    }

    /** The values of a list or an object; of any other none. */
    public List<JsonTree> items() {
        List<JsonTree> items = new ArrayList<>();
        node.forEach(item -> items.add(new JsonTree(item)));
        return items;
    }

    /** The values of an object by name, in their order; of any other none. */
    public Map<String, JsonTree> fields() {
        Map<String, JsonTree> fields = new LinkedHashMap<>();
        node.properties().forEach(field -> fields.put(field.getKey(), new JsonTree(field.getValue())));
        return fields;
    }
}
