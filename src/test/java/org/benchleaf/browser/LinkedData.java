package org.benchleaf.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a page tells programs as JSON-LD. */
final class LinkedData {

    private static final ObjectMapper JSON = new ObjectMapper();
    /** The fields that a person reads too. */
    private static final Set<String> FOR_PEOPLE = Set.of("name", "text", "headline");

    private LinkedData() {
    }

    /** The texts meant for people; a block that is no JSON gives one text that says so. */
    static List<String> textsOf(String json) {
        List<String> texts = new ArrayList<>();
        try {
            collect(JSON.readTree(json), texts);
        } catch (JsonProcessingException broken) {
            texts.add("data that is no JSON: " + broken.getOriginalMessage());
        }
        return texts;
    }

    private static void collect(JsonNode node, List<String> texts) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            if (FOR_PEOPLE.contains(field.getKey()) && field.getValue().isTextual()) {
                texts.add(field.getValue().asText());
            }
        }
        node.forEach(part -> collect(part, texts));
    }
}
