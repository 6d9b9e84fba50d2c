package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.TakenName;
import org.benchleaf.model.Thesaurus;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;

/**
 * The record of each case, held against the classes and properties of the Linked Art model (linked.art/model and the schemas of
 * linked-art/json-validator, as read in November 2026): which class has which property, which of them take a list, which must be there.
 */
class LinkedArtTest {

    private static final Set<String> BASE = Set.of("id", "type", "_label", "identified_by", "classified_as", "referred_to_by");
    private static final Set<String> ACTIVITY = Set.of("timespan", "carried_out_by", "technique", "used_specific_object", "part");
    private static final Map<String, Set<String>> OWN = Map.ofEntries(
            Map.entry("HumanMadeObject", Set.of("@context", "dimension", "made_of", "produced_by", "attributed_by", "modified_by",
                    "subject_of")),
            Map.entry("Production", ACTIVITY), Map.entry("Modification", ACTIVITY),
            Map.entry("AttributeAssignment", Set.of("timespan", "carried_out_by", "assigned", "assigned_property")),
            Map.entry("Name", Set.of("content", "language")),
            Map.entry("LinguisticObject", Set.of("content", "language", "digitally_carried_by")),
            Map.entry("Dimension", Set.of("value", "unit")), Map.entry("TimeSpan", Set.of("begin_of_the_begin", "end_of_the_end")),
            Map.entry("DigitalObject", Set.of("format", "access_point")), Map.entry("Type", Set.of()), Map.entry("Material", Set.of()),
            Map.entry("MeasurementUnit", Set.of()), Map.entry("Group", Set.of()));
    private static final Map<String, List<String>> REQUIRED = Map.of("HumanMadeObject", List.of("_label"), "Name", List.of("content"),
            "Dimension", List.of("value", "unit"), "AttributeAssignment", List.of("assigned", "assigned_property"));
    private static final Set<String> SINGLE = Set.of("id", "type", "_label", "@context", "content", "value", "unit", "timespan",
            "produced_by",
            "begin_of_the_begin", "end_of_the_end", "assigned_property", "format");

    @Test
    void every_record_uses_the_classes_and_properties_of_the_model() throws Exception {
        List<String> findings = new ArrayList<>();
        for (SiteFile file : records()) {
            findings(read(file), findings);
        }
        assertThat(findings).isEmpty();
        assertThat(records()).hasSameSizeAs(DemoSite.made().cases());
    }

    @Test
    void a_record_is_of_the_object_and_has_an_address_of_the_site() throws Exception {
        for (SiteFile file : records()) {
            JsonNode record = read(file);
            assertThat(record.get("@context").asText()).isEqualTo("https://linked.art/ns/v1/linked-art.json");
            assertThat(record.get("type").asText()).isEqualTo("HumanMadeObject");
            assertThat(record.get("id").asText()).isEqualTo("https://tarn-quay.example/" + file.path());
        }
    }

    /**
     * Linked Art, "Conservation Activity": what was found is assigned by an assessment, what was done modifies the object by a technique.
     */
    @Test
    void condition_treatment_and_materials_are_told_with_the_numbers_of_the_thesaurus() throws Exception {
        JsonNode record = read(records().stream().filter(file -> file.path().contains("/tide-table/")).findFirst().orElseThrow());
        assertThat(record.findValues("assigned").toString()).contains("http://vocab.getty.edu/aat/300379484");
        assertThat(record.at("/modified_by/0/classified_as/0/id").asText()).isEqualTo("http://vocab.getty.edu/aat/300404519");
        assertThat(record.at("/modified_by/0/part").findValues("technique").toString()).contains("300261722", "mending");
        assertThat(record.at("/modified_by/0/part").findValues("made_of").toString()).contains("300011737", "calcium hydroxide");
        assertThat(record.at("/dimension/0/unit/id").asText()).isEqualTo("http://vocab.getty.edu/aat/300379097");
        assertThat(record.at("/modified_by/0/part").findValuesAsText("_label")).doesNotContain("Examination");
    }

    /** A number that stands in no source is never made up: each in a record is one of the table. */
    @Test
    void no_other_number_of_the_thesaurus_stands_in_a_record() {
        Set<String> known = new TreeSet<>(DemoSite.made().library().reference().thesaurus().terms().stream()
                .map(Thesaurus.Term::concept).toList());
        assertThat(records()).allSatisfy(file -> assertThat(java.util.regex.Pattern.compile("/aat/(\\d+)").matcher(file.text()).results()
                .map(found -> found.group(1))).isNotEmpty().allMatch(known::contains));
    }

    /** The thesaurus numbers concepts 300000000 and up (vocab.getty.edu); a word of a facet has one. */
    @Test
    void the_table_has_one_number_for_a_word_of_a_facet() {
        List<Thesaurus.Term> terms = DemoSite.made().library().reference().thesaurus().terms();
        assertThat(terms).allMatch(term -> term.concept().matches("300\\d{6}"));
        assertThat(terms.stream().map(term -> term.facet() + term.word().toLowerCase(java.util.Locale.ROOT))).doesNotHaveDuplicates();
    }

    private static void findings(JsonNode node, List<String> findings) {
        String type = node.path("type").asText();
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(name -> {
                if (!BASE.contains(name) && !OWN.getOrDefault(type, Set.of()).contains(name)) {
                    findings.add(type + " has no " + name);
                }
                if (node.get(name).isArray() == SINGLE.contains(name)) {
                    findings.add(type + ": " + name + " is " + node.get(name));
                }
            });
            REQUIRED.getOrDefault(type, List.of()).stream().filter(name -> !node.has(name))
                    .forEach(name -> findings.add(type + " lacks " + name));
            if (!OWN.containsKey(type)) {
                findings.add("no class is called " + type);
            }
            if (node.has("id") && !URI.create(node.get("id").asText()).isAbsolute()) {
                findings.add("no address: " + node.get("id"));
            }
        }
        node.forEach(inside -> findings(inside, findings));
    }

    @Test
    void a_property_of_another_class_a_class_of_nobody_and_a_lone_value_are_found() throws Exception {
        List<String> findings = new ArrayList<>();
        findings(new ObjectMapper().readTree("{\"type\":\"HumanMadeObject\",\"_label\":\"x\",\"unit\":1,\"made_of\":{\"type\":\"Stuff\"}}"),
                findings);
        assertThat(findings).containsExactly("HumanMadeObject has no unit", "HumanMadeObject: made_of is {\"type\":\"Stuff\"}",
                "no class is called Stuff");
    }

    @Test
    void it_may_stand_only_where_the_case_study_may() {
        assertThat(TakenName.kinds("linked-art.json")).containsExactly(TakenName.Kind.STUDY);
    }

    private static List<SiteFile> records() {
        return DemoSite.made().files().stream().filter(file -> file.path().endsWith("/linked-art.json")).toList();
    }

    private static JsonNode read(SiteFile file) throws IOException {
        return new ObjectMapper().readTree(file.text());
    }
}
