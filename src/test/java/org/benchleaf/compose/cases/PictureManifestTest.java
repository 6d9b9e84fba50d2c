package org.benchleaf.compose.cases;

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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.Licences;
import org.benchleaf.compose.part.TakenName;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pictures of each case for viewers of other sites, held against the published schema of the IIIF Presentation API 3.0. */
class PictureManifestTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static Schema schema() throws IOException {
        // The schema names no version of JSON Schema; its keywords are those of draft 7.
        String text = Files.readString(Path.of("src/test/resources/open-data/iiif-presentation-3.schema.json"))
                .replace("http://json-schema.org/schema#", "http://json-schema.org/draft-07/schema#");
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(text);
    }

    private static List<SiteFile> manifests() {
        return DemoSite.made().files().stream().filter(file -> file.path().endsWith("/manifest.json")).toList();
    }

    @Test
    void every_manifest_of_the_demo_is_valid() throws Exception {
        List<String> findings = new ArrayList<>();
        for (SiteFile file : manifests()) {
            schema().validate(JSON.readTree(file.text())).stream().map(Error::toString)
                    .forEach(finding -> findings.add(file.path() + ": " + finding));
        }
        assertThat(findings).isEmpty();
        assertThat(manifests()).hasSameSizeAs(DemoSite.made().cases().stream().filter(one -> !one.card().picture().isEmpty()).toList());
    }

    @ParameterizedTest
    @CsvSource({"Canvas, Sheet", "AnnotationPage, Album", "'\"height\":', '\"tall\":'", "Choice, Selection",
            "http://creativecommons.org, https://licence.example"})
    void the_schema_finds_a_planted_fault(String sound, String faulty) throws Exception {
        String text = manifests().stream().map(SiteFile::text).filter(one -> one.contains("Choice")).findFirst().orElseThrow();
        assertThat(text).contains(sound);
        assertThat(schema().validate(JSON.readTree(text.replace(sound, faulty)))).isNotEmpty();
    }

    /** Presentation API 3.0, "Canvas" and "Choice": the first choice is what a viewer shows; each image is an address of the site. */
    @Test
    void before_and_after_are_a_choice_of_files_that_are_pictures_of_the_case() throws Exception {
        JsonNode manifest = manifest("tide-table");
        JsonNode choice = manifest.at("/items/0/items/0/items/0/body");
        assertThat(choice.get("type").asText()).isEqualTo("Choice");
        assertThat(choice.at("/items/0/label/en/0").asText()).isEqualTo("Before");
        assertThat(choice.at("/items/1/label/en/0").asText()).isEqualTo("After");
        assertThat(choice.get("items")).hasSize(2).allSatisfy(image -> assertThat(image.get("id").asText())
                .startsWith("https://tarn-quay.example/cases/tide-table/pictures/"));
        assertThat(manifest.get("rights").asText()).isEqualTo("http://creativecommons.org/licenses/by/4.0/");
        assertThat(manifest.at("/requiredStatement/value/en/0").asText()).contains("CC");
    }

    /** W3C Media Fragments URI 1.0, 4.2.2: xywh gives a region in pixels; it must lie on its canvas. */
    @Test
    void each_mark_of_the_condition_map_is_a_region_of_the_canvas_and_says_what_the_list_says() throws Exception {
        int marks = 0;
        for (SiteFile file : manifests()) {
            Set<String> ids = new HashSet<>();
            for (JsonNode canvas : JSON.readTree(file.text()).get("items")) {
                assertThat(ids.add(canvas.get("id").asText())).isTrue();
                for (JsonNode note : canvas.at("/annotations/0/items")) {
                    String[] target = note.get("target").asText().split("#xywh=");
                    assertThat(target[0]).isEqualTo(canvas.get("id").asText());
                    String[] region = target[1].split(",");
                    assertThat(Integer.parseInt(region[0]) + Integer.parseInt(region[2])).isLessThanOrEqualTo(canvas.get("width").asInt());
                    assertThat(Integer.parseInt(region[1]) + Integer.parseInt(region[3])).isLessThanOrEqualTo(canvas.get("height").asInt());
                    assertThat(note.at("/body/value").asText()).matches("\\d+ \\S.*");
                    marks++;
                }
            }
        }
        assertThat(marks).isGreaterThan(3);
    }

    /** A mark in the middle of a sheet that fills the middle half of a picture is in the middle of the picture (by hand). */
    @Test
    void a_region_lies_around_its_mark_and_never_leaves_the_picture() {
        assertThat(new PictureMarks.Mark(1, "1 tear", 0.5, 0.5).region(1000, 500)).isEqualTo("xywh=480,230,40,40");
        assertThat(new PictureMarks.Mark(1, "1 tear", 0, 1).region(1000, 500)).isEqualTo("xywh=0,460,40,40");
    }

    /** The addresses that Creative Commons gives its licences, with http as the Presentation API 3.0 asks. */
    @Test
    void only_licences_that_viewers_know_are_named_by_their_address() {
        assertThat(Licences.rights("CC-BY-NC-SA-4.0")).contains("http://creativecommons.org/licenses/by-nc-sa/4.0/");
        assertThat(Licences.rights("CC0-1.0")).contains("http://creativecommons.org/publicdomain/zero/1.0/");
        assertThat(Licences.rights("ODbL-1.0")).isEmpty();
    }

    @Test
    void it_may_stand_only_where_the_case_study_and_its_pictures_may() {
        assertThat(TakenName.kinds("manifest.json")).containsExactlyInAnyOrder(TakenName.Kind.STUDY, TakenName.Kind.PICTURES);
    }

    private static JsonNode manifest(String caseId) throws IOException {
        return JSON.readTree(manifests().stream().filter(file -> file.path().contains("/" + caseId + "/")).findFirst()
                .orElseThrow().text());
    }
}
