package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.benchleaf.FailingDisk;
import org.benchleaf.FailingDisk.Operation;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A studio that publishes apart gets two whole sites of one edition, and the public one tells nothing of the other. */
class TwoSitesTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    /** A strength is a share or an amount in a volume, as IUPAC's Green Book (3rd edition, 2.10) writes them. */
    private static final Pattern STRENGTH = Pattern.compile("\\d[\\s\u00A0\u202F]?(% (v/v|m/v|m/m)|mol/L|g/L)");
    /** The front page names what is bought, with the strength on its bottle; that tells no recipe of a case. */
    private static final Pattern MATERIAL = Pattern.compile("<a href=\"materials/[^\"]*\">[^<]*</a>");
    private static final String FOR_WHOM = "Not for the public.";
    private static final Pattern IN_BYTES = Pattern.compile(".*\\.(jpg|woff2)");

    @TempDir
    private Path folder;
    private final FailingDisk disk = new FailingDisk(FileSystems.getDefault());
    private Path content;
    private Path site;
    private Path training;

    @BeforeEach
    void copy_two_cases_that_keep_their_strengths_in() throws IOException {
        content = folder.resolve("content");
        site = folder.resolve("site");
        training = folder.resolve("site-training");
        ChangedContent.copy(SOUND, content);
        change("cases/tide/case.md", text -> text.replace("strengths for the public: yes", "strengths for the public: no"));
        ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/ebb"));
        apart(true);
    }

    @Test
    void each_site_is_complete_and_the_public_one_tells_nothing_of_the_other() throws IOException {
        Said said = publish();
        assertThat(said.code()).as(said.messages()).isZero();
        Map<String, String> open = contents(site);
        Map<String, String> taught = contents(training);
        assertThat(open).containsKeys("index.html", "search.html", "cases/tide/index.html",
                "cases/tide/results.html");
        assertThat(open.keySet()).anyMatch(path -> path.matches("cases/tide/.*\\.csv"));
        assertThat(taught).containsKeys("index.html", "search.html", "cases/tide/steps.html",
                "cases/tide/preparation.html", "cases/tide/figures.json", "cases/tide/results.html");
        assertThat(open.keySet()).noneMatch(path -> path.matches(".*/(steps|preparation)\\.html|.*/figures\\.json"));
        assertThat(open).allSatisfy((path, text) -> assertThat(text).as(path)
                .doesNotContain("steps.html", "preparation.html", "figures.json", "site-training", FOR_WHOM));
        assertThat(taught.keySet().stream().filter(path -> path.endsWith(".html"))).isNotEmpty()
                .allSatisfy(path -> assertThat(taught.get(path)).as(path).contains(FOR_WHOM));
    }

    @Test
    void no_file_of_a_case_in_the_public_site_tells_a_strength() throws IOException {
        assertThat(publish().code()).isZero();
        assertThat(telling(contents(training))).isNotEmpty();
        assertThat(telling(contents(site))).isEmpty();
    }

    @Test
    void in_one_site_the_sheets_are_held_back_and_the_way_to_them_is_told() throws IOException {
        apart(false);
        Said said = publish();
        assertThat(said.code()).isZero();
        assertThat(said.messages()).contains("CONS-010", "publishing: apart");
        assertThat(training).doesNotExist();
        assertThat(site.resolve("cases/tide/steps.html")).doesNotExist();
        assertThat(telling(contents(site))).isEmpty();
    }

    @Test
    void a_training_site_goes_when_everything_stands_in_one_site_again() throws IOException {
        assertThat(publish().code()).isZero();
        apart(false);
        assertThat(publish().messages()).contains("SITE-024");
        assertThat(contents(training).keySet()).containsExactly("edition.json");
        assertThat(publish().messages()).doesNotContain("SITE-024");
    }

    @Test
    void an_unchanged_edition_writes_nothing_in_either_site() throws IOException {
        assertThat(publish().code()).isZero();
        Said again = publish();
        assertThat(again.summary()).contains("2 unchanged").containsPattern("(?s)written   0.*written   0");
    }

    @Test
    void a_case_taken_back_leaves_both_sites_first() throws IOException {
        assertThat(publish().code()).isZero();
        change("cases/ebb/case.md", text -> text.replace("state: cleared", "state: withdrawn"));
        change("studio.yaml", text -> text + "\n- [\n");
        assertThat(publish().code()).isEqualTo(1);
        for (Path each : new Path[] {site, training}) {
            assertThat(each.resolve("cases/ebb")).doesNotExist();
            assertThat(contents(each).values()).noneMatch(text -> text.contains("cases/ebb/"));
            assertThat(each.resolve("cases/tide/results.html")).exists();
        }
    }

    @Test
    void a_run_that_is_cut_off_between_the_sites_is_completed_by_the_next() throws IOException {
        assertThat(publish().code()).isZero();
        change("cases/ebb/case.md", text -> text.replaceFirst("title: [^\n]*", "title: Another title"));
        Map<String, String> before = contents(training);
        disk.meets((kind, path) -> {
            if (kind == Operation.MOVE && path.toString().contains("site-training") && !path.toString().contains("plan")
                    && Files.exists(folder.resolve(".site-training.edition/plan.json"))) {
                throw new Killed();
            }
        });
        org.junit.jupiter.api.Assertions.assertThrows(Killed.class, this::publish);
        disk.meets((kind, path) -> { });
        assertThat(contents(site).get("index.html")).contains("Another title");
        assertThat(contents(training)).isEqualTo(before);
        assertThat(publish().code()).isZero();
        assertThat(contents(training).get("index.html")).contains("Another title");
    }

    @Test
    void the_two_sites_may_not_lie_in_each_other() {
        Said said = publish("--training-site", site.resolve("training").toString());
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.messages()).contains("--training-site", "lie in each other");
    }

    private static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Files of cases, and lists of them, that tell a strength. */
    private static Stream<String> telling(Map<String, String> files) {
        return files.entrySet().stream().filter(file -> file.getKey().matches("cases/.*\\.(html|csv|json)|index.html")
                && STRENGTH.matcher(MATERIAL.matcher(file.getValue()).replaceAll("")).find()
                || file.getKey().endsWith("search-index.js") && file.getValue().lines()
                        .anyMatch(line -> line.contains("\"cases/") && STRENGTH.matcher(line).find())).map(Map.Entry::getKey);
    }

    private void apart(boolean apart) throws IOException {
        change("studio.yaml", text -> text.replaceFirst("\npublishing: [^\n]*", "")
                .replaceFirst("\ndemo: yes", "\ndemo: yes\npublishing: " + (apart ? "apart" : "one site")));
    }

    private void change(String file, UnaryOperator<String> change) throws IOException {
        Path path = content.resolve(file);
        Files.writeString(path, change.apply(Files.readString(path)));
    }

    /** What a run said, and its exit code. */
    private record Said(int code, String messages, String summary) {
    }

    private Said publish(String... more) {
        StringWriter messages = new StringWriter();
        StringWriter summary = new StringWriter();
        int code = new CommandLine(new PublishCommand()).registerConverter(Path.class, disk::path)
                .setErr(new PrintWriter(messages, true)).setOut(new PrintWriter(summary, true))
                .execute(Stream.concat(Stream.of("--content", content.toString(), "--site", site.toString(), "--on",
                        "2026-06-01"), Stream.of(more)).toArray(String[]::new));
        return new Said(code, messages.toString(), summary.toString());
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                contents.put(name, Files.readString(file, IN_BYTES.matcher(name).matches() ? StandardCharsets.ISO_8859_1
                        : StandardCharsets.UTF_8));
            }
        }
        return contents;
    }
}
