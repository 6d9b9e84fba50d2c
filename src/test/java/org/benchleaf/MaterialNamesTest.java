package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.message.Message;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a newcomer writes in the place of an id. The names are those of {@code substances*.yaml} and of the words in other languages. */
class MaterialNamesTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");

    @TempDir
    private Path folder;

    /** The fix that is told where a step uses that name. */
    private String fix(String written, String materials) throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        Path file = content.resolve("cases/tide/case.md");
        Files.writeString(file, Files.readString(file).replace("    do: Measure pH, colour and size",
                "    uses: [" + written + "]\n    do: Measure pH, colour and size"));
        Path liquids = content.resolve("materials/liquids.yaml");
        Files.writeString(liquids, Files.readString(liquids) + materials);
        Path studio = content.resolve("studio.yaml");
        Files.writeString(studio, Files.readString(studio).replace("languages: [en, es]", "languages: [en, fr]"));
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        return WholeLine.checked(content, content.resolve("cases/tide"), library).messages().all().stream()
                .filter(message -> message.code().equals("FORM-030")).map(Message::fix).findFirst().orElse("none");
    }

    private static final String BLEACH = "laundry-bleach:\n  name: Household bleach, 5 %\n  kind: liquid\n  plain: A bleach.\n"
            + "  substance: sodium hypochlorite\n  strength: 5 % m/m\n  pH: pH 12\n";

    @ParameterizedTest
    @CsvSource({"eau de Javel, laundry-bleach", "household-bleach, laundry-bleach", "sodium-hypochlorite, laundry-bleach",
        "hypoclorite, laundry-bleach", "laundry-blaech, laundry-bleach"})
    void a_material_is_found_by_another_name(String written, String id) throws IOException {
        assertThat(fix(written, BLEACH)).isEqualTo("Did you mean '" + id + "'?");
    }

    @Test
    void what_only_the_table_of_substances_has_is_told_with_what_to_enter() throws IOException {
        assertThat(fix("eau de Javel", ""))
                .contains("the table of substances has 'sodium hypochlorite'", "'substance: sodium hypochlorite'");
    }

    @Test
    void a_material_is_found_by_its_name_in_a_language_of_the_studio() throws IOException {
        assertThat(fix("hydroxyde de calcium", "")).isEqualTo("Did you mean 'calcium-hydroxide'?");
    }
}
