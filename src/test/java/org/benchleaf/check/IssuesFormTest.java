package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.benchleaf.ChangedContent;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was kept of an issue comes back as it was told, also from the files of earlier versions. */
class IssuesFormTest {

    private static final Path ISSUES = Path.of("classes/spring.issues.yaml");

    @TempDir
    private Path home;

    /** The line of 'bath' is that of the demo's issue 2, kept by an earlier version: 16 batches of 5.8 L. */
    @Test
    void an_issue_of_an_earlier_version_is_read_as_amount_and_batches() throws IOException {
        assertThat(amounts("bath: \"5.8 L, 16 times\"\n      mist: \"94 mL\"")).isEqualTo(
                Map.of("bath", new ClassPapers.Amount("5.8 L", 16), "mist", new ClassPapers.Amount("94 mL", 1)));
    }

    @Test
    void an_issue_with_batches_of_their_own_is_read_as_the_same() throws IOException {
        assertThat(amounts("bath: {each: \"5.8 L\", batches: 16}")).isEqualTo(Map.of("bath", new ClassPapers.Amount("5.8 L", 16)));
    }

    /** By hand: none of these ends in a number of batches, so that each is an amount as it stands. */
    @Test
    void words_that_tell_no_number_of_batches_stay_whole() throws IOException {
        assertThat(amounts("a: \"5.8 L, many times\"\n      b: \"3, 2\"\n      c: \"1 L, 12345678901 times\"")).isEqualTo(
                Map.of("a", new ClassPapers.Amount("5.8 L, many times", 1), "b", new ClassPapers.Amount("3, 2", 1),
                        "c", new ClassPapers.Amount("1 L, 12345678901 times", 1)));
    }

    private Map<String, ClassPapers.Amount> amounts(String lines) throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), home);
        Files.writeString(home.resolve(ISSUES),
                "issues:\n  - number: 1\n    on: 2026-03-30\n    mark: \"941a863fa6d3\"\n    amounts:\n      "
                + lines + "\n");
        CheckedLibrary checked = LibraryChecker.check(LibraryReader.read(home));
        assertThat(checked.messages().all()).noneMatch(message -> message.place().file().contains("issues"));
        return checked.library().classes().get(0).papers().issued().get(0).amounts();
    }
}
