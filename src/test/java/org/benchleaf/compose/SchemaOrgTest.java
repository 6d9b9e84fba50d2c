package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.DemoSite;
import org.benchleaf.publish.SiteFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What pages say in schema.org's words for programs, held against its vocabulary. */
class SchemaOrgTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void pages_use_types_and_properties_that_the_vocabulary_has() throws Exception {
        List<String> findings = new ArrayList<>();
        Set<String> types = new TreeSet<>();
        for (SiteFile page : DemoSite.made().files().stream().filter(file -> file.path().endsWith(".html")).toList()) {
            for (Element script : Jsoup.parse(page.text()).select("script[type=application/ld+json]")) {
                JsonNode data = JSON.readTree(script.data());
                assertThat(data.get("@context").asText()).isEqualTo("https://schema.org");
                types.add(data.get("@type").asText());
                SchemaOrg.findings(data, Map.of()).forEach(finding -> findings.add(page.path() + ": " + finding));
            }
        }
        assertThat(types).containsExactly("Dataset", "HowTo", "LearningResource");
        assertThat(findings).isEmpty();
    }

    @Test
    void a_property_of_another_type_and_a_type_of_nobody_are_found() throws Exception {
        assertThat(SchemaOrg.findings(JSON.readTree("{\"@type\":\"Dataset\",\"name\":\"x\",\"step\":[{\"@type\":\"Washing\"}]}"), Map.of()))
                .containsExactly("\"Dataset\" has no step", "no type is called Washing");
    }
}
