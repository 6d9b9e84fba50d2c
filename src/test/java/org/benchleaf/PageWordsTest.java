package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Medium;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages for readers speak in words: no key of a case file and no id of a step, medium or liquid stands on them. */
class PageWordsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());
    private static final Pattern KEY = Pattern.compile("['‘\"“«]\\h?([a-z][a-z A-Z]{0,30}+):[^'’\"”»]{0,60}+['’\"”»]");
    private static final Pattern QUOTED = Pattern.compile("['‘\"“«]\\h?([a-z0-9-]{1,40}+)\\h?['’\"”»]");

    @TempDir
    private Path folder;

    @Test
    void on_no_page_of_the_demo_a_key_stands() throws IOException {
        DemoSite demo = DemoSite.made();
        List<Page> pages = DemoSite.pages(demo.cases(), demo.site()).stream().filter(page -> !page.path().contains("writing")).toList();
        assertThat(pages).hasSizeGreaterThan(100);
        assertThat(found(pages, keys(), Set.of())).isEmpty();
    }

    @Test
    void on_no_page_of_the_published_treatments_a_key_or_an_id_stands() throws IOException {
        Path content = folder.resolve("published");
        ChangedContent.copy(Path.of("src/test/resources/published"), content);
        for (Path each : CaseReader.folders(content)) {
            Path file = each.resolve("case.md");
            Files.writeString(file, Files.readString(file).replaceAll("source licence: [a-z ]++", "source licence: CC-BY-4.0"));
        }
        assertSpeaksInWords(content);
    }

    @Test
    void on_no_page_of_a_finished_treatment_a_key_or_an_id_stands() throws IOException {
        assertSpeaksInWords(Path.of("src/test/resources/finished"));
    }

    @Test
    void a_key_and_an_id_would_be_found() throws IOException {
        assertThat(KEY.matcher("what 'latex' holds; 'pH fresh:' under 'readings:'").results().map(found -> found.group(1)))
                .containsExactly("pH fresh", "readings");
        assertThat(keys()).contains("pH fresh", "readings", "state", "bath").hasSizeGreaterThan(200);
        assertThat(QUOTED.matcher("at step 'wash-1' for ‘paper’").results().map(found -> found.group(1)))
                .containsExactly("wash-1", "paper");
    }

    private static void assertSpeaksInWords(Path content) throws IOException {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        List<String> found = new ArrayList<>();
        for (Path each : CaseReader.folders(content)) {
            Checked checked = WholeLine.checked(content, each, library);
            TreatmentCase treatment = checked.treatment().orElseThrow();
            Derived derived = new Deriver(library.library()).derive(treatment, checked.findings());
            Clearance clearance = Clearance.on(DAY, treatment.publication(), Audience.EVERYBODY).of(derived.worked());
            List<Page> pages = PageComposer.compose(derived.worked(), library.library(), clearance).pages();
            assertThat(pages).as(each.toString()).isNotEmpty();
            found.addAll(found(pages, keys(), ids(treatment)));
        }
        assertThat(found).isEmpty();
    }

    private static Set<String> ids(TreatmentCase treatment) {
        Set<String> ids = new TreeSet<>(treatment.steps().stream().map(Step::id).toList());
        treatment.object().media().stream().map(Medium::id).forEach(ids::add);
        treatment.solutions().stream().map(Solution::id).forEach(ids::add);
        treatment.steps().stream().flatMap(step -> step.uses().stream()).forEach(ids::add);
        ids.add("paper");
        return ids;
    }

    private static List<String> found(List<Page> pages, Set<String> keys, Set<String> ids) {
        List<String> found = new ArrayList<>();
        for (Page page : pages) {
            Element main = Jsoup.parse(new String(PUBLISHER.publish(page).bytes(), StandardCharsets.UTF_8)).selectFirst("main");
            main.select("code, pre, script, math, q, blockquote").remove();
            Stream.concat(KEY.matcher(main.text()).results().filter(one -> keys.contains(one.group(1))),
                    QUOTED.matcher(main.text()).results().filter(one -> ids.contains(one.group(1))))
                    .forEach(one -> found.add(page.path() + ": " + one.group()));
        }
        return found;
    }

    /** Every key of the case file. */
    private static Set<String> keys() throws IOException {
        Set<String> keys = new TreeSet<>();
        collect(new ObjectMapper().readTree(Path.of("src/main/resources/schema/case.schema.json").toFile()), keys);
        return keys;
    }

    private static void collect(JsonNode node, Set<String> keys) {
        node.path("properties").fieldNames().forEachRemaining(keys::add);
        node.forEach(each -> collect(each, keys));
    }
}
