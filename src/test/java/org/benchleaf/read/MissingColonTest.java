package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A key without its colon is told on its own line; which line that is was counted by hand. */
class MissingColonTest {

    private static final String NO_COLON = "A colon is missing after the key on this line.";

    @TempDir
    private Path folder;

    /** Line and words of what is said of a glossary of these lines. */
    private String said(String... lines) throws IOException {
        Files.writeString(folder.resolve("glossary.yaml"), String.join("\n", lines) + "\n");
        return LibraryReader.read(folder).messages().all().stream().filter(message -> message.code().equals("READ-010"))
                .map((Message message) -> message.place().line() + " " + message.what()).collect(Collectors.joining("; "));
    }

    @Test
    void between_other_keys() throws IOException {
        assertThat(said("- term: tideline", "  plain A brown line.", "  more: Where water stopped.")).isEqualTo("2 " + NO_COLON);
    }

    @Test
    void at_the_end_of_a_group() throws IOException {
        assertThat(said("- term: tideline", "  plain A brown line.", "- term: foxing")).isEqualTo("2 " + NO_COLON);
    }

    @Test
    void at_the_beginning_of_a_group() throws IOException {
        assertThat(said("support:", "  # weighed", "  grammage 80 g/m²", "  paper: rag")).isEqualTo("3 " + NO_COLON);
        assertThat(said("- term tideline", "  plain: A brown line.")).isEqualTo("1 " + NO_COLON);
        assertThat(said("term tideline", "plain: A brown line.")).isEqualTo("1 " + NO_COLON);
    }

    @Test
    void two_in_a_row_are_told_at_the_first() throws IOException {
        assertThat(said("support:", "  grammage 80 g/m²", "  state brittle", "  paper: rag")).isEqualTo("2 " + NO_COLON);
    }

    @Test
    void a_second_colon_is_still_told_as_one() throws IOException {
        assertThat(said("- term: tideline: brown")).isEqualTo("1 A second ': ' stands on this line.");
        assertThat(said("- term: tideline", "    goes on", "    and on: here")).startsWith("3 A second ': '");
    }
}
