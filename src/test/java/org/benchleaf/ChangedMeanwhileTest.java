package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that changes at any moment of a run leaves no page with its old words beside pages with the new ones. */
class ChangedMeanwhileTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final int CHANGES = Integer.getInteger("benchleaf.changes", 20);
    private static final Pattern MARK = Pattern.compile(" Mark(\\d+)x");

    @TempDir
    private Path folder;

    private List<Marked> all;

    /** Words of a file that a mark follows. */
    private record Marked(Path file, String before, String words) {
    }

    @BeforeEach
    void copy() throws IOException {
        ChangedContent.copy(SOUND, folder.resolve("content"));
        ChangedContent.copy(Path.of("templates"), folder.resolve("templates"));
        Files.writeString(folder.resolve("content/rules.yaml"), """
                changes:
                  - rule: copper-pipe-after-calcium
                    severity: reason
                    reason: The mains are of copper
                """);
        Path page = folder.resolve("templates/page.ftl");
        Files.writeString(page, Files.readString(page).replace("<head>", "<head>\n<meta name=\"author\" content=\"Look\">"));
        all = List.of(marked("studio.yaml", "name: ", "Tarn Quay Paper Studio"),
                marked("materials/papers.yaml", "plain: ", "A thin"),
                marked("glossary.yaml", "plain: ", "A brown edge where wet paper once met dry"),
                marked("sources.yaml", "title: ", "House notebook"),
                marked("rules.yaml", "reason: ", "The mains are of copper"),
                marked("cases/tide/case.md", "", "The sheet was printed on paper"),
                new Marked(page, "content=\"", "Look"));
    }

    private Marked marked(String file, String before, String words) {
        return new Marked(folder.resolve("content").resolve(file), before, words);
    }

    @Test
    void no_page_is_stale_whenever_a_file_changes() throws IOException {
        Random random = new Random(11);
        assertThat(publish()).isZero();
        long whole = Long.MAX_VALUE;
        for (int change = 1; change <= CHANGES; change++) {
            Marked marked = all.get(change % all.size());
            long began = System.nanoTime();
            int mark = change;
            CompletableFuture<Void> later = CompletableFuture.runAsync(() -> mark(marked, mark), CompletableFuture.delayedExecutor(
                    (long) (random.nextDouble() * Math.min(whole, 2_000_000_000L)), TimeUnit.NANOSECONDS));
            publish();
            whole = System.nanoTime() - began;
            assertThat(marks(marked)).as("one run is of one moment").hasSizeLessThanOrEqualTo(1);
            later.join();
            assertThat(publish()).isZero();
            assertThat(marks(marked)).as("change %s of %s", change, marked.file().getFileName()).containsExactly(change);
        }
    }

    private void mark(Marked marked, int mark) {
        try {
            String text = Files.readString(marked.file());
            String words = marked.before() + marked.words();
            assertThat(text).contains(words);
            // In one move, as editors save; a file half written is another matter.
            Path draft = Files.writeString(folder.resolve("draft"), text.replaceFirst(
                    Pattern.quote(words) + "(?:" + MARK + ")?", Matcher.quoteReplacement(words + " Mark" + mark + "x")));
            Files.move(draft, marked.file(), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The marks of a file that stand on any page. */
    private Set<Integer> marks(Marked marked) throws IOException {
        Pattern pattern = Pattern.compile(Pattern.quote(marked.words()) + MARK);
        Set<Integer> marks = new TreeSet<>();
        try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".html")).toList()) {
                Matcher mark = pattern.matcher(Files.readString(file));
                while (mark.find()) {
                    marks.add(Integer.valueOf(mark.group(1)));
                }
            }
        }
        return marks;
    }

    private int publish() {
        PrintWriter out = new PrintWriter(new StringWriter(), true);
        return Main.run(out, out, "publish", "--content", folder.resolve("content").toString(), "--templates",
                folder.resolve("templates").toString(), "--site", folder.resolve("site").toString(), "--on", "2026-06-01");
    }
}
