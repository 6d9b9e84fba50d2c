package org.benchleaf.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * A place of a schema where one value is written.
 *
 * @param way the keys that lead to it; {@link #ANY} for an entry of any name, {@link #ITEM} for one of a list
 */
record TextField(List<String> way) {

    static final String ANY = "*";
    static final String ITEM = "-";
    private static final Set<String> NESTED = Set.of("object", "array", "null");

    TextField {
        way = List.copyOf(way);
    }

    /** Every field of a schema, in its order. */
    static List<TextField> of(Path schema) {
        List<TextField> fields = new ArrayList<>();
        try {
            walk(new ObjectMapper().readTree(schema.toFile()), List.of(), fields);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return fields;
    }

    private static void walk(JsonNode schema, List<String> way, List<TextField> fields) {
        JsonNode type = schema.path("type");
        boolean nested = type.isTextual() && NESTED.contains(type.asText())
                || type.isArray() && StreamSupport.stream(type.spliterator(), false).allMatch(each -> NESTED.contains(each.asText()));
        if (!nested) {
            fields.add(new TextField(way));
        }
        schema.path("properties").properties().forEach(each -> walk(each.getValue(), and(way, each.getKey()), fields));
        if (schema.path("additionalProperties").isObject()) {
            walk(schema.path("additionalProperties"), and(way, ANY), fields);
        }
        if (schema.path("items").isObject()) {
            walk(schema.path("items"), and(way, ITEM), fields);
        }
    }

    private static List<String> and(List<String> way, String key) {
        List<String> longer = new ArrayList<>(way);
        longer.add(key);
        return longer;
    }

    @Override
    public String toString() {
        return "/" + String.join("/", way);
    }
}
