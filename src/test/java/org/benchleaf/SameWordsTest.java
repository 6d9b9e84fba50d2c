package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Method;
import org.benchleaf.model.Phrases;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A studio that says something in the words of the program keeps its own words for it in other languages, and the program its own. The
 * program's are those of {@code translated/fr.yaml}.
 */
class SameWordsTest {

    private static final String TEXT = "Ethanol and water to a wanted strength";
    private static final String OF_PROGRAM = "Éthanol et eau au titre voulu";

    @TempDir
    private Path folder;

    private Library library(String words) throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder);
        change("studio.yaml", "languages: [en, es]", "languages: [en, fr]");
        change("materials/solids.yaml", "name: Calcium hydroxide, powder", "name: " + TEXT);
        Files.writeString(folder.resolve("words.fr.yaml"), TEXT + ": " + words + "\n");
        return LibraryChecker.check(LibraryReader.read(folder)).library();
    }

    private void change(String name, String from, String to) throws IOException {
        Path file = folder.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void a_label_of_the_studio_and_a_method_of_the_program_keep_their_own_words() throws IOException {
        Library library = library("Poudre de l’atelier");
        Phrases french = library.translations().get("fr");

        assertThat(french.of(library.materials().get("calcium-hydroxide").name())).isEqualTo("Poudre de l’atelier");
        assertThat(LibraryTexts.in(french, library).formulary().methods()).extracting(Method::title).contains(OF_PROGRAM)
                .doesNotContain("Poudre de l’atelier");
    }
}
