package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SchemaOrg;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The description of a case that was taken away as a folder, held against what RO-Crate 1.2 says must be. */
class CrateTest {

    private static final SortedMap<String, Long> FOLDER = new TreeMap<>();
    private static Map<String, JsonNode> entities;
    private static JsonNode document;

    @BeforeAll
    static void describe_a_case() throws IOException {
        String home = "cases/tide-table/";
        CasePages pages = DemoSite.made().cases().stream().filter(one -> one.card().id().equals("tide-table")).findFirst().orElseThrow();
        DemoSite.made().files().stream().filter(file -> file.path().startsWith(home)).forEach(file ->
                FOLDER.put(file.path().substring(home.length()), (long) file.bytes().length));
        FOLDER.put("pictures/before-480.jpg", 4711L);
        FOLDER.put("assets/site.css", 99L);
        document = new ObjectMapper().readTree(pages.book().crate().orElseThrow().describe(FOLDER));
        entities = new LinkedHashMap<>();
        document.get("@graph").forEach(entity -> entities.put(entity.get("@id").asText(), entity));
    }

    /** "RO-Crate Metadata Descriptor" and "Direct properties of the Root Data Entity", RO-Crate 1.2. */
    @Test
    void descriptor_and_root_have_what_must_be_there() {
        assertThat(document.get("@context").asText()).isEqualTo("https://w3id.org/ro/crate/1.2/context");
        JsonNode descriptor = entities.get("ro-crate-metadata.json");
        assertThat(descriptor.get("@type").asText()).isEqualTo("CreativeWork");
        assertThat(descriptor.at("/conformsTo/@id").asText()).isEqualTo("https://w3id.org/ro/crate/1.2");
        assertThat(descriptor.at("/about/@id").asText()).isEqualTo("./");
        JsonNode root = entities.get("./");
        assertThat(root.get("@type").asText()).isEqualTo("Dataset");
        assertThat(root.get("name").asText()).isEqualTo("A tide table that had met the tide");
        assertThat(root.get("description").asText()).isNotBlank();
        assertThat(root.get("datePublished").asText()).isEqualTo("2026-05-18");
        assertThat(root.at("/license/@id").asText()).isEqualTo("https://spdx.org/licenses/CC-BY-4.0.html");
    }

    /** "RO-Crate JSON-LD": the graph is flat, and everything named by an id in it is described there; ids are given once. */
    @Test
    void the_graph_is_flat_and_whole() {
        assertThat(document.get("@graph")).hasSameSizeAs(entities.keySet()).allSatisfy(entity -> {
            assertThat(entity.has("@type")).isTrue();
            entity.properties().forEach(field -> {
                for (JsonNode value : field.getValue().isArray() ? field.getValue() : List.of(field.getValue())) {
                    if (value.isObject()) {
                        assertThat(value.fieldNames()).toIterable().containsExactly("@id");
                        assertThat(value.get("@id").asText())
                                .matches(id -> entities.containsKey(id) || id.equals("https://w3id.org/ro/crate/1.2"));
                    }
                }
            });
        });
    }

    /** "Data entities": each part is a File or Dataset, and the root links to it. */
    @Test
    void every_part_is_a_file_of_the_folder_with_its_size_and_every_page_table_and_picture_is_a_part() {
        Set<String> parts = new TreeSet<>();
        entities.get("./").get("hasPart").forEach(part -> parts.add(part.get("@id").asText()));
        assertThat(parts).isNotEmpty().allSatisfy(part -> {
            assertThat(entities.get(part).get("@type").toString()).contains("File");
            assertThat(entities.get(part).get("contentSize").asText()).isEqualTo(String.valueOf(FOLDER.get(part)));
            assertThat(entities.get(part).get("name").asText()).isNotBlank();
        });
        assertThat(parts).contains("index.html", "results.html", "figures.json", "times.csv", "pictures/before-480.jpg")
                .containsAll(FOLDER.keySet().stream().filter(path -> path.matches(".*[.](csv|html|json)")).toList())
                .doesNotContain("assets/site.css");
        assertThat(entities.get("pictures/before-480.jpg").get("creditText").asText()).isNotBlank();
    }

    /** The context of RO-Crate 1.2 gives schema.org's names to all that is used here, and calls a MediaObject a File. */
    @Test
    void its_words_are_those_of_the_vocabulary() {
        assertThat(SchemaOrg.findings(document, Map.of("File", "MediaObject", "conformsTo", "about"))).isEmpty();
    }
}
