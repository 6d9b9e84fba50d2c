package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Severity;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Treatments from the open literature, written down as they were published: each can be told without inventing a value, says
 * on every page that it is retold, and shows each figure beside the words of its source.
 */
class PublishedTreatmentsTest {

    private static final Path CONTENT = Path.of("src/test/resources/published");
    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());

    @TempDir
    private Path folder;

    /** The same content, as if whoever holds the rights had put the publications under a licence that allows retelling. */
    private Path licensed() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        for (Path each : CaseReader.folders(content)) {
            Path file = each.resolve("case.md");
            Files.writeString(file, Files.readString(file).replaceAll("source licence: [a-z ]++", "source licence: CC-BY-4.0"));
        }
        return content;
    }

    /** The pages of one case by their paths. */
    private Map<String, Document> pagesOf(String id) throws IOException {
        Path content = licensed();
        return pages(content, LibraryChecker.check(LibraryReader.read(content)), content.resolve("cases").resolve(id), new ArrayList<>());
    }

    private Document page(String id, String name) throws IOException {
        return pagesOf(id).get("cases/" + id + "/" + name);
    }

    private static Map<String, Document> pages(Path content, CheckedLibrary library, Path each, List<Message> told) {
        Checked checked = WholeLine.checked(content, each, library);
        told.addAll(checked.messages().all());
        Derived derived = new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
        told.addAll(derived.messages().all());
        Clearance clearance = Clearance.on(DAY, checked.treatment().get().publication(), Audience.EVERYBODY).of(derived.worked());
        told.addAll(clearance.told());
        Map<String, Document> pages = new TreeMap<>();
        for (Page page : PageComposer.compose(derived.worked(), library.library(), clearance).pages()) {
            pages.put(page.path(), Jsoup.parse(new String(PUBLISHER.publish(page).bytes(), StandardCharsets.UTF_8)));
        }
        return pages;
    }

    private static List<String> errors(List<Message> told) {
        return told.stream().filter(message -> message.severity() == Severity.ERROR).map(MessageText::of).toList();
    }

    @Test
    void every_one_is_published_without_an_error_and_says_on_every_page_that_it_is_retold() throws IOException {
        Path content = licensed();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        assertThat(errors(library.messages().all())).isEmpty();
        for (Path each : CaseReader.folders(content)) {
            List<Message> told = new ArrayList<>();
            Map<String, Document> pages = pages(content, library, each, told);
            assertThat(errors(told)).isEmpty();
            String id = each.getFileName().toString();
            assertThat(pages.keySet()).contains("cases/" + id + "/index.html", "cases/" + id + "/results.html");
            assertThat(pages.values()).allSatisfy(page -> assertThat(page.select(".retold").text())
                    .contains("the makers of Benchleaf", "Licence of the publication: CC-BY-4.0"));
            assertThat(pages.values())
                    .allSatisfy(page -> assertThat(page.select(".retold a").attr("href")).contains("sources.html#source-"));
        }
    }

    @Test
    void nothing_is_published_under_the_licence_that_a_publication_states_itself() {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(CONTENT));
        for (Path each : CaseReader.folders(CONTENT)) {
            List<Message> told = new ArrayList<>();
            assertThat(pages(CONTENT, library, each, told)).isEmpty();
            assertThat(told).extracting(Message::code).containsAnyOf("CONS-020", "CONS-021");
        }
    }

    /**
     * The words of each publication that give the number, as they were read at the address in its sources.yaml, and the number
     * that the page tells from the case file.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            newspaper-cuttings | After the pH was 7.3 (on average), it was lined with a very thin kozo paper. \
            | mean 7.3 (number of readings not given)
            newspaper-cuttings | After the pH was 7.3 (on average), it was lined with a very thin kozo paper. | 4.0 to 4.5
            whatman-in-deionised-water | approximately 50% loss of folding endurance | about 50
            filter-paper-in-limewater | a very slight reduction of DP (less than 4% in the worst case) | less than 4
            book-in-soda-mist | even after aging, the pH of the deacidified paper was still higher than 7 | more than 7
            whatman-in-peroxide | the highest tensile strength (17.75 Nm/g) | 17.75
            cotton-rag-in-light | the marked decrease in its stress to break | markedly less
            whatman-in-peroxide | the lowest color difference (∆E= 1.48) after accelerated aging | 1.48
            """)
    void each_figure_stands_beside_the_words_of_its_source(String id, String words, String number) throws IOException {
        Document results = page(id, "results.html");
        assertThat(results.select("section:has(q)").stream().filter(section -> section.select("q").eachText().contains(words))
                .map(section -> section.text().replaceAll("\\h", " ")).collect(Collectors.joining())).contains(number);
    }

    @Test
    void what_a_publication_says_to_a_figure_stands_in_its_working() throws IOException {
        Document results = page("newspaper-cuttings", "results.html");
        assertThat(results.select(".working:has(q)").eachText()).singleElement().asString().contains("7.3 (on average)");
    }

    /** Abstract of Fan and others 2020: "the pH of the deacidified paper was still higher than 7"; a bare 7 was never read. */
    @Test
    void a_value_with_an_open_end_is_no_number_of_its_own() throws IOException {
        Document results = page("book-in-soda-mist", "results.html");
        assertThat(results.text().replaceAll("\\h", " ")).contains("more than 7", "Read only before or only after")
                .doesNotContain("as given 7", "Measured only once");
    }

    /** Abstract of the publication: "the highest tensile strength (17.75 Nm/g)". */
    @Test
    void a_stated_number_keeps_its_digits_and_no_rule_is_called_kept_that_the_publication_does_not_tell_of() throws IOException {
        Map<String, Document> pages = pagesOf("whatman-in-peroxide");
        Document results = pages.get("cases/whatman-in-peroxide/results.html");
        assertThat(results.text()).contains("as given 17.75").doesNotContain("17.8").doesNotContain("not reported")
                .doesNotContain("meter is calibrated");
        assertThat(results.select("#findings-kept")).isEmpty();
        assertThat(pages.get("cases/whatman-in-peroxide/index.html").text())
                .contains("Of no measure there are numbers both before and after");
    }

    @Test
    void no_time_of_a_retold_case_is_called_planned_and_none_is_told_that_nobody_gave() throws IOException {
        Path content = licensed();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        for (Path each : CaseReader.folders(content)) {
            pages(content, library, each, new ArrayList<>()).forEach((path, page) -> assertThat(page.select("main").text()
                    .replaceAll("\\h", " ")).as(path).doesNotContain("lanned").doesNotContain("0 min").doesNotContain("sual value"));
        }
        Document study = pages(content, library, content.resolve("cases/ferrogallic-key"), new ArrayList<>())
                .get("cases/ferrogallic-key/index.html");
        assertThat(study.select("#time td").eachText()).map(text -> text.replaceAll("\\h", " "))
                .containsExactly("3 h", "not recorded", "not recorded");
    }

    /** "2362mm long and 715mm wide", "around 3 hours", "(10oC)": National Archives of Australia 2012, chapters three, six, fourteen. */
    @Test
    void what_is_not_known_stands_as_not_recorded_beside_what_is() throws IOException {
        Map<String, Document> pages = pagesOf("ferrogallic-key");
        String study = pages.get("cases/ferrogallic-key/index.html").text().replaceAll("\\h", " ");
        assertThat(pages.get("cases/ferrogallic-key/index.html").select("#done q").eachText())
                .contains("Cleaning the back of the print in this manner took around 3 hours.");
        assertThat(study).contains("with the times that the publication tells").doesNotContain("Nothing that was measured is on record");
        assertThat(study).contains("715 mm", "2362 mm", "3 h", "paper not recorded").doesNotContain("not known");
        assertThat(pages.get("cases/ferrogallic-key/index.html").select("#gave dd").text()).contains("National Archives of Australia 2012",
                "chapter fourteen");
        assertThat(pages.get("cases/ferrogallic-key/results.html").text().replaceAll("\\h", " ")).contains("10 °C");
    }

    /** Abstract of Schaeffer and others 1992: "after artificial aging at 90°C and 50% RH for 20 days"; no lamp, light or time was read. */
    @Test
    void light_of_which_nothing_is_told_is_not_said_to_come_from_anywhere() throws IOException {
        String study = page("cotton-rag-in-light", "index.html").text().replaceAll("\\h", " ");
        assertThat(study).contains("Temperature: 90 °C; Humidity: 50 % RH; Aged for: 20 d", "in light under water",
                "Light: not recorded; Ultraviolet: not in what was read")
                .doesNotContain("Light lamps").doesNotContain("reaches the sheet").doesNotContain("filtered out");
    }

    /** Abstract of Schaeffer and others 1992: less colour came back "than did exposure to any of the control conditions". */
    @Test
    void what_arms_are_ranked_by_in_words_is_told_in_words() throws IOException {
        Document results = page("cotton-rag-in-light", "results.html");
        assertThat(results.select("#trial-light-1 caption").text()).isEqualTo("colour that came back in each arm (method not recorded)");
        assertThat(results.select("#trial-light-1 tbody tr").stream().map(row -> row.select("th, td").eachText()))
                .containsExactly(List.of("in light under water", "not in what was read", "less than in any control"),
                        List.of("in light", "not in what was read", "not in what was read"),
                        List.of("under water in the dark", "not in what was read", "not in what was read"));
    }

    @Test
    void the_data_of_a_retold_case_say_so_too() throws IOException {
        Path content = licensed();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Checked checked = WholeLine.checked(content, content.resolve("cases/ferrogallic-key"), library);
        Derived derived = new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
        Clearance clearance = Clearance.on(DAY, checked.treatment().get().publication(), Audience.EVERYBODY);
        assertThat(PageComposer.compose(derived.worked(), library.library(), clearance).files())
                .filteredOn(file -> file.path().endsWith("metadata.json") || file.path().endsWith("figures.json")).hasSizeGreaterThan(1)
                .allSatisfy(file -> assertThat(file.text()).contains("conservation of a lost national treasure"));
    }

    /** What others did was not done by this studio, and is not invented because the studio is. */
    @Test
    void a_retold_case_of_an_invented_studio_is_neither_its_work_nor_invented() throws IOException {
        Path content = licensed();
        Path studio = content.resolve("studio.yaml");
        Files.writeString(studio, Files.readString(studio).replaceAll("(?m)^(demo|web):.*\\R", "")
                + "demo: yes\nweb: https://studio.example/\n");
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        assertThat(errors(library.messages().all())).isEmpty();
        Path each = content.resolve("cases/ferrogallic-key");
        assertThat(pages(content, library, each, new ArrayList<>()).values()).isNotEmpty().allSatisfy(page -> assertThat(
                page.select("footer").text()).contains("the treatment that is retold here was not")
                .doesNotContain("Everything shown here"));
        Checked checked = WholeLine.checked(content, each, library);
        Derived derived = new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
        Clearance clearance = Clearance.on(DAY, checked.treatment().get().publication(), Audience.EVERYBODY);
        assertThat(PageComposer.compose(derived.worked(), library.library(), clearance).files())
                .filteredOn(file -> file.path().endsWith("linked-art.json")).singleElement()
                .satisfies(file -> assertThat(file.text()).contains("\"Modification\"").doesNotContain("carried_out_by"));
    }

    @Test
    void a_publication_that_leaves_rules_open_gets_no_sheets_for_the_bench() throws IOException {
        Path content = licensed();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        List<Message> told = new ArrayList<>();
        Map<String, Document> pages = pages(content, library, content.resolve("cases/newspaper-cuttings"), told);
        assertThat(pages).doesNotContainKeys("cases/newspaper-cuttings/steps.html", "cases/newspaper-cuttings/preparation.html");
        assertThat(told).filteredOn(message -> message.code().equals("CONS-023")).isNotEmpty().allSatisfy(message ->
                assertThat(message.what()).contains("leaves this open: ", "wash").doesNotContain("washing-ends-by-observation"));
        assertThat(pages.get("cases/newspaper-cuttings/results.html").select("#findings-open").text()).contains("wash");
    }

    @Test
    void every_sheet_and_class_page_of_a_retold_case_says_so_too() {
        Path content = ChangedContent.of(SOUND, Path.of("src/test/resources/faulty/CONS-022/change.txt"), folder.resolve("sound"));
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Map<String, Document> pages = pages(content, library, content.resolve("cases/tide"), new ArrayList<>());
        assertThat(pages.keySet()).anyMatch(path -> path.endsWith("steps.html")).anyMatch(path -> path.endsWith("preparation.html"));
        assertThat(pages.values()).allSatisfy(page -> assertThat(page.select(".retold").text()).contains("by a learner", "CC-BY-NC-4.0"));
        assertThat(pages.get("cases/tide/index.html").select("#source").text()).contains("the whole recipe", "nothing");
    }
}
