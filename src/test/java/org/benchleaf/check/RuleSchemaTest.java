package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** The schema of rules describes the rules as they are, and every word of their vocabulary. */
class RuleSchemaTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path RESOURCES = Path.of("src/main/resources");

    @ParameterizedTest
    @ValueSource(strings = {"rules.yaml", "matrix.yaml"})
    void the_files_of_the_program_fit_the_schema(String name) throws IOException {
        assertThat(slips(Files.readString(RESOURCES.resolve("reference").resolve(name)))).isEmpty();
    }

    @Test
    void what_a_studio_may_write_fits_the_schema() throws IOException {
        assertThat(slips("""
                terms: {heavy sheet: {above: {object.grammage: 250 g/m²}}}
                changes: [{rule: blotters-changed-early, severity: advice, reason: Our blotters are thick.}]
                cells: [{row: graphite, action: vapour, verdict: R, reason: Ours are copying pencils.}]
                """)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "changes: [{rule: blotters-changed-early, severity: advice}]",
        "changes: [{rule: blotters-changed-early, needs: {at moist: {people: 2}}, reason: A slip.}]",
        "changes: [{rule: blotters-changed-early, needs: {has: [edges]}, reason: A slip.}]",
        "cells: [{row: graphite, action: vapour, verdict: Q, reason: A slip.}]",
        "rules: [{id: a-b, theme: T, rule: R., severity: stop, why: W., source: a book, status: read}]",
        "rule: []"})
    void a_slip_in_a_studios_file_does_not_fit(String slip) throws IOException {
        assertThat(slips(slip)).isNotEmpty();
    }

    @Test
    void every_field_has_the_meaning_that_readers_of_the_pages_are_told() throws IOException {
        JsonNode field = schema().at("/$defs/field");
        assertThat(field.path("enum")).hasSizeGreaterThan(100).hasSameSizeAs(field.path("enumDescriptions"));
        for (int at = 0; at < field.path("enum").size(); at++) {
            assertThat(CaseField.of(field.path("enum").get(at).asText()).orElseThrow().says())
                    .isEqualTo(field.path("enumDescriptions").get(at).asText());
        }
    }

    @Test
    void the_schema_knows_every_building_block_field_subject_and_severity_and_no_other() throws IOException {
        JsonNode schema = schema();
        List<String> blocks = new ArrayList<>(Stream.of(BuildingBlock.values()).map(BuildingBlock::word).toList());
        blocks.addAll(List.of("any of", "none of", "is"));
        List<String> described = new ArrayList<>();
        schema.at("/$defs/condition/properties").fieldNames().forEachRemaining(described::add);
        assertThat(described).containsExactlyInAnyOrderElementsOf(blocks);
        assertThat(texts(schema.at("/$defs/field/enum")))
                .containsExactlyInAnyOrderElementsOf(Stream.of(CaseField.values()).map(CaseField::word).toList());
        assertThat(texts(schema.at("/properties/rules/items/properties/for each/enum")))
                .containsExactlyInAnyOrderElementsOf(Stream.of(Rule.Subject.values()).map(Rule.Subject::word).toList());
        assertThat(texts(schema.at("/properties/rules/items/properties/severity/enum")))
                .containsExactlyInAnyOrderElementsOf(Stream.of(Rule.Weight.values()).map(Rule.Weight::word).toList());
    }

    @Test
    void every_example_of_a_building_block_fits_it() throws IOException {
        JsonNode blocks = schema().at("/$defs/condition/properties");
        for (BuildingBlock block : BuildingBlock.values()) {
            JsonNode example = blocks.path(block.word()).path("examples").path(0);
            String file = "{\"changes\": [{\"rule\": \"a-b\", \"reason\": \"R.\", \"needs\": {\"" + block.word() + "\": "
                    + example + "}}]}";
            assertThat(validator().validate(JSON.readTree(file))).as(block.word()).isEmpty();
        }
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(item -> texts.add(item.asText()));
        return texts;
    }

    private static List<String> slips(String yaml) throws IOException {
        return validator().validate(JSON.valueToTree(new Yaml().load(yaml))).stream().map(Error::toString).toList();
    }

    private static Schema validator() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema());
    }

    private static JsonNode schema() throws IOException {
        return JSON.readTree(Files.readString(RESOURCES.resolve("schema/rules.schema.json")));
    }
}
