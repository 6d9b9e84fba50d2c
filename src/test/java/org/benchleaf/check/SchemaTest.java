package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.benchleaf.model.StepKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaTest {

    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @ParameterizedTest
    @ValueSource(strings = {"case", "translation", "studio", "materials", "glossary", "sources", "class", "substances", "record"})
    void a_schema_is_one_by_the_standard_s_own_schema(String name) throws IOException {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(schema(name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"case", "translation", "studio", "materials", "glossary", "sources", "class", "substances", "record"})
    void every_property_has_a_title_a_description_and_an_example(String name) throws IOException {
        List<String> poor = new ArrayList<>();
        walk("", schema(name), poor);
        assertThat(poor).isEmpty();
    }

    @Test
    void every_verb_of_the_trade_can_be_written() throws IOException {
        List<String> kinds = new ArrayList<>();
        schema("case").at("/properties/steps/items/properties/kind/enum").forEach(word -> kinds.add(word.asText()));
        List<String> words = new ArrayList<>(List.of(StepKind.values()).stream().map(StepKind::word).toList());
        words.add("other");
        assertThat(kinds).containsExactlyInAnyOrderElementsOf(words);
    }

    /** 'Yes' and 'no' need none; a list that another one explains needs none again. */
    @Test
    void every_word_of_a_closed_list_of_the_case_file_has_its_meaning() throws IOException {
        Map<String, String> meanings = new TreeMap<>();
        Map<String, List<String>> unexplained = new TreeMap<>();
        for (JsonNode holder : schema("case").findParents("enum")) {
            List<String> words = texts(holder.get("enum"));
            List<String> means = texts(holder.path("enumDescriptions"));
            if (means.isEmpty() && !words.equals(List.of("yes", "no"))) {
                unexplained.put(words.toString(), words);
            } else if (!means.isEmpty()) {
                assertThat(means).as(words.toString()).hasSameSizeAs(words).doesNotContain("");
                IntStream.range(0, words.size()).forEach(at -> meanings.put(words.get(at), means.get(at)));
            }
        }
        unexplained.forEach((list, words) -> assertThat(meanings).as(list).containsKeys(words.toArray(String[]::new)));
        assertThat(meanings).hasSizeGreaterThan(100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"case", "class", "glossary", "issues", "materials", "record", "rules", "sources", "studio", "substances",
        "translation"})
    void where_words_of_a_closed_list_have_meanings_each_has_its_own(String file) throws IOException {
        for (JsonNode holder : schema(file).findParents("enumDescriptions")) {
            assertThat(texts(holder.get("enumDescriptions"))).as(holder.get("enum").toString()).hasSameSizeAs(texts(holder.get("enum")))
                    .doesNotHaveDuplicates();
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }

    private static void walk(String where, JsonNode schema, List<String> poor) {
        schema.path("properties").properties().forEach(property -> {
            String place = where + "/" + property.getKey();
            JsonNode part = property.getValue();
            if (part.path("title").asText().isBlank() || part.path("description").asText().isBlank()
                    || part.path("examples").isEmpty()) {
                poor.add(place);
            }
            walk(place, part, poor);
        });
        if (schema.path("items").isObject()) {
            walk(where + "/…", schema.path("items"), poor);
        }
        if (schema.path("additionalProperties").isObject()) {
            walk(where + "/*", schema.path("additionalProperties"), poor);
        }
    }

    private static JsonNode schema(String name) throws IOException {
        return new ObjectMapper().readTree(SchemaTest.class.getResourceAsStream("/schema/" + name + ".schema.json"));
    }
}
