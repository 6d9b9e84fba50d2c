package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Catalogue;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every message has a faulty folder that brings it out and nothing else. That the commands say what {@code told.txt}
 * lists is the matter of {@code ContentCorpusTest}; here it is seen that the lists are complete.
 */
class FaultyContentTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final Path FAULTY = Path.of("src/test/resources/faulty");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    /**
     * So much spirit that the room could explode is always far above the limit for a working day as well; and a reason
     * that does not lift a stop is told beside the stop. A solution made from itself has no known composition. A case
     * without sheets says that it has none; a retold case says which rule its source leaves open. A draft is told to be one. Of a
     * bath for a sheet of unknown size nothing says how much there is.
     */
    private static final Map<String, Set<String>> TOLD_WITH = Map.of("HAZ-005", Set.of("HAZ-002"),
            "REASON-003", Set.of("RULE-BATH-ABOVE-60"), "FIG-002", Set.of("HAZ-004"),
            "HAZ-020", Set.of("CONS-004"),
            "CONS-023", Set.of("RULE-WASHING-ENDS-BY-OBSERVATION"),
            "DRAFT-001", Set.of("CONS-001"), "FIG-024", Set.of("FIG-015"), "DRAFT-002", Set.of("CONS-001"));

    /**
     * Messages that no content can bring out, since they speak of the disk, of the site's folder, of other runs, of
     * templates or of the program itself; each with the test that does.
     */
    private static final Map<String, String> NOT_BY_CONTENT = Map.ofEntries(
            // Pictures are made anew without anything hidden; only a fault of the program could leave some in.
            Map.entry("LEAK-002", "privacy/PrivateScanTest"),
            // Told when a class is planned, by folders of their own.
            Map.entry("PLAN-001", "command/PlanCommandTest"),
            Map.entry("PLAN-002", "command/PlanCommandTest"),
            Map.entry("PLAN-003", "command/PlanCommandTest"),
            Map.entry("PLAN-004", "command/PlanCommandTest"),
            Map.entry("PLAN-005", "command/PlanCommandTest"),
            Map.entry("PLAN-006", "command/PlanCommandTest"),
            Map.entry("PLAN-007", "command/PlanCommandTest"),
            Map.entry("PLAN-008", "command/PlanCommandTest"),
            Map.entry("PLAN-009", "command/PlanCommandTest"),
            Map.entry("PLAN-010", "command/PlanCommandTest"),
            Map.entry("PLAN-011", "command/PlanCommandTest"),
            Map.entry("PLAN-012", "command/PlanCommandTest"),
            Map.entry("PLAN-013", "command/PlanCommandTest"),
            // Records are no content.
            Map.entry("RECORD-001", "command/ClassRecordsTest"),
            Map.entry("RECORD-002", "command/ClassRecordsTest"),
            Map.entry("RECORD-003", "command/ClassRecordsTest"),
            Map.entry("RECORD-004", "command/ClassRecordsTest"),
            Map.entry("RECORD-005", "command/ClassRecordsTest"),
            // A fixture of a megabyte would have to be carried along.
            Map.entry("SITE-030", "run/SharedInputTest"),
            // Told when the other cases are published.
            Map.entry("DRAFT-003", "command/UnfinishedCasesTest"),
            // What content can name is told by READ-023.
            Map.entry("SITE-012", "pack/SitePackerTest"),
            Map.entry("SITE-001", "pack/SitePackerTest"),
            Map.entry("SITE-002", "pack/SitePackerTest"),
            Map.entry("SITE-003", "pack/SiteFolderTest"),
            Map.entry("SITE-004", "pack/SitePackerTest"),
            Map.entry("SITE-005", "pack/SitePackerTest"),
            Map.entry("SITE-006", "run/PublishingTest"),
            Map.entry("SITE-007", "run/PublishingTest"),
            // Every page of a case is linked by the program.
            Map.entry("SITE-010", "pack/SitePackerTest"),
            // Two ids of one file are refused before; names of files are made from them.
            Map.entry("SITE-013", "pack/SitePackerTest"),
            Map.entry("SITE-014", "pack/SitePackerTest"),
            // Stories hold no picture, style or script; only a template could load one.
            Map.entry("SITE-015", "pack/SitePackerTest"),
            Map.entry("SITE-017", "pack/SitePackerTest"),
            Map.entry("SITE-018", "pack/CutOffTest"),
            Map.entry("SITE-040", "command/TemplatesTest"),
            Map.entry("SITE-041", "command/TemplatesTest"),
            // Stories are stopped long before; only very many cases or a template make so heavy a page.
            Map.entry("SITE-042", "pack/SitePackerTest"),
            Map.entry("SITE-019", "run/PublishingTest"),
            // These need an edition that is there already.
            Map.entry("SITE-020", "command/WithdrawalTest"),
            Map.entry("SITE-021", "command/WithdrawalTest"),
            Map.entry("SITE-022", "command/WithdrawalTest"),
            Map.entry("SITE-023", "command/WithdrawalTest"),
            Map.entry("SITE-024", "command/TwoSitesTest"),
            Map.entry("SITE-025", "command/WithdrawalTest"),
            Map.entry("SITE-026", "command/WithdrawalTest"),
            Map.entry("SITE-027", "command/WithdrawalTest"),
            // Needs a machine whose locale lacks letters.
            Map.entry("SITE-031", "command/OddNamesTest"));

    @Test
    void the_sound_content_brings_out_no_message() {
        assertThat(told(SOUND).stream().map(MessageText::of)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void a_fault_brings_out_its_own_message_alone(String code) throws IOException {
        Set<String> told = new TreeSet<>();
        for (String list : List.of("told.txt", "told-when-published.txt")) {
            Path file = FAULTY.resolve(code).resolve(list);
            if (Files.exists(file)) {
                Files.readAllLines(file).forEach(line -> told.add(line.substring(line.lastIndexOf(' ') + 1)));
            }
        }
        assertThat(told).contains(code);
        told.removeAll(TOLD_WITH.getOrDefault(code, Set.of()));
        assertThat(told).containsExactly(code);
    }

    @Test
    void every_message_has_a_fault_or_a_reason_why_not() {
        Set<String> without = Catalogue.all().stream().map(Message.Id::code).collect(Collectors.toCollection(TreeSet::new));
        codes().forEach(without::remove);
        assertThat(without).isEqualTo(new TreeSet<>(NOT_BY_CONTENT.keySet()));
    }

    @Test
    void what_content_cannot_bring_out_is_brought_out_by_the_test_named() {
        assertThat(NOT_BY_CONTENT).allSatisfy((code, test) -> assertThat(
                Path.of("src/test/java/org/benchleaf", test + ".java")).content().contains(code));
    }

    @Test
    void every_fault_has_a_message() {
        List<String> known = Catalogue.all().stream().map(Message.Id::code).toList();
        assertThat(codes()).allMatch(code -> known.contains(code) || code.startsWith("RULE-"));
    }

    static Stream<String> codes() {
        try (Stream<Path> folders = Files.list(FAULTY)) {
            return folders.map(path -> path.getFileName().toString()).sorted().toList().stream();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Everything that is said about a content folder before anything is published. */
    static List<Message> told(Path content) {
        Messages messages = new Messages();
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        messages.addAll(library.messages());
        for (Path each : CaseReader.folders(content)) {
            Checked checked = CaseChecker.check(CaseReader.read(content, each), library.library(), TODAY,
                    new Deriver(library.library())::ph);
            messages.addAll(checked.messages());
            if (!library.messages().hasErrors() && checked.treatment().isPresent()) {
                Derived derived = new Deriver(library.library()).derive(checked.treatment().get(), checked.findings());
                Audience.of(library.library().studio()).stream().map(audience -> Clearance.on(TODAY,
                        checked.treatment().get().publication(), audience)).map(clearance -> derived.messages().hasErrors() ? clearance
                        : clearance.of(derived.worked())).flatMap(clearance -> clearance.told().stream()).distinct()
                        .forEach(messages::add);
                messages.addAll(derived.messages());
            }
        }
        return messages.all();
    }
}
