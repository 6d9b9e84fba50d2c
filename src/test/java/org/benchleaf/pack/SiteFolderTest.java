package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
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

    /** Words of Linux for errors 28, 30, 122 (strerror(3)), and what Java throws for others. */
    @Test
    void the_advice_fits_the_cause() {
        assertThat(Disk.remedy(new FileSystemException("x", null, "No space left on device"))).contains("room");
        assertThat(Disk.remedy(new FileSystemException("x", null, "Disk quota exceeded"))).contains("room");
        assertThat(Disk.remedy(new FileSystemException("x", null, "Read-only file system"))).contains("writable");
        assertThat(Disk.remedy(new AccessDeniedException("x"))).contains("owner");
        assertThat(Disk.remedy(new FileAlreadyExistsException("x"))).contains("Move what stands there");
        assertThat(Disk.remedy(new IOException())).contains("still connected");
    }

    @Test
    void a_whole_disk_is_refused() {
        Path disk = folder.toAbsolutePath().getRoot();
        assertThatThrownBy(() -> SitePacker.open(disk)).isInstanceOfSatisfying(EditionStopped.class,
                stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-003"));
    }
}
