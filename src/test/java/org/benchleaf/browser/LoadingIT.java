package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** While a page comes in on a slow phone, nothing of it jumps: the layout shift of 0 that the house asks for. */
@Execution(ExecutionMode.CONCURRENT)
class LoadingIT {

    private static final int SLOWER = 4;

    @Test
    void nothing_jumps_while_a_page_comes_in() {
        Windows.lend(window -> {
            Object planted = window.ask("Page.addScriptToEvaluateOnNewDocument",
                    Map.of("source", Scripts.plain("what-jumps"))).get("identifier");
            window.ask("Emulation.setCPUThrottlingRate", Map.of("rate", SLOWER));
            try {
                Fault.none(SiteUnderTest.demo().onePageOfEachKind().values().stream()
                        .flatMap(page -> widths(page).flatMap(width -> jumps(window, page, width))));
            } finally {
                window.ask("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
                window.ask("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", planted));
            }
        });
    }

    /** Each row that comes in has a say in how wide its columns are. */
    @Test
    void tables_are_not_seen_until_their_page_is_whole() throws IOException {
        try (HalfPage half = new HalfPage(SiteUnderTest.demo().root(), "checked.html")) {
            Windows.lend(window -> {
                Object planted = window.ask("Page.addScriptToEvaluateOnNewDocument",
                        Map.of("source", Scripts.plain("tables-while-loading"))).get("identifier");
                try {
                    window.visit(half.address());
                    window.until("window.__tables.whole.length > 0");
                    assertThat(window.texts("return window.__tables.coming;")).hasSizeGreaterThan(1).containsOnly("hidden");
                    assertThat(window.texts("return window.__tables.whole;")).containsExactly("visible");
                } finally {
                    window.ask("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", planted));
                }
            });
        }
    }

    /** A phone, and a desk where scripts of a page's own come in. */
    private static Stream<Integer> widths(WrittenPage page) {
        return page.find("script[src]:not([src$=offline.js])").size() > 1 ? Stream.of(412, 1280) : Stream.of(412);
    }

    private static Stream<Fault> jumps(Window window, WrittenPage page, int width) {
        window.show(new Setting(width, Setting.Look.LIGHT));
        window.open(page.path());
        return window.textsLater(Scripts.plain("after-two-frames")).stream()
                .map(jump -> new Fault("nothing jumps", window.place(), jump));
    }
}
