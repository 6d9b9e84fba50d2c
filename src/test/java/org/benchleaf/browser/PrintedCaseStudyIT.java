package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A case study on paper, in every language in which it is told: four pages of A4 with its pictures, which say what was left off. */
@Execution(ExecutionMode.CONCURRENT)
class PrintedCaseStudyIT {

    /** ISO 216, A4 in inches, as the browser's protocol asks for it. */
    private static final Map<String, Object> A4 = Map.of("paperWidth", 210 / 25.4, "paperHeight", 297 / 25.4);
    private static final int MOST_PAGES = 4;
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");
    private static final Pattern PICTURE = Pattern.compile("/Subtype\\s*/Image\\b");

    @ParameterizedTest
    @ValueSource(strings = {"cases/ferry-letter", "cases/flood-poster", "cases/lock-plan", "cases/parish-map", "cases/tide-table",
        "fr/cases/ferry-letter", "fr/cases/tide-table", "cy/cases/tide-table", "ar/cases/tide-table"})
    void it_takes_four_pages_with_its_pictures(String folder) {
        Windows.lend(window -> {
            window.open(folder + "/index.html");
            // A reader who prints has seen the page; a picture further down is fetched only then.
            window.run("[...document.images].forEach(image => { image.loading = 'eager'; });");
            window.until("[...document.images].every(image => image.complete && image.naturalWidth)");
            long photos = (long) window.run("return document.querySelectorAll('.photo img').length;");
            String pdf = new String(Base64.getDecoder().decode((String) window.ask("Page.printToPDF", A4).get("data")),
                    StandardCharsets.ISO_8859_1);
            assertThat(PAGE.matcher(pdf).results().count()).isBetween(1L, (long) MOST_PAGES);
            assertThat(photos).isGreaterThanOrEqualTo(2);
            assertThat(PICTURE.matcher(pdf).results().count()).isGreaterThanOrEqualTo(photos);
        });
    }
}
