package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.pack.Editions.cases;
import static org.benchleaf.pack.Editions.contents;
import static org.benchleaf.pack.Editions.page;
import static org.benchleaf.pack.Editions.publish;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.FailingDisk;
import org.benchleaf.FailingDisk.Operation;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program or the disk stops at each single operation in turn: no file is ever half, and the next run mends it. */
class CutOffTest {

    private static final Map<String, String> FOREIGN = Map.of("README.md", "mine", "cases/one/notes.txt", "mine too");
    private static final Map<String, List<SiteFile>> OLD = oldEdition();
    private static final Map<String, List<SiteFile>> NEW = newEdition();
    private static final Map<String, String> BEFORE = published(OLD);
    private static final Map<String, String> AFTER = published(NEW);

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void wherever_the_program_ends_each_file_is_whole_and_the_next_run_brings_the_new_edition(boolean twoDisks)
            throws IOException {
        int at = 0;
        for (boolean ended = true; ended; at++) {
            try (Studio studio = new Studio(twoDisks)) {
                ended = studio.endsAt(at);
                studio.eachFileIsWhole();
                publish(studio.site, NEW);
                assertThat(studio.files()).as("cut off at %d", at).isEqualTo(AFTER);
            }
        }
        assertThat(at).isGreaterThan(30);
    }

    @Test
    void wherever_the_program_ends_the_next_run_finds_one_whole_edition_before_it_makes_its_own() throws IOException {
        boolean ended = true;
        for (int at = 0; ended; at++) {
            try (Studio studio = new Studio(false)) {
                ended = studio.endsAt(at);
                SitePacker.open(studio.site).close();
                assertThat(studio.files()).as("cut off at %d", at).isIn(BEFORE, AFTER);
            }
        }
    }

    @Test
    void a_run_that_is_cut_off_while_it_completes_another_is_completed_too() throws IOException {
        boolean ended = true;
        for (int first = 0; ended; first++) {
            boolean endedAgain = true;
            for (int second = 0; endedAgain; second += 3) {
                try (Studio studio = new Studio(false)) {
                    ended = studio.endsAt(first);
                    endedAgain = studio.endsAt(second);
                    studio.eachFileIsWhole();
                    SitePacker.open(studio.site).close();
                    assertThat(studio.files()).as("cut off at %d, then at %d", first, second).isIn(BEFORE, AFTER);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void wherever_the_disk_is_full_one_message_tells_it_and_each_file_is_whole(boolean twoDisks) throws IOException {
        boolean full = true;
        for (int at = 0; full; at++) {
            try (Studio studio = new Studio(twoDisks)) {
                int from = at;
                int[] count = {0};
                studio.publishes((kind, path) -> {
                    if (kind.fills() && count[0]++ >= from) {
                        throw new FileSystemException(path.toString(), null, "No space left on device");
                    }
                }, "No space left on device");
                full = count[0] > from;
                publish(studio.site, NEW);
                assertThat(studio.files()).as("full from %d on", at).isEqualTo(AFTER);
            }
        }
    }

    @Test
    void a_single_operation_that_is_refused_is_told_and_the_next_run_brings_the_new_edition() throws IOException {
        boolean refused = true;
        for (int at = 0; refused; at++) {
            try (Studio studio = new Studio(false)) {
                int which = at;
                int[] count = {0};
                studio.publishes((kind, path) -> {
                    if (count[0]++ == which) {
                        throw new AccessDeniedException(path.toString());
                    }
                }, "it is not permitted");
                refused = count[0] > which;
                publish(studio.site, NEW);
                assertThat(studio.files()).as("refused at %d", at).isEqualTo(AFTER);
            }
        }
    }

    @Test
    void a_folder_that_may_not_be_written_to_is_told_and_left_as_it_is() throws IOException {
        try (Studio studio = new Studio(false)) {
            Optional<EditionStopped> stopped = studio.publishes((kind, path) -> {
                if (kind != Operation.READ) {
                    throw new AccessDeniedException(path.toString());
                }
            }, "it is not permitted");
            assertThat(stopped).isPresent();
            assertThat(studio.files()).isEqualTo(BEFORE);
        }
    }

    /** A folder with an edition and some files of its owner, on a disk that can fail. */
    private static final class Studio implements AutoCloseable {

        private final FileSystem memory = Jimfs.newFileSystem(Configuration.unix());
        private final FailingDisk disk = new FailingDisk(memory);
        private final Path site = disk.path("/studio/site");

        Studio(boolean twoDisks) throws IOException {
            publish(site, OLD);
            for (var file : FOREIGN.entrySet()) {
                Files.writeString(site.resolve(file.getKey()), file.getValue());
            }
            if (twoDisks) {
                disk.isReallyTwoDisks();
            }
        }

        Map<String, String> files() throws IOException {
            return contents(site);
        }

        /** Publishes the new edition until the operation of a number, after which nothing happens any more. */
        boolean endsAt(int operation) {
            int[] count = {0};
            disk.meets((kind, path) -> {
                if (kind != Operation.READ && count[0]++ >= operation) {
                    throw new Editions.CutOff();
                }
            });
            try {
                publish(site, NEW);
                return false;
            } catch (Editions.CutOff ended) {
                return true;
            } finally {
                disk.meets((kind, path) -> { });
            }
        }

        /** Publishes the new edition; if the trouble stops it, there is one message and the files are whole. */
        Optional<EditionStopped> publishes(FailingDisk.Trouble trouble, String reason) throws IOException {
            disk.meets(trouble);
            try {
                publish(site, NEW);
                return Optional.empty();
            } catch (EditionStopped stopped) {
                assertThat(stopped.told().code()).isIn("SITE-005", "SITE-006", "SITE-018");
                assertThat(stopped.told().what()).contains(reason);
                if (!stopped.told().code().equals("SITE-018")) {
                    assertThat(files()).isEqualTo(BEFORE);
                }
                return Optional.of(stopped);
            } finally {
                disk.meets((kind, path) -> { });
                eachFileIsWhole();
            }
        }

        /** A file on its way from another disk stands under a name of its own. */
        void eachFileIsWhole() throws IOException {
            assertThat(files()).containsAllEntriesOf(FOREIGN).allSatisfy((path, text) -> {
                if (!path.equals(".benchleaf-incoming")) {
                    assertThat(text).as(path).isIn(BEFORE.get(path), AFTER.get(path));
                }
            });
        }

        @Override
        public void close() throws IOException {
            memory.close();
        }
    }

    /** What is in the site after an edition was published into an empty one, and what is not Benchleaf's. */
    private static Map<String, String> published(Map<String, List<SiteFile>> edition) {
        try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
            publish(memory.getPath("/site"), edition);
            Map<String, String> files = new TreeMap<>(contents(memory.getPath("/site")));
            files.putAll(FOREIGN);
            return files;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Map<String, List<SiteFile>> oldEdition() {
        Map<String, List<SiteFile>> edition = cases("one", "two", "three");
        edition.get("two").add(SiteFile.text("data", "was a file"));
        edition.get("two").add(SiteFile.text("more/part.txt", "in a folder"));
        return edition;
    }

    /** One case is gone, one is other, one is new, a file became a folder and a folder a file. */
    private static Map<String, List<SiteFile>> newEdition() {
        Map<String, List<SiteFile>> edition = cases("two", "three", "four");
        edition.get("two").set(0, SiteFile.text("cases/two/index.html", page("../../index.html") + "other words"));
        edition.get("two").add(SiteFile.text("data/part.txt", "is in a folder"));
        edition.get("two").add(SiteFile.text("more", "is a file"));
        return edition;
    }
}
