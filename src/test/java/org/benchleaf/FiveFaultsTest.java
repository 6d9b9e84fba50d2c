package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FiveFaultsTest {

    @TempDir
    private Path folder;

    @Test
    void five_faults_of_one_file_are_all_told_in_one_run_at_their_line_and_column() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Path file = content.resolve("cases/tide/case.md");
        String text = Files.readString(file);
        Files.writeString(file, text
                .replace("    grammage: 82 g/m²", "    gramage: 82 g/m²")
                .replace("thickness: 0.11 mm", "thickness: 0,11 mm")
                .replace("      depth: 25 mm", "      depth: 25 %")
                .replace("    after: [relax]", "    after: [relaxx]")
                .replace("## Into the water {#wash}", "## Into the water {#wash}\n\nSee [this](javascript:x)."));
        assertThat(FaultyContentTest.told(content)).extracting(message -> message.code() + " "
                + message.place().line() + ":" + message.place().column()).containsExactlyInAnyOrder(
                "FORM-001 " + place(file, "gramage"), "FORM-010 " + place(file, "0,11 mm", 1),
                "FORM-011 " + place(file, "25 %", 3), "FORM-030 " + place(file, "relaxx"),
                "READ-024 " + place(file, "[this]"));
    }

    private static String place(Path file, String words) throws IOException {
        return place(file, words, 0);
    }

    /** Where words stand in a file, counted from 1, found without the program. */
    private static String place(Path file, String words, int further) throws IOException {
        int line = 0;
        for (String each : Files.readAllLines(file)) {
            line++;
            if (each.contains(words)) {
                return line + ":" + (each.indexOf(words) + 1 + further);
            }
        }
        throw new IllegalArgumentException(words);
    }
}
