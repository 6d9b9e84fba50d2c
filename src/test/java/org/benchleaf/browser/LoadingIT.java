package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
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
        assertHiddenUntilWhole("checked.html", "main table", page -> page.length() / 2);
    }

    /** The main ways end at the edge of the page: each link that comes in would push those before it. */
    @Test
    void the_main_ways_are_not_seen_until_all_of_them_are_there() throws IOException {
        assertHiddenUntilWhole("evidence/colour.html", ".ways", page -> {
            int first = page.indexOf("</li>", page.indexOf("class=\"ways\""));
            return page.indexOf("</li>", first + 1);
        });
    }

    private static void assertHiddenUntilWhole(String path, String part, ToIntFunction<String> cut) throws IOException {
        try (LocalServer server = new LocalServer("/", LoadingIT::file)) {
            String before = Files.readString(SiteUnderTest.demo().root().resolve(path));
            String sign = "rest-of-the-page.png";
            server.holdBack(path, before.substring(0, cut.applyAsInt(before)).getBytes(StandardCharsets.UTF_8).length, sign);
            Windows.lend(window -> {
                Object planted = window.ask("Page.addScriptToEvaluateOnNewDocument", Map.of("source",
                        Scripts.plain("seen-while-loading").replace("PART", part).replace("SIGN", server.address(sign)))).get("identifier");
                try {
                    window.visit(server.address(path));
                    window.until("window.__seen.whole.length > 0");
                    assertThat(window.texts("return window.__seen.coming;")).hasSizeGreaterThan(1).containsOnly("hidden");
                    assertThat(window.texts("return window.__seen.whole;")).containsExactly("visible");
                } finally {
                    window.ask("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", planted));
                }
            });
        }
    }

    private static Optional<byte[]> file(String path) throws IOException {
        Path file = SiteUnderTest.demo().root().resolve(path);
        return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
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
