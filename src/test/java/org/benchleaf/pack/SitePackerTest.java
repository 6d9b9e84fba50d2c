package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.pack.Editions.cases;
import static org.benchleaf.pack.Editions.contents;
import static org.benchleaf.pack.Editions.page;
import static org.benchleaf.pack.Editions.publish;
import static org.benchleaf.pack.Editions.stage;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SitePackerTest {

    @TempDir
    private Path folder;
    private Path site;

    @BeforeEach
    void name_the_site() {
        site = folder.resolve("site");
    }

    @Test
    void an_edition_and_its_list_are_in_the_site() throws IOException {
        Edition edition = publish(site, cases("one", "two"));
        assertThat(contents(site)).containsOnlyKeys("index.html", "cases/one/index.html", "cases/two/index.html",
                "edition.json");
        assertThat(edition.pages()).isEqualTo(3);
        assertThat(contents(site).get("edition.json")).doesNotContain("one's text").contains("cases/one/index.html");
    }

    @Test
    void a_page_of_more_than_two_megabytes_is_told() {
        SiteFile heavy = SiteFile.text("cases/one/index.html", "<!DOCTYPE html><html lang=\"en\"><head><title>One</title></head><body><p>"
                + "word ".repeat(400_000) + "</p></body></html>");
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(packer.stage("one", "key", "note", List.of(heavy)).all()).singleElement().satisfies(told -> {
                assertThat(told.code()).isEqualTo("SITE-042");
                assertThat(told.what()).contains("cases/one/index.html", "2.0 MB");
            });
            packer.settle(LocalDate.of(2026, 6, 1));
            packer.apply(count -> { });
        }
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(packer.keep("one", "note").all()).as("taken over").extracting(Message::code).containsExactly("SITE-042");
        }
    }

    @Test
    void nothing_in_the_site_changes_before_it_is_applied() throws IOException {
        publish(site, cases("one"));
        Map<String, String> before = contents(site);
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(stage(packer, cases("two")).all()).isEmpty();
            assertThat(packer.verify(Set.of()).all()).isEmpty();
        }
        assertThat(contents(site)).isEqualTo(before);
        assertThat(folder.resolve(".site.edition/staged")).doesNotExist();
    }

    @Test
    void files_that_the_new_edition_lacks_are_removed_with_their_empty_folders() throws IOException {
        publish(site, cases("one", "two"));
        Edition edition = publish(site, cases("two"));
        assertThat(contents(site)).containsOnlyKeys("index.html", "cases/two/index.html", "edition.json");
        assertThat(site.resolve("cases/one")).doesNotExist();
        assertThat(edition.removed()).isEqualTo(1);
    }

    @Test
    void a_foreign_file_stays_even_where_a_case_goes_away() throws IOException {
        publish(site, cases("one", "two"));
        Files.writeString(site.resolve("README.md"), "mine");
        Files.writeString(site.resolve("cases/one/notes.txt"), "mine too");
        publish(site, cases("two"));
        assertThat(contents(site)).containsEntry("README.md", "mine").containsEntry("cases/one/notes.txt", "mine too")
                .doesNotContainKey("cases/one/index.html");
    }

    @Test
    void a_foreign_file_in_the_way_is_told_before_anything_changes() throws IOException {
        publish(site, cases("one"));
        Files.createDirectories(site.resolve("cases/two"));
        Files.writeString(site.resolve("cases/two/index.html"), "mine");
        Map<String, String> before = contents(site);
        assertThat(faults(cases("one", "two"))).containsExactly("SITE-002");
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void a_file_with_the_very_same_bytes_is_not_in_the_way() throws IOException {
        publish(site, cases("one"));
        Files.delete(site.resolve("edition.json"));
        publish(site, cases("one"));
        assertThat(contents(site)).containsKey("edition.json");
    }

    @Test
    void a_folder_or_a_link_where_a_file_belongs_is_told() throws IOException {
        Files.createDirectories(site.resolve("index.html/inside"));
        Files.writeString(site.resolve("index.html/inside/mine.txt"), "mine");
        assertThat(faults(cases("one"))).containsExactly("SITE-002");
        Files.createDirectories(folder.resolve("elsewhere"));
        Path other = folder.resolve("other");
        Files.createDirectories(other);
        Files.createSymbolicLink(other.resolve("cases"), folder.resolve("elsewhere"));
        site = other;
        assertThat(faults(cases("one"))).containsExactly("SITE-002");
        assertThat(folder.resolve("elsewhere")).isEmptyDirectory();
    }

    @Test
    void a_file_may_become_a_folder_and_a_folder_a_file() throws IOException {
        Map<String, List<SiteFile>> first = cases("one");
        first.get("one").add(SiteFile.text("data", "was a file"));
        first.get("one").add(SiteFile.text("more/part.txt", "in a folder"));
        publish(site, first);
        Map<String, List<SiteFile>> second = cases("one");
        second.get("one").add(SiteFile.text("data/part.txt", "is in a folder"));
        second.get("one").add(SiteFile.text("more", "is a file"));
        publish(site, second);
        assertThat(contents(site)).containsEntry("data/part.txt", "is in a folder").containsEntry("more", "is a file");
    }

    @Test
    void a_second_run_at_the_same_time_is_turned_away() {
        try (SitePacker first = SitePacker.open(site)) {
            assertThat(first.told().isEmpty()).isTrue();
            assertThatThrownBy(() -> SitePacker.open(site)).isInstanceOfSatisfying(EditionStopped.class,
                    stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-001"));
        }
        SitePacker.open(site).close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void a_run_cut_off_while_files_move_is_completed_by_the_next(int cutAfter) throws IOException {
        publish(site, cases("one", "two", "three", "four"));
        Map<String, List<SiteFile>> next = cases("two", "three", "four", "five", "six");
        next.get("two").set(0, SiteFile.text("cases/two/index.html", page("../../index.html") + "new"));
        assertThatThrownBy(() -> publish(site, next, cutAfter)).isInstanceOf(Editions.CutOff.class);
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(packer.told().all()).extracting(Message::code).containsExactly("SITE-017");
        }
        Map<String, String> completed = contents(site);
        Path whole = folder.resolve("whole");
        publish(whole, next);
        assertThat(completed).isEqualTo(contents(whole));
    }

    @Test
    void a_run_that_stops_before_its_plan_is_written_leaves_the_old_edition() throws IOException {
        publish(site, cases("one"));
        Map<String, String> before = contents(site);
        Path staged = folder.resolve(".site.edition/staged/cases/two/index.html");
        Files.createDirectories(staged.getParent());
        Files.writeString(staged, "half a pa");
        SitePacker.open(site).close();
        assertThat(contents(site)).isEqualTo(before);
        assertThat(staged).doesNotExist();
    }

    @Test
    void a_kept_case_is_remembered_only_while_its_files_are_whole() throws IOException {
        publish(site, cases("one", "two"));
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(packer.remembered("one", "key of one")).contains("note of one");
            assertThat(packer.remembered("one", "another key")).isEmpty();
        }
        Files.writeString(site.resolve("cases/one/index.html"), "other");
        Files.delete(site.resolve("cases/two/index.html"));
        try (SitePacker packer = SitePacker.open(site)) {
            assertThat(packer.remembered("one", "key of one")).isEmpty();
            assertThat(packer.remembered("two", "key of two")).isEmpty();
        }
    }

    @Test
    void a_file_changed_by_hand_is_told_and_written_anew() throws IOException {
        publish(site, cases("one"));
        Files.writeString(site.resolve("index.html"), "my own words");
        try (SitePacker packer = SitePacker.open(site)) {
            stage(packer, cases("one"));
            assertThat(packer.changedByHand().all()).extracting(Message::code).containsExactly("SITE-014");
            packer.settle(LocalDate.of(2026, 6, 1));
            packer.apply(count -> { });
        }
        assertThat(contents(site).get("index.html")).doesNotContain("my own words");
    }

    @Test
    void a_damaged_list_stops_the_run() throws IOException {
        publish(site, cases("one"));
        for (String damaged : List.of("", "{", "[]", "{\"files\": {\"../../outside\": \"00\"}}", "{\"files\": {}")) {
            Files.writeString(site.resolve("edition.json"), damaged);
            assertThatThrownBy(() -> SitePacker.open(site)).isInstanceOfSatisfying(EditionStopped.class,
                    stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-004"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "index.html, <a href='nowhere.html'>x</a>, SITE-008",
        "index.html, <a href='cases/one/index.html#nowhere'>x</a>, SITE-009",
        "index.html, <a href='#nowhere'>x</a>, SITE-009",
        "index.html, <a href='/index.html'>x</a>, SITE-011",
        "index.html, <a href='cases/one/'>x</a>, SITE-011",
        "index.html, <a href='../index.html'>x</a>, SITE-011",
        "index.html, <a href='javascript:alert(1)'>x</a>, SITE-011",
        "index.html, <a href='java&#115;cript:alert(1)'>x</a>, SITE-011",
        "index.html, <img src='https://example.org/x.png' alt=''>, SITE-015",
        "index.html, <img src='x.png' srcset='y.png 2x' alt=''>, SITE-008",
        "index.html, <link rel='stylesheet' href='//example.org/x.css'>, SITE-015",
        "lost.html, <a href='index.html'>x</a>, SITE-010",
        "Upper.html, x, SITE-012",
        "a/../b.html, x, SITE-012",
        "con.html, x, SITE-012",
        "with space.txt, x, SITE-012",
        "/root.txt, x, SITE-012",
        "edition.json, x, SITE-012",
        "style.css, body { background: url(https://example.org/x.png) }, SITE-015",
        "style.css, body { background: url('nowhere.png') }, SITE-008",
        "cases/one/index.html, x, SITE-013",
    })
    void a_faulty_edition_is_told_and_changes_nothing(String path, String content, String code) throws IOException {
        publish(site, cases("one"));
        Map<String, String> before = contents(site);
        Map<String, List<SiteFile>> faulty = cases("one");
        faulty.get("").removeIf(file -> file.path().equals(path));
        faulty.get("").add(SiteFile.text(path, content + (path.equals("index.html") ? page("cases/one/index.html") : "")));
        assertThat(faults(faulty)).contains(code);
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void a_full_disk_leaves_the_old_edition_whole() throws IOException {
        Configuration small = Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(64 * 512).build();
        try (FileSystem disk = Jimfs.newFileSystem(small)) {
            Path there = disk.getPath("/studio/site");
            publish(there, cases("one"));
            Map<String, String> before = contents(there);
            Map<String, List<SiteFile>> large = cases("one");
            large.get("one").add(new SiteFile("cases/one/picture.jpg", new byte[200 * 512]));
            assertThatThrownBy(() -> publish(there, large)).isInstanceOfSatisfying(EditionStopped.class,
                    stopped -> assertThat(stopped.told().code()).isEqualTo("SITE-005"));
            assertThat(contents(there)).isEqualTo(before);
            publish(there, cases("one", "two"));
            assertThat(contents(there)).containsKey("cases/two/index.html");
        }
    }

    @Test
    void a_windows_disk_holds_the_same_edition() throws IOException {
        try (FileSystem disk = Jimfs.newFileSystem(Configuration.windows())) {
            Path there = disk.getPath("C:\\studio\\site");
            publish(there, cases("one", "two"));
            publish(there, cases("two"));
            publish(site, cases("two"));
            assertThat(contents(there)).isEqualTo(contents(site));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void after_any_history_of_editions_and_cuts_the_site_equals_a_fresh_one(long seed) throws IOException {
        Random random = new Random(seed);
        Map<String, List<SiteFile>> edition = cases("one");
        for (int round = 0; round < 12; round++) {
            edition = someCases(random);
            try {
                publish(site, edition, random.nextBoolean() ? random.nextInt(8) : Integer.MAX_VALUE);
            } catch (Editions.CutOff cutOff) {
                assertThat(folder.resolve(".site.edition/plan.json")).exists();
            }
        }
        publish(site, edition);
        Path fresh = folder.resolve("fresh");
        publish(fresh, edition);
        assertThat(contents(site)).isEqualTo(contents(fresh));
    }

    private static Map<String, List<SiteFile>> someCases(Random random) {
        List<String> names = new ArrayList<>();
        for (String name : List.of("one", "two", "three", "four", "five", "six")) {
            if (random.nextBoolean()) {
                names.add(name);
            }
        }
        Map<String, List<SiteFile>> made = cases(names.toArray(String[]::new));
        for (String name : names) {
            if (random.nextBoolean()) {
                made.get(name).add(SiteFile.text("cases/" + name + "/data.csv", "n\n" + random.nextInt(3)));
            }
        }
        return made;
    }

    private List<String> faults(Map<String, List<SiteFile>> edition) {
        try (SitePacker packer = SitePacker.open(site)) {
            Messages messages = stage(packer, edition);
            messages.addAll(packer.verify(Set.of()));
            return messages.all().stream().map(Message::code).toList();
        }
    }
}
