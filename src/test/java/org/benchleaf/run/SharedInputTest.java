package org.benchleaf.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Message;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharedInputTest {

    @TempDir
    private Path folder;
    private Path content;
    private Path studio;

    @BeforeEach
    void write_a_studio() throws IOException {
        content = Files.createDirectories(folder.resolve("content"));
        studio = Files.writeString(content.resolve("studio.yaml"), "telephone: one");
        Files.setLastModifiedTime(studio, FileTime.fromMillis(0));
    }

    @Test
    void other_bytes_of_the_same_size_and_time_are_a_change() throws IOException {
        SharedInput before = SharedInput.of(content, Optional.empty());
        Files.writeString(studio, "telephone: two");
        Files.setLastModifiedTime(studio, FileTime.fromMillis(0));
        assertThat(before.changed()).contains(studio);
        assertThat(SharedInput.of(content, Optional.empty()).seed()).isNotEqualTo(before.seed());
    }

    @Test
    void a_file_that_was_put_back_is_a_change_but_makes_nothing_anew() throws IOException {
        SharedInput before = SharedInput.of(content, Optional.empty());
        Files.setLastModifiedTime(studio, FileTime.fromMillis(1));
        assertThat(before.changed()).contains(studio);
        assertThat(SharedInput.of(content, Optional.empty()).seed()).isEqualTo(before.seed());
    }

    @Test
    void a_file_that_came_or_went_is_named() throws IOException {
        SharedInput before = SharedInput.of(content, Optional.empty());
        Path glossary = Files.writeString(content.resolve("glossary.yaml"), "");
        assertThat(before.changed()).contains(glossary);
        SharedInput both = SharedInput.of(content, Optional.empty());
        Files.delete(glossary);
        assertThat(both.changed()).contains(glossary);
    }

    @Test
    void a_link_to_a_folder_stops_no_edition_but_is_never_taken_for_unchanged() throws IOException {
        Files.createSymbolicLink(content.resolve("materials"), Files.createDirectories(folder.resolve("elsewhere")));
        SharedInput before = SharedInput.of(content, Optional.empty());
        assertThat(before.changed()).isEmpty();
        assertThat(SharedInput.of(content, Optional.empty()).seed()).isNotEqualTo(before.seed());
    }

    @Test
    void a_class_decides_over_its_own_case_and_a_style_over_none() throws IOException {
        Path look = Files.createDirectories(folder.resolve("look/style")).getParent();
        Files.createDirectories(content.resolve("classes"));
        SharedInput before = SharedInput.of(content, Optional.of(look));
        Path course = Files.writeString(content.resolve("classes/spring.yaml"), "case: tide");
        Files.writeString(look.resolve("style/base.css"), "a {}");
        SharedInput after = SharedInput.of(content, Optional.of(look));
        assertThat(after.seed()).isEqualTo(before.seed());
        assertThat(after.ofClasses(Set.of("spring.yaml"))).isNotEqualTo(before.ofClasses(Set.of("spring.yaml")));
        assertThat(after.ofClasses(Set.of("autumn.yaml"))).isEqualTo(before.ofClasses(Set.of("autumn.yaml")));
        assertThat(before.changed()).contains(course);
    }

    @ParameterizedTest
    @ValueSource(strings = {"style", "script", "drawing"})
    void what_pages_only_name_has_a_mark_of_its_own(String assets) throws IOException {
        Path look = folder.resolve("look");
        Files.createDirectories(look.resolve(assets));
        SharedInput before = SharedInput.of(content, Optional.of(look));
        Path asset = Files.writeString(look.resolve(assets).resolve("new"), "a");
        SharedInput after = SharedInput.of(content, Optional.of(look));
        assertThat(after.seed()).isEqualTo(before.seed());
        assertThat(after.ofAssets()).isNotEqualTo(before.ofAssets());
        assertThat(before.changed()).contains(asset);
        Files.writeString(look.resolve("page.ftl"), "");
        assertThat(SharedInput.of(content, Optional.of(look)).ofAssets()).isEqualTo(after.ofAssets());
    }

    @Test
    void a_large_file_that_nothing_reads_is_told_and_decides_over_nothing() throws IOException {
        SharedInput before = SharedInput.of(content, Optional.empty());
        Path film = Files.write(content.resolve("film.mov"), new byte[1_000_001]);
        Files.writeString(content.resolve("notes.txt"), "small");
        assertThat(before.changed()).isEmpty();
        assertThat(LibraryReader.read(content).messages().all()).extracting(Message::code).contains("SITE-030");
        assertThat(LibraryReader.read(content).messages().all()).filteredOn(said -> said.code().equals("SITE-030"))
                .singleElement().satisfies(said -> assertThat(said.place().file()).isEqualTo(film.toString().replace('\\', '/')));
    }

    @Test
    void a_case_is_not_shared_and_a_template_is() throws IOException {
        Path look = Files.createDirectories(folder.resolve("look"));
        SharedInput before = SharedInput.of(content, Optional.of(look));
        Files.createDirectories(content.resolve("cases/tide"));
        Files.writeString(content.resolve("cases/tide/case.md"), "");
        assertThat(before.changed()).isEmpty();
        Path page = Files.writeString(look.resolve("page.ftl"), "");
        assertThat(before.changed()).contains(page);
    }
}
