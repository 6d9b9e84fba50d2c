package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.ChangedContent;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bottle says what is in it by whichever name its label bears; ethanol has the CAS number 64-17-5. */
class MaterialSubstanceTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"ethanol", "Ethanol", "ethyl alcohol", "64-17-5"})
    void a_material_names_its_substance_by_key_name_synonym_or_number(String name) throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder);
        Path liquids = folder.resolve("materials/liquids.yaml");
        Files.writeString(liquids, Files.readString(liquids).replace("substance: ethanol\n", "substance: " + name + "\n"));

        assertThat(LibraryChecker.check(LibraryReader.read(folder)).library().materials().get("ethanol-96").substance())
                .contains("ethanol");
    }
}
