package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.benchleaf.ChangedContent;
import org.benchleaf.OwnJava;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page that is open in a browser while its case is edited, in a program of its own as an author runs it. */
class PreviewIT {

    private static final Duration LONGEST_WAIT = Duration.ofMinutes(2);
    private static final String STRIP = "document.getElementById('benchleaf-preview').shadowRoot.textContent";

    @TempDir
    private Path folder;

    @Test
    void an_open_page_changes_by_itself_and_stays_where_it_was_read() throws IOException {
        Path file = folder.resolve("content/cases/tide-table/case.md");
        ChangedContent.copy(Path.of("content"), folder.resolve("content"));
        Process preview = started();
        try (Window window = Window.on(folder)) {
            window.visit(address(preview) + "site/cases/tide-table/index.html");
            await(window, "return " + STRIP + ".includes('Preview:');");
            window.run("document.getElementById('done').scrollIntoView();");
            Object top = window.run("return Math.round(document.getElementById('done').getBoundingClientRect().top);");
            assertThat((Number) window.run("return window.scrollY;")).extracting(Number::intValue).isNotEqualTo(0);
            change(file, "summary: >-\n", "summary: >-\n  Words that were put in above the place.\n");
            await(window, "return document.body.textContent.includes('Words that were put in above');");
            await(window, "return document.readyState === 'complete';");
            // Heights of lines are no whole pixels.
            assertThat((Long) window.run("return Math.round(document.getElementById('done').getBoundingClientRect().top);"))
                    .isBetween((Long) top - 1, (Long) top + 1);
            change(file, "{mend.pieces}", "{mend.nonsense}");
            await(window, "return " + STRIP + ".includes('{mend.nonsense}') && " + STRIP + ".includes('case.md:');");
            assertThat(window.run("return " + STRIP + ".includes('the last good one');")).isEqualTo(true);
            assertThat(window.run("return document.body.textContent.includes('nonsense');")).isEqualTo(false);
        } finally {
            preview.destroy();
        }
    }

    private Process started() throws IOException {
        return new ProcessBuilder(OwnJava.command(List.of(), "preview", "--content",
                folder.resolve("content").toString(), "--on", "2026-06-01"))
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }

    private static String address(Process preview) {
        List<String> lines = preview.inputReader().lines().limit(1).toList();
        return lines.get(0).replaceAll(".*(http://\\S+).*", "$1");
    }

    private static void await(Window window, String script) {
        long latest = System.nanoTime() + LONGEST_WAIT.toNanos();
        while (!Boolean.TRUE.equals(window.run(script))) {
            assertThat(System.nanoTime()).as(script).isLessThan(latest);
            pause();
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(50);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while a page was awaited", stopped);
        }
    }

    private static void change(Path file, String from, String to) {
        try {
            String text = Files.readString(file);
            assertThat(text).contains(from);
            Files.writeString(file, text.replace(from, to));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
