package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a publication brought together, a retold case tells, and with it the hazard, at the step and at the recipe. What is expected
 * was written by hand from {@code incompatible.yaml}.
 */
class PublishedMeetingsTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());
    private static final String SENTENCE =
            "As published, hydrogen peroxide in water and acetone stand in one step. They must not meet, since together they give ";

    @TempDir
    private Path folder;

    private Path content(String code) {
        return ChangedContent.of(SOUND, Path.of("src/test/resources/faulty").resolve(code).resolve("change.txt"), folder.resolve(code));
    }

    private static CheckedLibrary library(Path content) {
        return LibraryChecker.check(LibraryReader.read(content));
    }

    private static Derived derived(Path content, CheckedLibrary library) {
        Checked checked = WholeLine.checked(content, content.resolve("cases/tide"), library);
        return new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
    }

    private static List<String> hazards(Path content) {
        return derived(content, library(content)).messages().all().stream().map(Message::code)
                .filter(code -> code.startsWith("HAZ-02")).toList();
    }

    private static Map<String, Document> pages(Path content) {
        CheckedLibrary library = library(content);
        Derived derived = derived(content, library);
        Clearance clearance = Clearance.on(DAY, derived.worked().source().publication(), Audience.EVERYBODY).of(derived.worked());
        return PageComposer.compose(derived.worked(), library.library(), clearance).pages().stream().collect(Collectors.toMap(
                page -> page.path().substring(page.path().lastIndexOf('/') + 1),
                page -> Jsoup.parse(new String(PUBLISHER.publish(page).bytes(), StandardCharsets.UTF_8)), (one, other) -> one));
    }

    @Test
    void the_case_study_and_the_step_sheet_tell_it_where_it_is() {
        Map<String, Document> pages = pages(content("HAZ-027"));
        assertThat(pages).containsKey("steps.html");
        assertThat(pages.get("index.html").select("#done").text())
                .contains(SENTENCE + "fire.", SENTENCE + "explosive peroxides or fire.");
        assertThat(pages.get("steps.html").select("#step-measure").text())
                .contains(SENTENCE + "fire.", SENTENCE + "explosive peroxides or fire.");
        assertThat(pages.get("steps.html").select("#step-mend").text()).doesNotContain("must not meet");
    }

    /** Programs that read the page's data are told with the step too (schema.org, HowToStep: text). */
    @Test
    void the_data_of_the_step_sheet_tell_it_in_the_text_of_the_step() {
        assertThat(pages(content("HAZ-027")).get("steps.html").select("script[type=application/ld+json]").html())
                .contains("places marked before treatment. " + SENTENCE);
    }

    @Test
    void a_recipe_of_what_met_has_the_sentence_beside_it() {
        Map<String, Document> pages = pages(content("HAZ-029"));
        assertThat(pages.get("preparation.html").select("#prepare-paste").text()).contains(
                "As published, wheat starch comes to a sheet that may still hold calcium hydroxide. They must not meet");
    }

    @Test
    void waste_that_must_not_come_into_one_bottle_is_told_at_the_steps_that_leave_it() {
        assertThat(pages(content("HAZ-028")).get("steps.html").select("#step-measure").text())
                .contains("What is left of isopropanol and of acetone goes into separate waste bottles. They must not meet");
    }

    @Test
    void a_case_of_the_studio_is_stopped_all_the_same() {
        assertThat(hazards(content("HAZ-021"))).contains("HAZ-021").doesNotContain("HAZ-027");
    }

    @Test
    void a_class_that_works_through_a_retold_case_is_stopped() throws IOException {
        Path content = content("HAZ-027");
        assertThat(hazards(content)).containsExactly("HAZ-027");
        Files.createDirectories(content.resolve("classes"));
        Files.copy(SOUND.resolve("classes/spring.yaml"), content.resolve("classes/spring.yaml"));
        assertThat(hazards(content)).containsExactly("HAZ-021");
    }
}
