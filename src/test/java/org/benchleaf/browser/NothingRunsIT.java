package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.benchleaf.ChangedContent;
import org.benchleaf.command.PublishCommand;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Words that try to run, in every field of the content that takes free words and in the stories: the site made of them is
 * opened page by page, and nothing of it runs, loads or leads elsewhere.
 */
class NothingRunsIT {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final int QUESTIONS = 8;

    @TempDir
    private static Path folder;
    private static Path site;
    private static Set<String> keys;
    private static List<String> stories;
    private static Window window;

    @BeforeAll
    static void publish_words_that_try_to_run() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        HostileTexts texts = HostileTexts.in(content);
        keys = texts.fields().stream().map(HostileTexts.Field::key).collect(Collectors.toCollection(TreeSet::new));
        site = folder.resolve("site");
        HostileEdition edition = new HostileEdition(content, texts, NaughtyStrings.all());
        stories = edition.write();
        StringWriter said = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(said)).execute("--content", content.toString(), "--site", site.toString(),
                        "--on", "2026-06-01");
        assertThat(code).as(said::toString).isZero();
        site = site.toRealPath();
        window = Window.on(site, Scripts.plain("trap"));
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @Test
    void the_traps_spring_and_intruders_are_seen() throws IOException {
        Files.writeString(site.resolve("trapped.html"), "<!DOCTYPE html><title>x</title><a href='javascript:alert(1)'>a</a>"
                + "<img src=nowhere onerror=alert(2)><script>alert(3)</script><iframe srcdoc='x'></iframe>");
        try {
            window.open("trapped.html");
            assertThat(intruders()).anyMatch("alert(2)"::equals).anyMatch("alert(3)"::equals)
                    .anyMatch(found -> found.startsWith("address: ")).anyMatch(found -> found.startsWith("handler: "))
                    .anyMatch(found -> found.startsWith("script: ")).anyMatch(found -> found.startsWith("element: "));
        } finally {
            Files.delete(site.resolve("trapped.html"));
        }
    }

    @Test
    void the_words_stand_in_every_kind_of_field() {
        assertThat(keys).contains("title", "summary", "alt", "caption", "credit", "do", "see", "until", "watch", "if not",
                "why", "where", "what", "note", "how", "kept", "places", "at", "name", "about", "emergency", "waste", "term",
                "plain", "author", "technique", "colour", "evidence", "released by", "note");
        assertThat(stories).hasSizeGreaterThan(700);
    }

    @Test
    void no_page_runs_loads_or_leads_to_anything_of_it() throws IOException {
        List<WrittenPage> pages = SiteUnderTest.at(site).pages();
        assertThat(pages.stream().filter(page -> page.html().text().contains("alert("))).as("pages that show such words")
                .hasSizeGreaterThan(40);
        assertThat(found(found -> {
            for (WrittenPage page : pages) {
                window.go(page.path(), "");
                intruders().forEach(one -> found.add(page.path() + ": " + one));
            }
        })).isEmpty();
    }

    @Test
    void neither_does_the_search_when_it_is_asked_for_such_words() throws IOException {
        List<String> words = NaughtyStrings.all();
        assertThat(found(found -> {
            for (int at = 0; at < words.size(); at += words.size() / QUESTIONS) {
                String question = words.get(at);
                String asked = URLEncoder.encode(question, StandardCharsets.UTF_8).replace("+", "%20");
                window.go("search.html", "?q=" + asked + "#" + asked);
                intruders().forEach(one -> found.add(question + ": " + one));
            }
        })).isEmpty();
    }

    /** What a walk through pages found, with what the browser complained of and asked for elsewhere meanwhile. */
    private static List<String> found(Consumer<List<String>> walk) {
        return window.surviving(() -> {
            List<String> found = new ArrayList<>();
            window.console();
            walk.accept(found);
            found.addAll(window.console());
            found.addAll(window.requestsElsewhere());
            return found;
        });
    }

    private static List<String> intruders() {
        return window.texts(Scripts.plain("intruders"));
    }
}
