package org.benchleaf.compose.part;

import java.time.LocalDate;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Studio;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.KeptOffline;
import org.benchleaf.page.Page;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** What lets a site be installed on a device: the web app manifest (W3C Working Draft) and where a page tells of it. */
public final class Installation {

    /** The colours of paper and ink of the style, which a device shows while the site opens. */
    private static final String PAPER = "#faf6ee";

    private Installation() {
    }

    /** Whether a studio wants it. */
    public static boolean isWanted(Studio studio) {
        return studio.takeAlong().contains(Studio.TakeAlong.INSTALLED);
    }

    /** The manifest: every address in it is relative, so that the site may lie anywhere on a server. */
    public static DataFile manifest(Studio studio, String language) {
        Words words = Words.in(language);
        return new DataFile("manifest.webmanifest", JsonText.script(JsonText.object("name", studio.name(), "short_name",
                studio.name(), "description", studio.about(), "lang", words.language(), "dir", Frames.direction(words.language()),
                "start_url", "./", "scope", "./", "display", "minimal-ui", "background_color", PAPER,
                "theme_color", PAPER, "icons", List.of(JsonText.object("src", "assets/icon.svg", "type", "image/svg+xml",
                        "sizes", "any")))) + "\n");
    }

    /** The site's first page with the place where it is told what is kept. */
    static Page told(Page first) {
        Words words = Words.in(first.language());
        Map<String, String> said = new LinkedHashMap<>(words.group("kept-offline"));
        NumberText numbers = NumberText.in(words);
        Stream.of(Month.values()).forEach(month -> said.put("month-" + month.getValue(), days(numbers, month)));
        return first.with(new KeptOffline(said));
    }

    /** How a day of a month is written, with [d] and [y] to be filled: a browser may write days in another way than the pages. */
    private static String days(NumberText numbers, Month month) {
        return numbers.date(LocalDate.of(2000, month, 28)).replace("28", "[d]").replace("2000", "[y]");
    }
}
