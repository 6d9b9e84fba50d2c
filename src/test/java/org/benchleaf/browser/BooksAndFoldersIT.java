package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.benchleaf.EpubChecker;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's books and folders, unpacked as a reader's device does it. */
class BooksAndFoldersIT {

    private static final String BROKEN =
            "return [...document.images].filter(one => one.complete && !one.naturalWidth).map(one => one.alt);";

    @TempDir
    private static Path folder;
    private static List<Path> books;
    private static List<Path> folders;

    @BeforeAll
    static void find() throws IOException {
        try (Stream<Path> files = Files.walk(SiteUnderTest.demo().root())) {
            List<Path> all = files.sorted().toList();
            books = all.stream().filter(file -> file.toString().endsWith(".epub")).toList();
            folders = all.stream().filter(file -> file.toString().endsWith(".zip")).toList();
        }
    }

    private static Path unpacked(Path archive, String name) throws IOException {
        Path into = Files.createDirectories(folder.resolve(name)).toRealPath();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(archive)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path file = into.resolve(entry.getName());
                Files.createDirectories(file.getParent());
                Files.write(file, zip.readAllBytes());
            }
        }
        return into;
    }

    @Test
    void each_book_of_the_demo_is_sound_for_the_checker_of_its_standard() {
        assertThat(books).hasSize(10);
        assertThat(books).allSatisfy(book -> assertThat(EpubChecker.of(book)).matches(EpubChecker.Verdict::isSound, "sound"));
    }

    /** The chapters claim to be read by everybody: held against the rules of axe-core, in both looks and at a narrow width. */
    @Test
    void the_chapters_of_a_book_keep_the_rules_of_accessibility() throws IOException {
        Path book = unpacked(books.get(0), "book").resolve("EPUB");
        List<String> chapters = new ArrayList<>();
        try (Stream<Path> files = Files.walk(book)) {
            // The list of contents is no chapter: reading programs show it in a way of their own.
            files.filter(file -> file.toString().endsWith(".xhtml") && !file.endsWith("contents.xhtml")).sorted()
                    .forEach(file -> chapters.add(book.relativize(file).toString().replace('\\', '/')));
        }
        assertThat(chapters).hasSizeGreaterThan(3);
        try (Window window = Window.on(book, Scripts.axe())) {
            for (String chapter : chapters) {
                for (Setting.Look look : List.of(Setting.Look.LIGHT, Setting.Look.DARK)) {
                    window.show(new Setting(360, look));
                    window.open(chapter);
                    // A chapter is a part of a book (role doc-chapter): the page's own landmark is the reading program's.
                    assertThat(window.textsLater(Scripts.named("axe-run"), "all")).as(window.place())
                            .filteredOn(found -> !found.startsWith("landmark-one-main")).isEmpty();
                    assertThat(window.texts(BROKEN)).as(window.place()).isEmpty();
                }
            }
        }
    }

    @Test
    void each_folder_opens_by_its_index_without_a_request_or_a_word_on_the_console() throws IOException {
        // Five cases, the site, and four cases in another language.
        assertThat(folders).hasSize(10);
        for (int number = 0; number < folders.size(); number++) {
            Path archive = folders.get(number);
            Path into = unpacked(archive, "folder-" + number);
            try (Stream<Path> inside = Files.list(into); Window window = Window.on(inside.findFirst().orElseThrow())) {
                window.open("index.html");
                assertThat(window.console()).as(archive.toString()).isEmpty();
                assertThat(window.requestsElsewhere()).as(archive.toString()).isEmpty();
                assertThat(window.texts(BROKEN)).as(archive.toString()).isEmpty();
            }
        }
    }
}
