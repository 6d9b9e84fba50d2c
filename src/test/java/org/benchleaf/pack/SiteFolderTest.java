package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be a site's folder is refused before anything is made. */
class SiteFolderTest {

    @TempDir
    private Path folder;

    @Test
    void a_file_where_the_site_belongs_is_refused_and_left_alone() throws IOException {
        Path file = Files.writeString(folder.resolve("site"), "somebody's notes");
        assertThatThrownBy(() -> SitePacker.open(file)).isInstanceOfSatisfying(EditionStopped.class,
                stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-003"));
        assertThat(file).content().isEqualTo("somebody's notes");
    }

    @Test
    void a_whole_disk_is_refused() {
        Path disk = folder.toAbsolutePath().getRoot();
        assertThatThrownBy(() -> SitePacker.open(disk)).isInstanceOfSatisfying(EditionStopped.class,
                stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-003"));
    }
}
