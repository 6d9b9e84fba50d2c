package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentHashTest {

    @TempDir
    private Path folder;

    @Test
    void the_same_files_in_another_place_have_the_same_hash() throws IOException {
        Path one = Files.createDirectories(folder.resolve("one/inner"));
        Files.writeString(one.resolve("a.txt"), "text");
        Path other = Files.createDirectories(folder.resolve("other/inner"));
        Files.writeString(other.resolve("a.txt"), "text");
        assertThat(hash("seed", one.getParent())).isEqualTo(hash("seed", other.getParent()));
        assertThat(hash("seed", one.getParent())).isNotEqualTo(hash("another seed", one.getParent()));
    }

    @Test
    void a_byte_a_name_or_a_file_more_makes_another_hash() throws IOException {
        Files.writeString(folder.resolve("a.txt"), "text");
        String before = hash("", folder);
        Files.writeString(folder.resolve("a.txt"), "test");
        String otherByte = hash("", folder);
        Files.move(folder.resolve("a.txt"), folder.resolve("b.txt"));
        String otherName = hash("", folder);
        Files.writeString(folder.resolve("c.txt"), "");
        assertThat(hash("", folder)).isNotEqualTo(otherName);
        assertThat(otherName).isNotEqualTo(otherByte);
        assertThat(otherByte).isNotEqualTo(before);
    }

    @Test
    void text_moved_from_one_file_to_the_next_makes_another_hash() throws IOException {
        Files.writeString(folder.resolve("a.txt"), "ab");
        Files.writeString(folder.resolve("b.txt"), "c");
        String before = hash("", folder);
        Files.writeString(folder.resolve("a.txt"), "a");
        Files.writeString(folder.resolve("b.txt"), "bc");
        assertThat(hash("", folder)).isNotEqualTo(before);
    }

    @Test
    void a_program_in_one_file_is_hashed_by_its_bytes() throws IOException {
        Path jar = folder.resolve("program.jar");
        Files.writeString(jar, "one");
        String before = hash("", jar);
        Files.writeString(jar, "two");
        assertThat(hash("", jar)).isNotEqualTo(before);
    }

    @Test
    void a_link_to_a_folder_is_never_taken_for_unchanged() throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Files.createSymbolicLink(inner.resolve("link"), folder.resolve("elsewhere"));
        assertThat(hash("", inner)).isNotEqualTo(hash("", inner));
    }

    private static String hash(String seed, Path folder) {
        return ContentHash.of(seed, folder, path -> true, new TreeMap<>());
    }
}
