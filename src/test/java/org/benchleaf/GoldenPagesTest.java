package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A few whole pages, letter by letter, so that nobody changes a page without seeing it.
 *
 * <p>It tells that a page is another one, not that it is right: what is right is held against the outside elsewhere. With
 * {@code -Dbenchleaf.golden=renew} the pages are written anew, to be read in the version control before they are kept.
 */
class GoldenPagesTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void publish() {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        assertThat(Main.run(out, out, "publish", "--content", "src/test/resources/sound/base", "--site", folder.toString(),
                "--on", "2026-06-01")).as(told::toString).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"index.html", "cases/tide/index.html", "cases/tide/steps.html", "cases/tide/preparation.html",
        "cases/tide/results.html", "cases/tide/figures.json"})
    void the_page_is_the_one_that_was_read(String page) throws IOException {
        Path golden = GOLDEN.resolve(page);
        if ("renew".equals(System.getProperty("benchleaf.golden"))) {
            Files.createDirectories(golden.getParent());
            Files.copy(folder.resolve(page), golden, StandardCopyOption.REPLACE_EXISTING);
        }
        assertThat(folder.resolve(page)).hasSameTextualContentAs(golden);
    }
}
