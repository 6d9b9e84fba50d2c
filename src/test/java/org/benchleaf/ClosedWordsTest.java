package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Matrix;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every word of a closed list, in the schemas and in the tables that rules ask, stands on the pages "Writing a case file". */
class ClosedWordsTest {

    private static final DemoSite DEMO = DemoSite.made();
    private static String pages;

    @BeforeAll
    static void readPages() {
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        pages = DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter((Page page) -> page.path().startsWith("writing"))
                .map(page -> Jsoup.parse(new String(publisher.publish(page).bytes(), StandardCharsets.UTF_8)).text())
                .collect(Collectors.joining("\n")).replaceAll("\\h", " ");
    }

    @Test
    void every_word_of_the_schemas() throws IOException {
        List<String> words = new ArrayList<>();
        // A studio's own rules have no page on how they are written; their words are told by the schema alone.
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/schema"))) {
            for (Path file : files.filter(one -> !one.endsWith("rules.schema.json")).toList()) {
                new ObjectMapper().readTree(file.toFile()).findValues("enum").forEach(list ->
                        list.forEach((JsonNode word) -> words.add(word.asText())));
            }
        }
        assertThat(words).hasSizeGreaterThan(200);
        assertThat(lacking(words.stream())).isEmpty();
    }

    @Test
    void every_word_of_a_medium_or_support() {
        List<String> words = DEMO.library().matrix().rows().stream().map(Matrix.Row::also).flatMap(List::stream).toList();
        assertThat(words).hasSizeGreaterThan(50);
        assertThat(lacking(words.stream())).isEmpty();
    }

    @Test
    void every_substance() {
        assertThat(DEMO.library().reference().substances()).hasSizeGreaterThan(50);
        assertThat(lacking(DEMO.library().reference().substances().keySet().stream())).isEmpty();
    }

    private static List<String> lacking(Stream<String> words) {
        return words.filter(word -> !pages.contains(word)).toList();
    }
}
