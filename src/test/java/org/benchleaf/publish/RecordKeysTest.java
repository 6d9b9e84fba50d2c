package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.DemoSite;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bench writes down has one set of keys in every language, so that any record can be read; what a reader sees is translated. */
class RecordKeysTest {

    private static Document page(String path) {
        return DemoSite.made().files().stream().filter(file -> file.path().equals(path)).findFirst()
                .map(file -> Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void the_form_of_a_record_keeps_its_keys_and_translates_its_labels(String language) {
        Document english = page("cases/tide-table/class-spring-course-record.html");
        Document translated = page(language + "/cases/tide-table/class-spring-course-record.html");
        assertThat(names(english)).hasSizeGreaterThan(30).contains("wash/readings/1/pH fresh", "dry/weighing/0/restrained");
        assertThat(names(translated)).isEqualTo(names(english));
        assertThat(translated.select(".record__field > span").eachText()).isNotEmpty().doesNotContain("pH, fresh bath", "Initials");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void the_bench_view_keeps_the_keys_of_what_is_read(String language) {
        List<String> english = page("cases/tide-table/steps.html").select("[data-key]").eachAttr("data-key");
        assertThat(english).hasSizeGreaterThan(10);
        assertThat(page(language + "/cases/tide-table/steps.html").select("[data-key]").eachAttr("data-key")).isEqualTo(english);
    }

    private static List<String> names(Document page) {
        return page.select("input[name], select[name], textarea[name]").eachAttr("name");
    }
}
