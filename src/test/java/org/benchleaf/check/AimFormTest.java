package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.benchleaf.ChangedContent;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.model.Library;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The sound case has two aims: "take out soluble acid and colour, so that the sheet bends again" and "close the tears for hanging". What
 * each row expects was read off these words.
 */
class AimFormTest {

    private static final Path CASE = Path.of("cases/tide/case.md");

    @TempDir
    private Path home;

    @Test
    void the_first_words_of_an_aim_tie_a_result_to_it() throws IOException {
        assertThat(told("[take out soluble acid]")).isEmpty();
        assertThat(told("[Close the tears for hanging, take out]")).isEmpty();
    }

    @Test
    void words_that_begin_no_aim_or_break_off_inside_a_word_are_told() throws IOException {
        assertThat(told("[the tears]")).containsExactly("FORM-154");
        assertThat(told("[clo]")).containsExactly("FORM-154");
    }

    @Test
    void words_that_begin_two_aims_are_told() throws IOException {
        assertThat(told("[take out]", "take out the creases")).containsExactly("FORM-154");
        assertThat(told("[take out the]", "take out the creases")).isEmpty();
    }

    private List<String> told(String answers) throws IOException {
        return told(answers, "close the tears for hanging");
    }

    private List<String> told(String answers, String secondAim) throws IOException {
        Path content = Files.createTempDirectory(home, "content");
        Files.delete(content);
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Path file = content.resolve(CASE);
        Files.writeString(file, Files.readString(file).replace("close the tears for hanging", secondAim)
                .replace("  - measure: pH\n", "  - measure: pH\n    answers: " + answers + "\n"));
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        return CaseChecker.check(CaseReader.read(content, file.getParent()), library, LocalDate.of(2026, 6, 30),
                new Deriver(library)::ph).messages().all().stream().map(Message::code).filter("FORM-154"::equals).toList();
    }
}
