package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * The letters that a site brings along: light, and with digits that stand below each other. A page that is there before them keeps to
 * those of the device, so that nothing of it jumps ({@code font-display: optional}, CSS Fonts 4, section 4.9).
 */
@Execution(ExecutionMode.CONCURRENT)
class FontsIT {

    /** What the house lets the first page fetch of them, in bytes. */
    private static final long MOST_BYTES = 120_000;
    private static final String LOADED = "return [...document.fonts].filter(face => face.status === 'loaded')"
            + ".map(face => face.family.replaceAll('\"', '') + ' ' + face.style + ' ' + face.unicodeRange.slice(0, 6));";

    private static List<String> loaded(Window window) {
        window.until("document.fonts.status === 'loaded'");
        return ((Collection<?>) window.run(LOADED)).stream().map(Object::toString).toList();
    }

    @Test
    void they_load_from_a_folder_too() {
        Windows.lend(window -> {
            window.open("index.html");
            assertThat(loaded(window)).contains("Text normal U+0-10", "Figures normal U+0-10")
                    .noneMatch(face -> face.contains("U+100"));
        });
    }

    @Test
    void letters_of_welsh_come_when_a_page_has_them() {
        Windows.lend(window -> {
            window.open("cy/cases/tide-table/steps.html");
            assertThat((String) window.run("return document.body.textContent;")).containsAnyOf("\u0175", "\u0177");
            assertThat(loaded(window)).anyMatch(face -> face.contains("U+100"));
        });
    }

    @Test
    void all_digits_are_of_one_width() {
        Windows.lend(window -> {
            window.open("cases/tide-table/results.html");
            loaded(window);
            for (String family : List.of("Figures", "Text")) {
                assertThat((Collection<?>) window.run("const pen = document.createElement('canvas').getContext('2d'); pen.font = '40px \""
                        + family + "\"'; return [...new Set([...'0123456789'].map(digit => pen.measureText(digit).width))];"))
                        .as(family).hasSize(1);
            }
        });
    }

    @Test
    void the_first_page_fetches_few_bytes_of_them() throws IOException {
        try (LocalServer server = new LocalServer("/", path -> {
            var file = SiteUnderTest.demo().root().resolve(path.isEmpty() ? "index.html" : path);
            return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        })) {
            Windows.lend(window -> {
                window.visit(server.address("index.html"));
                loaded(window);
            });
            List<String> fonts = server.asked().stream().filter(path -> path.endsWith(".woff2")).distinct().toList();
            assertThat(fonts).hasSizeBetween(2, 3);
            long bytes = 0;
            for (String font : fonts) {
                bytes += Files.size(SiteUnderTest.demo().root().resolve(font));
            }
            assertThat(bytes).isLessThanOrEqualTo(MOST_BYTES);
        }
    }
}
