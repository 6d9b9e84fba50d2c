package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
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
import org.benchleaf.message.Severity;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A finished treatment whose notes have gaps, as a newcomer to the format wrote it down: one run of {@code check} tells every
 * rule that needs an answer with the line to add, and with these lines it is published.
 */
class FinishedTreatmentTest {

    private static final Path CONTENT = Path.of("src/test/resources/finished");
    private static final String CASE = "cases/broadside";

    @TempDir
    private Path folder;

    private int copies;

    private static List<Message> errors(Checked checked) {
        return checked.messages().all().stream().filter(message -> message.severity() == Severity.ERROR).toList();
    }

    private static CheckedLibrary library(Path content) {
        return LibraryChecker.check(LibraryReader.read(content));
    }

    @Test
    void the_first_run_tells_every_answer_that_is_wanted_and_the_second_has_no_error() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        String answered = Files.readString(file);
        Files.writeString(file, answered.lines().filter(line -> !line.startsWith("  - {rule: ")).collect(Collectors.joining("\n"))
                .replace("reasons:", "reasons: []"));
        List<Message> wanted = errors(WholeLine.checked(content, content.resolve(CASE), library(content)));
        assertThat(wanted).extracting(Message::code).contains("RULE-BATH-LIFTED-ON-SUPPORT", "RULE-EVERY-LIQUID-TESTED");
        assertThat(wanted).allSatisfy(message -> assertThat(message.fix()).contains("add {rule: "));

