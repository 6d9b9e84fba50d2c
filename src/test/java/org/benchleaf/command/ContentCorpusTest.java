package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/**
 * Faulty and hostile content folders, each given to the commands as an author would give it, each with everything that
 * is to be said about it: file, line, column and code, no more and no less.
 *
 * <p>A folder under {@code faulty} or {@code hostile} holds the changes that make it from the sound content, what
 * {@code check} tells ({@code told.txt}), and, where the matter shows only then, what {@code publish} tells
 * ({@code told-when-published.txt}). The places were read off the changed files.
 */
class ContentCorpusTest {

    private static final Path RESOURCES = Path.of("src/test/resources");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final Pattern MESSAGE_LINE = Pattern.compile(
            "(\\S.*?)((?::[0-9]+){0,2}): (?:error|warning|advice) ([A-Z0-9-]+): .*");
    /** Only something that never ends takes so long, even on a machine that does other work too. */
    private static final long LONGEST_SECONDS = 600;

    @TempDir
    private static Path folder;
    private static ExecutorService workers;
    private static final Map<String, Future<List<String>>> CHECKED = new HashMap<>();
    private static final Map<String, Future<List<String>>> PUBLISHED = new HashMap<>();

    /** Several at once, in the order in which they are asked for below. */
    @BeforeAll
    static void begin() throws IOException {
        workers = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        for (String name : folders()) {
            CHECKED.put(name, workers.submit(() -> checked(made(name, "check"))));
        }
        for (String name : publishedFolders()) {
            PUBLISHED.put(name, workers.submit(() -> published(made(name, "publish"))));
        }
    }

    @AfterAll
    static void end() {
        workers.shutdownNow();
    }

    @ParameterizedTest
    @MethodSource("folders")
    void everything_is_told_with_its_place_and_nothing_else(String name) throws Exception {
        assertThat(CHECKED.get(name).get(LONGEST_SECONDS, TimeUnit.SECONDS))
                .containsExactlyElementsOf(Files.readAllLines(RESOURCES.resolve(name).resolve("told.txt")));
    }

    @ParameterizedTest
    @MethodSource("publishedFolders")
    void what_shows_only_when_publishing_is_told_then_and_an_error_leaves_no_site(String name) throws Exception {
        assertThat(PUBLISHED.get(name).get(LONGEST_SECONDS, TimeUnit.SECONDS)).containsExactlyElementsOf(
                Files.readAllLines(RESOURCES.resolve(name).resolve("told-when-published.txt")));
    }

    @Test
    void the_corpus_has_not_shrunk() throws IOException {
        assertThat(folders()).hasSizeGreaterThanOrEqualTo(400);
    }

    static List<String> folders() throws IOException {
        List<String> folders = new ArrayList<>();
        for (String kind : List.of("faulty", "hostile")) {
            try (Stream<Path> all = Files.list(RESOURCES.resolve(kind))) {
                all.map(path -> kind + "/" + path.getFileName()).sorted().forEach(folders::add);
            }
        }
        return folders;
    }

    static List<String> publishedFolders() throws IOException {
        return folders().stream()
                .filter(name -> Files.exists(RESOURCES.resolve(name).resolve("told-when-published.txt"))).toList();
    }

    private static Path made(String name, String command) throws IOException {
        Path own = Files.createDirectories(folder.resolve(command).resolve(name));
        return ChangedContent.of(RESOURCES.resolve("sound/base"), RESOURCES.resolve(name).resolve("change.txt"),
                own.resolve("content"));
    }

    private static List<String> checked(Path content) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Clock noon = Clock.fixed(DAY.atTime(12, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        int code = new CommandLine(new CheckCommand(noon)).setOut(new PrintWriter(out)).setErr(new PrintWriter(err))
                .execute("--content", content.toString(), "--format", "json");
        assertThat(err.toString()).isEmpty();
        List<String> told = new ArrayList<>();
        boolean errors = false;
        for (JsonNode message : new ObjectMapper().readTree(out.toString())) {
            errors |= message.path("severity").asText().equals("error");
            told.add(line(content, message.path("file").asText(), message.path("line").asInt(),
                    message.path("column").asInt(), message.path("code").asText()));
        }
        assertThat(code).isEqualTo(errors ? 1 : 0);
        return told;
    }

    private static List<String> published(Path content) {
        StringWriter err = new StringWriter();
        Path site = content.resolveSibling("site");
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err)).execute("--content", content.toString(), "--site", site.toString(),
                        "--on", DAY.toString());
        assertThat(code).as(err.toString()).isIn(0, 1);
        assertThat(Files.exists(site.resolve("index.html"))).isEqualTo(code == 0);
        List<String> told = new ArrayList<>();
        Matcher message = MESSAGE_LINE.matcher("");
        err.toString().lines().filter(line -> message.reset(line).matches()).forEach(line ->
                told.add(placed(content, message) + " " + message.group(3)));
        return told;
    }

    /** Lines of a finished page depend on the templates and are left out. */
    private static String placed(Path content, MatchResult message) {
        String file = message.group(1);
        String site = content.resolveSibling("site").toString().replace('\\', '/') + "/";
        return file.startsWith(content.toString().replace('\\', '/')) ? relative(content, file) + message.group(2)
                : "site/" + (file.startsWith(site) ? file.substring(site.length()) : file);
    }

    private static String line(Path content, String file, int line, int column, String code) {
        return relative(content, file) + (line > 0 ? ":" + line : "") + (column > 0 ? ":" + column : "") + " " + code;
    }

    private static String relative(Path content, String file) {
        String start = content.toString().replace('\\', '/');
        return file.startsWith(start + "/") ? file.substring(start.length() + 1) : file.equals(start) ? "." : file;
    }
}
