package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A message about a row of a studio's shows a line that could be copied into it. */
class RowExamplesTest {

    @TempDir
    private Path content;

    @Test
    void a_key_that_lacks_is_shown_as_the_shipped_rows_write_it() throws IOException {
        assertThat(told("my-solvent:\n  name: My solvent\n")).anyMatch(fix -> fix.contains("for example 'form: "))
                .anyMatch(fix -> fix.contains("for example 'hazards: ")).allMatch(fix -> fix.contains("for example '"));
    }

    @Test
    void a_row_without_keys_is_shown_how_a_row_begins() throws IOException {
        assertThat(told("my-solvent: flammable\n")).singleElement().asString().contains("such as '", ": {name: ", ", …}'");
    }

    private List<String> told(String table) throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/substances.yaml"), table);
        Messages messages = new Messages();
        ReferenceReader.read(content, messages);
        return messages.all().stream().map(Message::fix).toList();
    }
}
