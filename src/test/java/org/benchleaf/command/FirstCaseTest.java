package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.benchleaf.ChangedContent;
import org.benchleaf.DemoSite;
import org.benchleaf.Published;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.read.AuthorGuideReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * The first case of the guide for authors, written down as its page says: each check answers as the page shows it, and the last file is
 * published.
 */
class FirstCaseTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    private static final String HYPHENS = "---\n";
    /** The steps that end with an error on purpose, with the exit code of the command line's contract. */
    private static final Map<String, Integer> EXIT = Map.of("Describe what you prepare", 1);

    @TempDir
    private Path folder;
    private Path studio;
    private String text = HYPHENS + HYPHENS;

    @BeforeEach
    void the_studio_without_its_cases() throws IOException {
        studio = folder.resolve("my-studio");
        Files.createDirectories(studio.resolve("cases/first"));
        for (String shared : List.of("studio.yaml", "glossary.yaml", "sources.yaml", "rules.yaml", "materials")) {
            ChangedContent.copy(Path.of("content", shared), studio.resolve(shared));
        }
    }

    @Test
    void each_step_is_answered_as_the_guide_says_and_the_last_one_is_published() throws IOException {
        List<AuthorGuide.Lesson> lessons = AuthorGuideReader.read().firstCase();
        assertThat(lessons).hasSize(10);
        Map<String, String> expected = new TreeMap<>();
        Map<String, String> told = new TreeMap<>();
        for (AuthorGuide.Lesson lesson : lessons) {
            follow(lesson);
            expected.put(lesson.name(), EXIT.getOrDefault(lesson.name(), 0) + "\n" + lesson.tells());
            told.put(lesson.name(), check());
        }
        assertThat(told).isEqualTo(expected);
        Published.from(studio, folder.resolve("site"), "2026-11-25");
        Document page = Jsoup.parse(Files.readString(folder.resolve("site/cases/first/index.html")));
        // A tear of 30 mm under one strip: one piece.
        assertThat(page.select("main").text().replace('\u00A0', ' ')).contains("A leaf out of an almanac")
                .containsPattern("Pieces of tissue: 1\\b");
        assertThat(folder.resolve("site/cases/first/steps.html")).exists();
        assertThat(folder.resolve("site/cases/first/preparation.html")).exists();
        assertThat(folder.resolve("site/cases/first/results.html")).exists();
    }

    /** Whoever has the page alone copies these lines, so each stands there whole. */
    @Test
    void the_page_shows_every_line_as_it_is_written() {
        Document page = Jsoup.parse(DemoSite.made().files().stream().filter(file -> file.path().equals("writing-first-case.html"))
                .findFirst().orElseThrow().text());
        List<String> shown = page.select("pre").stream().map(Element::wholeText).toList();
        for (AuthorGuide.Lesson lesson : AuthorGuideReader.read().firstCase()) {
            lesson.facts().ifPresent(lines -> assertThat(shown).contains(lines.stripTrailing()));
            lesson.story().ifPresent(lines -> assertThat(shown).contains(lines.stripTrailing()));
            lesson.changes().forEach(change -> assertThat(shown).contains(change.from().stripTrailing(), change.to().stripTrailing()));
            assertThat(shown).contains(lesson.tells());
        }
    }

    private void follow(AuthorGuide.Lesson lesson) throws IOException {
        for (AuthorGuide.Change change : lesson.changes()) {
            assertThat(text.split(Pattern.quote(change.from()), -1)).as(change.from()).hasSize(2);
            text = text.replace(change.from(), change.to());
        }
        int end = text.indexOf(HYPHENS, HYPHENS.length());
        text = text.substring(0, end) + lesson.facts().orElse("") + text.substring(end) + lesson.story().orElse("");
        Files.writeString(studio.resolve("cases/first/case.md"), text);
    }

    /** The exit code and all that is said, in the order of the terminal. */
    private String check() {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        int code = new CommandLine(new CheckCommand(DAY)).setOut(out).setErr(out).execute("--content", studio.toString());
        return code + "\n" + said.toString().replace(studio.toString(), "my-studio").strip();
    }
}
