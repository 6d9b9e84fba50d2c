package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.benchleaf.ChangedContent;
import org.benchleaf.FailingDisk;
import org.benchleaf.FailingDisk.Operation;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Place;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * A case that is taken back leaves the site whatever else is the matter: its files, what leads to them, its words in
 * the search and beside the site. Consent can be taken back at any time (American Institute for Conservation, commentaries
 * 6 and 7 on its code of ethics, from memory).
 */
class WithdrawalTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final String TITLE = "A sheet that met the ebb";
    private static final String WORD = "marigolds";

    /** Two cases, published once and then copied for each test: to publish them again each time would take minutes. */
    @TempDir
    private static Path published;
    private static Map<String, String> withoutEbb;

    @TempDir
    private Path folder;
    private final FailingDisk disk = new FailingDisk(FileSystems.getDefault());
    private Path content;
    private Path templates;
    private Path site;

    /** What may stand in the way of a withdrawal. */
    enum Obstacle {
        OTHER_CASE_SYNTAX, OWN_SYNTAX, OWN_RULE, FULL_DISK, TEMPLATE, GLOSSARY, OTHER_FOLDER_READ_ONLY, FOREIGN_FILE,
        PICTURE_MISSING, KILLED_RUN
    }

    @BeforeAll
    static void publish_two_cases() throws IOException {
        WithdrawalTest first = new WithdrawalTest();
        first.in(published);
        ChangedContent.copy(SOUND, first.content);
        ChangedContent.copy(Path.of("templates"), first.templates);
        ChangedContent.copy(SOUND.resolve("cases/tide"), first.content.resolve("cases/ebb"));
        first.change("cases/ebb/case.md", text -> text.replaceFirst("title: [^\n]*", "title: " + TITLE)
                + "\nThe margin had been painted with " + WORD + ".\n");
        first.change("cases/ebb/case.es.md", text -> text.replace("Una tabla de mareas", "Una bajamar"));
        first.change("studio.yaml", text -> text + "web: https://quay.example/\n");
        Said said = first.publish();
        assertThat(said.code()).as(said.messages()).isZero();
        assertThat(telling(first.site)).isNotEmpty();
        first.change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        Path alone = published.resolve("alone/site");
        assertThat(first.run("--site", alone.toString()).code()).isZero();
        withoutEbb = contents(alone);
        first.change("cases/ebb/case.md", text -> text.replace("state: withdrawn", "state: cleared"));
    }

    @BeforeEach
    void copy_them() throws IOException {
        in(folder);
        for (String name : List.of("content", "templates", "site", ".site.edition")) {
            try (Stream<Path> all = Files.walk(published.resolve(name))) {
                for (Path path : all.toList()) {
                    Files.copy(path, folder.resolve(published.relativize(path).toString()),
                            StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    private void in(Path where) {
        content = where.resolve("content");
        templates = where.resolve("templates");
        site = where.resolve("site");
    }

    @ParameterizedTest
    @EnumSource
    void a_case_taken_back_leaves_whatever_stands_in_the_way(Obstacle obstacle) throws IOException {
        Map<Path, byte[]> sound = snapshot(obstacle);
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        putInTheWay(obstacle);

        Said said = publish();

        assertThat(said.messages()).as(said.messages()).contains("SITE-020").contains("'ebb'");
        assertThat(said.code() == 0).isEqualTo(obstacle == Obstacle.KILLED_RUN);
        nothingIsLeft(obstacle == Obstacle.FULL_DISK);
        if (obstacle == Obstacle.FULL_DISK) {
            assertThat(said.messages()).contains("SITE-022", "index.html");
        } else {
            assertThat(said.messages()).doesNotContain("SITE-022");
        }
        assertThat(site.resolve("cases/tide/index.html")).exists();

        clear(obstacle, sound);
        assertThat(publish().code()).isZero();
        assertThat(contents(site)).isEqualTo(withoutEbb);
    }

    @Test
    void files_leave_before_anything_new_is_written_or_moved() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));
        List<String> before = new CopyOnWriteArrayList<>();
        List<String> moved = new CopyOnWriteArrayList<>();
        disk.meets((kind, path) -> {
            if ((kind.fills() || kind == Operation.MOVE) && path.toString().contains("cases/tide")) {
                (Files.exists(site.resolve("cases/ebb")) ? before : moved).add(kind + " " + path);
            }
        });
        assertThat(publish().code()).isZero();
        assertThat(moved).isNotEmpty();
        assertThat(before).isEmpty();
    }

    @Test
    void with_a_clock_set_back_what_has_run_out_leaves_and_nothing_else_changes() throws IOException {
        assertThat(on("2026-07-01").code()).isZero();
        change("cases/ebb/case.md", text -> text.replace("owner, on: 2026-03-02", "owner, on: 2026-03-02, until: 2026-06-20"));
        change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));

        Said said = on("2026-06-01");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-020", "SITE-025", "2026-06-01", "2026-07-01");
        nothingIsLeft(false);
        assertThat(site.resolve("index.html")).content().contains("cases/tide/index.html").doesNotContain("Another title");

        assertThat(on("2026-06-01").messages()).contains("SITE-025").doesNotContain("SITE-020");
        assertThat(on("2026-06-01", "--earlier-day").code()).isZero();
        assertThat(site.resolve("index.html")).content().contains("cases/ebb/index.html", "Another title");
        assertThat(on("2026-06-01").code()).isZero();
    }

    @Test
    void only_withdrawals_takes_down_and_makes_nothing() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: draft"));
        change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));
        Said said = run("--site", site.toString(), "--only-withdrawals");
        assertThat(said.code()).isZero();
        assertThat(said.messages()).contains("SITE-020");
        nothingIsLeft(false);
        assertThat(site.resolve("index.html")).content().contains("cases/tide/index.html").doesNotContain("Another title");
        assertThat(run("--site", site.toString(), "--only-withdrawals").messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"cases/ebb", "cases/ebb/case.md"})
    void a_case_that_was_deleted_leaves_before_the_slips_of_another_are_told(String deleted) throws IOException {
        remove(content.resolve(deleted));
        change("cases/tide/case.md", text -> text.replaceFirst("steps:\n", "steps: [\n"));
        Said said = publish();
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-020").contains("'ebb'").doesNotContain("SITE-023");
        nothingIsLeft(false);
        assertThat(site.resolve("cases/tide/index.html")).exists();
    }

    @Test
    void where_every_case_of_the_site_is_missing_none_leaves_and_each_is_named() throws IOException {
        Map<String, String> before = contents(site);
        remove(content.resolve("cases"));
        Said said = run("--site", site.toString(), "--only-withdrawals");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-026", "cases/ebb/case.md", "cases/tide/case.md");
        assertThat(contents(site)).isEqualTo(before);
        Files.createDirectories(content.resolve("cases/ebb"));
        Files.writeString(content.resolve("cases/ebb/case.md"), "---\npublication: {state: withdrawn}\n---\n");
        assertThat(run("--site", site.toString(), "--only-withdrawals").messages()).contains("SITE-020");
        assertThat(site.resolve("cases/ebb")).doesNotExist();
    }

    @Test
    void a_file_of_somebody_else_in_the_folder_of_the_case_is_named_and_stays() throws IOException {
        Files.writeString(site.resolve("cases/ebb/mine.txt"), "mine");
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        Said said = run("--site", site.toString(), "--only-withdrawals");
        assertThat(said.messages()).contains("SITE-020").contains("cases/ebb/mine.txt: warning SITE-027");
        assertThat(site.resolve("cases/ebb/mine.txt")).exists();
        assertThat(site.resolve("cases/ebb/index.html")).doesNotExist();
    }

    @Test
    void a_case_that_left_two_sites_is_counted_once() {
        assertThat(Summary.ofWithdrawals(List.of(
                EditionMessages.TAKEN_DOWN.at(Place.file("site/cases/ebb"), "number", 3, "case", "ebb"),
                EditionMessages.TAKEN_DOWN.at(Place.file("site-training/cases/ebb"), "number", 9, "case", "ebb"))))
                .first().isEqualTo("Taken down: files of 1 case.");
    }

    @Test
    void the_pages_that_stay_keep_everything_else() throws IOException {
        Map<String, String> before = contents(site);
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        assertThat(run("--site", site.toString(), "--only-withdrawals").code()).isZero();
        Map<String, String> after = contents(site);
        assertThat(before.keySet().stream().filter(path -> !path.contains("cases/ebb/"))).allMatch(after::containsKey);
        assertThat(after.get("index.html")).contains("cases/tide/index.html", "cases/tide/steps.html");
        assertThat(after.get("assets/search-index.js")).contains("cases/tide/index.html");
        assertThat(after.keySet().stream().filter(path -> path.startsWith("cases/tide/")))
                .allSatisfy(path -> assertThat(after.get(path)).isEqualTo(before.get(path)));
    }

    @Test
    void the_feeds_and_the_map_stay_whole_without_the_case() throws Exception {
        assertThat(contents(site).get("sitemap.xml")).contains("/ebb/");
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        assertThat(run("--site", site.toString(), "--only-withdrawals").code()).isZero();
        for (String path : List.of("sitemap.xml", "feed.xml", "feed.json")) {
            assertThat(contents(site).get(path)).as(path).contains("https://quay.example/cases/tide/").doesNotContain("ebb", TITLE);
        }
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(site.resolve("sitemap.xml").toFile());
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(site.resolve("feed.xml").toFile());
        assertThat(new ObjectMapper().readTree(site.resolve("feed.json").toFile()).get("items")).hasSize(1);
    }

    @Test
    void a_permission_for_pictures_taken_back_takes_the_pictures_and_leaves_the_words() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("{for: [teaching, text, pictures], from: owner, on: 2026-03-09",
                "{for: [pictures], from: owner, on: 2026-03-09, withdrawn: 2026-05-01}\n"
                + "    - {for: [teaching, text], from: owner, on: 2026-03-09").replace("steps:\n", "steps: [\n"));
        Said said = publish();
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-020");
        assertThat(site.resolve("cases/ebb/pictures")).doesNotExist();
        assertThat(site.resolve("cases/ebb/index.html")).content().contains(WORD)
                .doesNotContain("<img", "<image", "photo__credit", "og:image");
        assertThat(site.resolve("cases/ebb/steps.html")).content().doesNotContain("<img");
        assertThat(site.resolve("cases/ebb/results.html")).exists();
        assertThat(contents(site).get("index.html")).contains(TITLE).doesNotContain("ebb/pictures");
    }

    @Test
    void a_case_study_taken_back_leaves_the_sheets_and_the_pictures_of_their_steps() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("{for: [teaching, text, pictures], from: owner, on: 2026-03-09",
                "{for: [text], from: owner, on: 2026-03-09, withdrawn: 2026-05-01}\n"
                + "    - {for: [teaching, pictures], from: owner, on: 2026-03-09"));
        assertThat(run("--site", site.toString(), "--only-withdrawals").code()).isZero();
        Map<String, String> left = contents(site);
        assertThat(left).containsKeys("cases/ebb/steps.html", "cases/ebb/preparation.html")
                .doesNotContainKey("cases/ebb/index.html");
        assertThat(left.keySet().stream().filter(path -> path.startsWith("cases/ebb/pictures/"))).isNotEmpty()
                .allMatch(path -> left.get("cases/ebb/steps.html").contains(path.substring("cases/ebb/".length())));
        assertThat(String.join("", left.values())).doesNotContain(WORD);
    }

    @ParameterizedTest
    @ValueSource(strings = {"  state: withdrawn\n  licence: [", "  state: 'withdrawn' # asked for\n  permissions: {",
        "  state: withdrawn\n\tlicence: x"})
    void a_state_is_read_even_where_its_own_group_is_broken(String lines) throws IOException {
        change("cases/ebb/case.md", text -> text.replaceFirst("  state: cleared\n  licence: CC-BY-4.0", lines));
        assertThat(publish().messages()).contains("SITE-020");
        nothingIsLeft(false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"  state: [cleared", "  stat: cleared", "  state: clered\n  licence: x"})
    void a_state_that_cannot_be_read_takes_nothing_down_and_is_told(String lines) throws IOException {
        Map<String, String> before = contents(site);
        change("cases/ebb/case.md", text -> text.replaceFirst("  state: cleared", lines));
        Said said = run("--site", site.toString(), "--only-withdrawals");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-023", "cases/ebb/case.md");
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void a_slip_elsewhere_takes_nothing_down() throws IOException {
        Map<String, String> before = contents(site);
        change("cases/ebb/case.md", text -> text.replace("title: ", "title ").replace("\nobject:", "\nobject: ["));
        change("cases/tide/case.md", text -> "no front matter\n" + text);
        assertThat(run("--site", site.toString(), "--only-withdrawals").messages()).isEmpty();
        assertThat(publish().code()).isEqualTo(1);
        assertThat(contents(site)).isEqualTo(before);
    }

    @Test
    void a_file_that_cannot_be_removed_is_named_and_the_others_leave() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        disk.meets((kind, path) -> {
            if (kind == Operation.DELETE && path.toString().endsWith("ebb/steps.html")) {
                throw new AccessDeniedException(path.toString());
            }
        });
        Said said = run("--site", site.toString(), "--only-withdrawals");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.messages()).contains("SITE-021", "ebb/steps.html", "it is not permitted");
        assertThat(site.resolve("cases/ebb/index.html")).doesNotExist();
        disk.meets((kind, path) -> { });
        assertThat(run("--site", site.toString(), "--only-withdrawals").code()).isZero();
        nothingIsLeft(false);
    }

    @Test
    void what_stands_beside_the_site_is_its_owners_alone() throws IOException {
        Path beside = folder.resolve(".site.edition");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(beside))).isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(beside.resolve("memory.json"))))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(site.resolve("index.html"))))
                .startsWith("rw-r");
    }

    @Test
    void a_draft_leaves_no_word_beside_the_site() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: draft"));
        assertThat(publish().code()).isZero();
        assertThat(publish().code()).isZero();
        assertThat(telling(folder.resolve(".site.edition"))).isEmpty();
    }

    private static void remove(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** Everything of the case is out of the site, and no word of it beside it. */
    private void nothingIsLeft(boolean listStays) throws IOException {
        assertThat(site.resolve("cases/ebb")).doesNotExist();
        assertThat(telling(site)).isEmpty();
        assertThat(telling(folder.resolve(".site.edition"))).isEmpty();
        if (!listStays) {
            assertThat(contents(site).entrySet().stream().filter(file -> file.getValue().contains("cases/ebb/"))
                    .map(Map.Entry::getKey)).isEmpty();
        }
    }

    private void putInTheWay(Obstacle obstacle) throws IOException {
        switch (obstacle) {
            case OTHER_CASE_SYNTAX -> change("cases/tide/case.md", text -> text.replaceFirst("steps:\n", "steps: [\n"));
            case OWN_SYNTAX -> change("cases/ebb/case.md", text -> text.replaceFirst("steps:\n", "steps: [\n"));
            case OWN_RULE -> change("cases/ebb/case.md", text -> text.replaceFirst("level: foundation", "level: easy"));
            case GLOSSARY -> change("glossary.yaml", text -> text + "\n- [\n");
            case TEMPLATE -> Files.writeString(templates.resolve("page.ftl"), "<#if");
            case PICTURE_MISSING -> Files.delete(content.resolve("cases/tide/pictures/before-recto.jpg"));
            case FOREIGN_FILE -> {
                change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));
                ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/spring"));
                Files.createDirectories(site.resolve("cases/spring"));
                Files.writeString(site.resolve("cases/spring/index.html"), "mine");
            }
            case OTHER_FOLDER_READ_ONLY -> {
                change("cases/tide/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));
                disk.meets(trouble(obstacle));
            }
            case KILLED_RUN -> killWhileFilesMove();
            default -> disk.meets(trouble(obstacle));
        }
    }

    private FailingDisk.Trouble trouble(Obstacle obstacle) {
        return obstacle == Obstacle.FULL_DISK ? (kind, path) -> {
            if (kind.fills()) {
                throw new FileSystemException(path.toString(), null, "No space left on device");
            }
        } : (kind, path) -> {
            if (kind != Operation.READ && path.toString().contains("site/cases/tide")) {
                throw new AccessDeniedException(path.toString());
            }
        };
    }

    /** An edition with a new title of the case is cut off while it moves in; only then is the case taken back. */
    private void killWhileFilesMove() throws IOException {
        change("cases/ebb/case.md", text -> text.replace("state: withdrawn", "state: cleared")
                .replace("The margin", "The lower margin"));
        int[] moves = {0};
        disk.meets((kind, path) -> {
            if (kind == Operation.MOVE && ++moves[0] > 3) {
                throw new Killed();
            }
        });
        assertThatThrownBy(this::publish).isInstanceOf(Killed.class);
        assertThat(folder.resolve(".site.edition/plan.json")).exists();
        disk.meets((kind, path) -> { });
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
    }

    private static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    private Map<Path, byte[]> snapshot(Obstacle obstacle) throws IOException {
        return Edits.snapshot(obstacle == Obstacle.TEMPLATE ? templates : content);
    }

    private void clear(Obstacle obstacle, Map<Path, byte[]> sound) throws IOException {
        disk.meets((kind, path) -> { });
        Files.deleteIfExists(site.resolve("cases/spring/index.html"));
        Edits.restore(obstacle == Obstacle.TEMPLATE ? templates : content, sound);
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
    }

    /** Files below a folder that hold words of the case. */
    private static Stream<String> telling(Path folder) throws IOException {
        return contents(folder).entrySet().stream()
                .filter(file -> file.getValue().contains(TITLE) || file.getValue().contains(WORD)).map(Map.Entry::getKey);
    }

    private void change(String file, UnaryOperator<String> change) throws IOException {
        Path path = content.resolve(file);
        Files.writeString(path, change.apply(Files.readString(path)));
    }

    /** What a run said, and its exit code. */
    private record Said(int code, String messages) {
    }

    private Said publish() {
        return run("--site", site.toString());
    }

    private Said on(String day, String... options) {
        return execute(Stream.concat(Stream.of("--site", site.toString(), "--on", day), Stream.of(options)));
    }

    private Said run(String... options) {
        return execute(Stream.concat(Stream.of("--on", "2026-06-01"), Stream.of(options)));
    }

    private Said execute(Stream<String> options) {
        StringWriter messages = new StringWriter();
        int code = new CommandLine(new PublishCommand()).registerConverter(Path.class, disk::path)
                .setErr(new PrintWriter(messages, true)).setOut(new PrintWriter(new StringWriter()))
                .execute(Stream.concat(Stream.of("--content", content.toString(), "--templates", templates.toString()),
                        options).toArray(String[]::new));
        return new Said(code, messages.toString());
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString().replace('\\', '/'),
                        Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }
}
