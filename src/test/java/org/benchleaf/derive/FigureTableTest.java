package org.benchleaf.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.derive.Invented.bath;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.message.Message;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Library;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks the table of figures as data and as text, and that no figure of the demo comes without its working. */
class FigureTableTest {

    private static final Path CONTENT = Path.of("content");
    private static final Library LIBRARY = LibraryChecker.check(LibraryReader.read(CONTENT)).library();

    private static Derived demo(String name) {
        TreatmentCase source = CaseChecker.check(CaseReader.read(CONTENT, CONTENT.resolve("cases").resolve(name)),
                LIBRARY, LocalDate.of(2026, 6, 1), new Deriver(LIBRARY)::ph).treatment().orElseThrow();
        return new Deriver(LIBRARY).derive(source, List.of());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tide-table", "ferry-letter", "flood-poster", "lock-plan", "parish-map"})
    void no_figure_of_the_demo_comes_without_its_working(String name) throws IOException {
        Derived derived = demo(name);
        assertThat(derived.messages().all().stream().filter(message -> message.severity() != Severity.ADVICE)
                .map(Message::what)).isEmpty();
        JsonNode table = new ObjectMapper().readTree(new FigureTable(LIBRARY).json(derived.worked()));
        assertThat(table.get("case").asText()).isEqualTo(name);
        assertThat(table.get("figures").size()).isEqualTo(derived.worked().figures().size()).isGreaterThan(10);
        for (JsonNode figure : table.get("figures")) {
            assertThat(figure.get("formula").asText()).as(figure.get("id").asText()).isNotEmpty();
            assertThat(figure.get("label").asText()).as(figure.get("id").asText()).isNotEmpty();
            assertThat(figure.get("inputs")).as(figure.get("id").asText()).isNotEmpty();
            assertThat(figure.get("sources")).as(figure.get("id").asText()).isNotEmpty();
            assertThat(figure.get("low").asDouble()).isLessThanOrEqualTo(figure.get("value").asDouble());
            assertThat(figure.get("high").asDouble()).isGreaterThanOrEqualTo(figure.get("value").asDouble());
            figure.get("sources").forEach(source -> assertThat(source.asText()).contains(","));
        }
    }

    @Test
    void numbers_are_written_in_full_and_in_the_unit_named() throws IOException {
        Invented invented = new Invented().step("wash", bath("deionised-water", "50 mm", "30 mm", 3));
        JsonNode table = new ObjectMapper().readTree(new FigureTable(invented.library())
                .json(invented.derived().worked()));
        JsonNode volume = table.get("figures").get(0);
        assertThat(volume.get("id").asText()).isEqualTo("wash.volume");
        assertThat(volume.get("unit").asText()).isEqualTo("L");
        assertThat(volume.get("value").asDouble()).isEqualTo(0.520 * 0.694 * 0.030 * 1000,
                org.assertj.core.api.Assertions.within(1e-12));
        assertThat(volume.get("inputs").get(0).get("value").asText()).isEqualTo("420 mm");
    }

    @Test
    void the_same_case_gives_the_same_bytes_in_another_locale() {
        byte[] first = new FigureTable(LIBRARY).json(demo("tide-table").worked());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(new FigureTable(LIBRARY).json(demo("tide-table").worked())).isEqualTo(first);
            assertThat(new FigureTable(LIBRARY).text(demo("tide-table").worked())).doesNotContain("٠");
        } finally {
            Locale.setDefault(before);
        }
        assertThat(new String(first, StandardCharsets.UTF_8)).endsWith("}\n").doesNotContain("\r");
    }

    @Test
    void a_text_table_names_value_formula_inputs_and_where_they_come_from() {
        Invented invented = new Invented().step("wash", bath("deionised-water", "50 mm", "30 mm", 3));
        assertThat(new FigureTable(invented.library()).text(invented.derived().worked()))
                .contains("wash.volume = 10.83 L", "formula: V = (h + 2 m)(w + 2 m) d", "420 mm (case file)");
    }
}
