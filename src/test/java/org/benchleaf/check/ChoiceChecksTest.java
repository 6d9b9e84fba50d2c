package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.benchleaf.ChangedContent;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.MessageText;
import org.benchleaf.model.Library;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a case tells of the time after treatment is weighed against the materials of its steps; the demo's tide table is mended with paste.
 */
class ChoiceChecksTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @TempDir
    private Path home;

    /** Brückle 1997: a dried film of starch paste distorts and contracts more than one of methyl cellulose of like thickness. */
    @ParameterizedTest
    @ValueSource(strings = {"must stay flexible", "changing humidity"})
    void what_the_sheet_has_to_bear_afterwards_speaks_against_paste(String word) throws IOException {
        assertThat(told("afterwards: [" + word + "]\n  ")).anyMatch(message -> message.contains("CHOICE-001")
                && message.contains("'mend'") && message.contains("distorts and contracts"));
    }

    @Test
    void a_case_that_tells_nothing_of_it_is_not_asked() throws IOException {
        assertThat(told("")).noneMatch(message -> message.contains("CHOICE-001"));
    }

    @Test
    void a_word_that_is_not_on_the_list_is_told() throws IOException {
        assertThat(told("afterwards: [must stay bendy]\n  ")).anyMatch(message -> message.contains("must stay bendy"));
    }

    /** CAMEO, hydroxypropyl cellulose: it discolours with age, on whatever sheet; so a reason for it answers something on each. */
    @Test
    void a_reason_for_a_material_that_something_always_speaks_against_is_not_called_needless() throws IOException {
        Library library = LibraryChecker.check(LibraryReader.read(Path.of("content"))).library();
        Checked checked = CaseChecker.check(CaseReader.read(Path.of("content"), Path.of("content/cases/ferry-letter")), library, TODAY,
                new Deriver(library)::ph);
        assertThat(checked.messages().all()).noneMatch(message -> message.code().equals("REASON-001"));
        assertThat(checked.findings()).anyMatch(finding -> finding.rule().equals("choice-weighed")
                && finding.what().contains("discolours with age"));
    }

    private List<String> told(String added) throws IOException {
        ChangedContent.copy(Path.of("content"), home.resolve("content"));
        Path content = home.resolve("content");
        Path file = content.resolve("cases/tide-table/case.md");
        String text = Files.readString(file);
        assertThat(text).contains("  size: {height: 412 mm");
        Files.writeString(file, text.replace("  size: {height: 412 mm", "  " + added + "size: {height: 412 mm"));
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        return CaseChecker.check(CaseReader.read(content, file.getParent()), library, TODAY, new Deriver(library)::ph).messages()
                .all().stream()
                .map(MessageText::of).toList();
    }
}
