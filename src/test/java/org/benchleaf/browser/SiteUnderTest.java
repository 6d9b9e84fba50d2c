package org.benchleaf.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.OwnJava;
import org.jsoup.Jsoup;

/**
 * The site that the checks look at: the demo content, published once a run as an author would.
 *
 * <p>{@code -Dbenchleaf.site=FOLDER} looks at a site that is already there.
 */
final class SiteUnderTest {

    /** The day of publishing, so that permissions are judged alike on every day. */
    private static final String DAY = "2026-11-25";
    private static final SiteUnderTest DEMO = publish();

    private final Path root;
    private final List<WrittenPage> pages;

    private SiteUnderTest(Path root, List<WrittenPage> pages) {
        this.root = root;
        this.pages = List.copyOf(pages);
    }

    /** The demo's site. */
    static SiteUnderTest demo() {
        return DEMO;
    }

    private static SiteUnderTest publish() {
        String ready = System.getProperty("benchleaf.site", "");
        try {
            return at(ready.isEmpty() ? published() : Path.of(ready).toRealPath());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Path published() throws IOException {
        Path site = Files.createDirectories(Path.of("target", "browser")).toRealPath().resolve("site");
        Process run = new ProcessBuilder(OwnJava.command(List.of(),
                "publish", "--content", "content", "--site", site.toString(), "--on", DAY))
                .redirectErrorStream(true).redirectOutput(Path.of("target", "browser", "publish.txt").toFile()).start();
        int code = finished(run);
        if (code != 0) {
            throw new IllegalStateException("the demo content could not be published (exit code " + code
                    + "); target/browser/publish.txt says why");
        }
        return site;
    }

    private static int finished(Process run) {
        try {
            return run.waitFor();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while publishing", stopped);
        }
    }

    /** The site that lies in a folder. */
    static SiteUnderTest at(Path root) throws IOException {
        List<WrittenPage> pages = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".html"))
                    .filter(path -> !holdsWholePage(path)).sorted().toList()) {
                pages.add(read(root, file));
            }
        }
        if (pages.isEmpty()) {
            throw new IllegalStateException("there is no page in " + root);
        }
        return new SiteUnderTest(root, pages);
    }

    /** Whether a file is a page of the site once more, to be taken away; its own checks open it elsewhere. */
    static boolean holdsWholePage(Path file) {
        return file.getFileName().toString().matches(".*-whole(-with-pictures)?\\.html");
    }

    private static WrittenPage read(Path root, Path file) throws IOException {
        String path = root.relativize(file).toString().replace('\\', '/');
        return new WrittenPage(path, Jsoup.parse(file, "UTF-8"), false);
    }

    Path root() {
        return root;
    }

    /** Every page, in order of path. */
    List<WrittenPage> pages() {
        return pages;
    }

    /** The heaviest page of each kind, which has the most to go wrong. */
    Map<String, WrittenPage> onePageOfEachKind() {
        Map<String, WrittenPage> one = new LinkedHashMap<>();
        for (WrittenPage page : pages) {
            one.merge(page.kind(), page, (first, second) -> size(second) > size(first) ? second : first);
        }
        return one;
    }

    private long size(WrittenPage page) {
        return size(page.path());
    }

    /** How many bytes a file of the site has. */
    long size(String path) {
        try {
            return Files.size(root.resolve(path));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The bytes of a file of the site. */
    byte[] bytes(String path) {
        try {
            return Files.readAllBytes(root.resolve(path));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The same site with one page more, unless it has that page. */
    SiteUnderTest and(WrittenPage more) {
        return pages.contains(more) ? this : new SiteUnderTest(root, Stream.concat(pages.stream(), Stream.of(more)).toList());
    }
}