        Files.writeString(file, answered);
        assertThat(errors(WholeLine.checked(content, content.resolve(CASE), library(content)))).isEmpty();
    }

    @Test
    void its_case_study_says_what_is_not_recorded_and_invents_nothing() {
        assertThat(text("index.html")).contains("It is not recorded whether this rule was kept.", "It is no advice to do the same",
                "; width not recorded", "7.0 to 7.4 (n = 3) after").doesNotContain("(not known)", "wood pulp, not known",
                "Spot-test results", "Nothing that was measured is on record");
    }

    @Test
    void its_spot_tests_stand_among_its_results_since_it_has_no_step_sheet() {
        assertThat(text("results.html")).contains("Spot-test results", "stable: one drop, blotted; for how long was not noted",
                "not recorded: a test with paste was not told").doesNotContain("not timed");
    }

    /** Its two washings have nothing else to tell them apart; nobody noted how long most of its steps took. */
    @Test
    void steps_of_one_name_are_told_apart_and_a_time_that_nobody_gave_is_none() {
        assertThat(text("results.html")).contains("5. Washing: It is not recorded whether this rule was kept.",
                "6. Washing: It is not recorded whether this rule was kept.",
                "7. Drying not recorded 8. Mending not recorded 9. Measuring");
    }

    /** Nobody planned it: the case was written down when the treatment was over. */
    @Test
    void its_times_are_those_on_record_and_none_is_called_planned() {
        assertThat(text("index.html")).contains("with the times that are on record", "5. Washing 30 min 6.")
                .doesNotContain("lanned").doesNotContain("sual value");
        assertThat(text("results.html")).contains("Times of the steps on record").doesNotContain("lanned").doesNotContain("0 min no");
    }

    /** Nobody timed it to the minute: each page tells a time as the notes do, with the least and the most that it leaves open. */
    @Test
    void times_are_told_as_the_notes_tell_them() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        Files.writeString(file, timed(timed(timed(Files.readString(file), "clean", "about 3 h"), "dry", "more than 36 h"),
                "mend", "less than 50 min"));
        assertThat(errors(WholeLine.checked(content, content.resolve(CASE), library(content)))).isEmpty();
        assertThat(text(content, "index.html")).contains("about 3 h", "more than 36 h", "less than 50 min");
        // About 3 h: all that rounds to 3 h. Nobody told the most of the drying and the least of the mending.
        assertThat(text(content, "results.html")).contains("3. Surface cleaning about 3 h not recorded not recorded",
                "7. Drying more than 36 h 36 h not recorded 8. Mending less than 50 min not recorded 50 min")
                .doesNotContain("0 min 50 min");
    }

    @Test
    void what_nobody_recorded_of_a_damage_and_of_a_medium_stands_as_no_place_and_no_colour() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        Files.writeString(file, Files.readString(file).replace("where: lower edge", "where: not known, degree: not known")
                .replace("is: printing ink, colour: black", "is: printing ink, colour: not known"));
        assertThat(errors(WholeLine.checked(content, content.resolve(CASE), library(content)))).isEmpty();
        assertThat(text(content, "index.html")).contains("Media printing ink", "tideline")
                .doesNotContain("tideline, not known", "printing ink, not known", "tideline: not known");
    }

    /** The adhesive lies on an area: (4 cm + 2 × 5 mm) × 8 mm = 4 cm², with 0.03 g/cm² 0.12 g, by hand. */
    @Test
    void what_follows_from_a_value_that_nobody_recorded_is_told_with_its_cause() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        Files.writeString(file, Files.readString(file).replace("uses: [kozo, paste]", """
                mend: {damages: [t1, t2], tissue: kozo, with: paste, strip: 8 mm, lap: 5 mm, piece: not known, paste load: 0.03 g/cm²}
                    heat: {tool: soft-brush, temperature: not known, time: not known}""").replace(
                        "uses: [wash-water]\n    support: {under: not known}\n    after: [humidify]",
                        "mist: {of: wash-water, amount: not known}\n    support: {under: not known}\n    after: [humidify]")
                .replace("uses: [wash-water]", "layer: {of: wash-water, thickness: not known, height: 4 cm, width: 4 cm, between: kozo}")
                .replace("support: {paper: machine-made wood pulp", "support: {paper: wood pulp"));
        assertThat(errors(WholeLine.checked(content, content.resolve(CASE), library(content)))).isEmpty();
        Derived derived = derived(content);
        assertThat(derived.messages().all()).filteredOn(message -> message.severity() == Severity.ERROR).isEmpty();
        assertThat(derived.worked().figures().get("mend.paste-mass").value().in(Unit.GRAM)).isCloseTo(0.12, within(1e-9));
        assertThat(derived.worked().figures()).doesNotContainKeys("mend.tissue-mass", "wash-1.amount", "wash-2.total");
        assertThat(text(content, "index.html")).contains(
                "The mass of the tissue cannot be worked out, because its grammage is not given.",
                "Tissue and adhesive cannot be worked out in full, because the extent of a damage is not given.",
                "How much liquid to make cannot be worked out, because the amount of mist is not given.",
                "How much of the layer to make cannot be worked out, because its thickness is not given.");
    }

    @Test
    void a_per_cent_without_its_kind_stands_in_a_case_that_is_done_and_is_asked_in_one_that_is_not() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        String bare = Files.readString(file).replace("adjust: {liquid: tap-filtered-water, with: calcium-hydroxide, to: pH 8}",
                "dissolve: {solid: paste, in: tap-filtered-water, strength: 1 %}");
        Files.writeString(file, bare);
        assertThat(WholeLine.checked(content, content.resolve(CASE), library(content)).messages().all()).extracting(Message::code)
                .noneMatch(code -> code.startsWith("FORM"));

        Files.writeString(file, bare.lines().filter(line -> !line.contains("past: ")).collect(Collectors.joining("\n")));
        assertThat(errors(WholeLine.checked(content, content.resolve(CASE), library(content)))).extracting(Message::code)
                .contains("FORM-011");
    }

    /** Of steps on record by a month or a year neither days nor an order is told that they leave open. */
    @Test
    void a_month_and_a_year_are_told_as_they_are_and_compared_as_far_as_they_tell() throws IOException {
        assertThat(text(dated("2025-06", "2025-06-03"), "index.html")).contains("When it was done, by the record: June 2025.")
                .doesNotContain(" in all, ");
        assertThat(text(dated("2025-06", "2025-08-03"), "index.html")).contains("by the record: June 2025 – 3 August 2025.");
        assertThat(text(dated("2025", "2025-08"), "index.html")).contains("by the record: 2025.");
        assertThat(codes("2025-06", "2025-06-03")).doesNotContain("FORM-022", "FORM-046", "RULE-CONSENT-BEFORE-TREATMENT");
        assertThat(codes("2025-07", "2025-06-03")).contains("FORM-046");
        assertThat(codes("2025-04", "2025-06-03")).contains("RULE-CONSENT-BEFORE-TREATMENT");
        assertThat(codes("2025-13", "2025-06-03")).contains("FORM-022");
    }

    private List<String> codes(String dried, String mended) throws IOException {
        Path content = dated(dried, mended);
        return WholeLine.checked(content, content.resolve(CASE), library(content)).messages().all().stream().map(Message::code).toList();
    }

    private Path dated(String dried, String mended) throws IOException {
        Path content = folder.resolve(String.valueOf(++copies));
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve(CASE + "/case.md");
        Files.writeString(file, Files.readString(file).replace("- id: dry\n", "- id: dry\n    on: " + dried + "\n")
                .replace("- id: mend\n", "- id: mend\n    on: " + mended + "\n"));
        return content;
    }

    private static String timed(String written, String step, String takes) {
        return written.replaceFirst("(?s)(- id: " + step + "\n.*?takes: )not known", "$1" + takes);
    }

    private static String text(String name) {
        return text(CONTENT, name);
    }

    private static Derived derived(Path content) {
        CheckedLibrary library = library(content);
        Checked checked = WholeLine.checked(content, content.resolve(CASE), library);
        return new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
    }

    private static String text(Path content, String name) {
        Derived derived = derived(content);
        Clearance clearance = Clearance.on(LocalDate.of(2026, 6, 1), derived.worked().source().publication(),
                Audience.EVERYBODY).of(derived.worked());
        Page page = PageComposer.compose(derived.worked(), library(content).library(), clearance).pages().stream()
                .filter(one -> one.path().equals(CASE + "/" + name)).findFirst().orElseThrow();
        return Jsoup.parse(new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(page).bytes(),
                StandardCharsets.UTF_8)).body().text().replaceAll("\\h", " ");
    }
}
