package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Severity;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;

class DemoCaseTest {

    private static final Path CONTENT = Path.of("content");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @Test
    void the_library_of_the_demo_has_no_errors() {
        assertThat(errors(LibraryChecker.check(LibraryReader.read(CONTENT)).messages().all())).isEmpty();
    }

    @Test
    void every_case_of_the_demo_is_understood() {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(CONTENT));
        for (Path folder : CaseReader.folders(CONTENT)) {
            Checked checked = CaseChecker.check(CaseReader.read(CONTENT, folder), library.library(), TODAY,
                    new Deriver(library.library())::ph);
            assertThat(errors(checked.messages().all())).isEmpty();
            assertThat(checked.treatment()).isPresent();
        }
    }

    private static List<String> errors(List<Message> messages) {
        return messages.stream().filter(message -> message.severity() == Severity.ERROR).map(MessageText::of).toList();
    }
}
