package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.ChangedContent;
import org.benchleaf.Published;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A site of two cases below a path of a server on this machine: installed, read without a line, brought up to date. */
class InstalledIT {

    private static final String BELOW = "/kurs/site/";
    private static final String NOWHERE = "about:blank";
    private static final String STATE = "return (document.querySelector('[data-kept-state]') || {}).textContent;";
    private static final String NEWS = "return (document.querySelector('[data-kept-news]') || {}).textContent;";
    /** Asks for an update and comes back when what came of it has ended. */
    private static final String UPDATED = """
            const done = arguments[0];
            navigator.serviceWorker.getRegistration().then(kept => kept.update().then(() => {
              const look = () => kept.installing ? setTimeout(look, 50) : done(kept.waiting ? 'waiting' : 'none');
              look();
            })).catch(failed => done('failed'));
            """;
    /** What the worker of each edition is at, for the message of a wait that came to nothing. */
    private static final String WORKERS = """
            const done = arguments[0];
            navigator.serviceWorker.getRegistration().then(kept => done([kept.installing, kept.waiting, kept.active]
              .map(worker => worker && worker.state).join()));
            """;
    private static final String AT_HAND = """
            const done = arguments[1];
            caches.match(new URL(arguments[0], location.href)).then(answer => done(!!answer));
            """;

    @TempDir
    private Path folder;
    private LocalServer server;
    private ChromeDriver browser;

    @BeforeEach
    void serve() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Files.delete(content.resolve("classes/spring.yaml"));
        Files.delete(content.resolve("cases/tide/case.es.md"));
        ChangedContent.copy(content.resolve("cases/tide"), content.resolve("cases/ebb"));
        change("studio.yaml", "demo: yes", "demo: yes\ntake along: [installed]");
        change("cases/ebb/case.md", title("tide"), "title: The other sheet");
        publish("2026-06-01");
        server = new LocalServer(BELOW, this::file);
        browser = Chromium.ofThisMachine().start();
        browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(1));
    }

    private String title(String id) throws IOException {
        return Files.readString(folder.resolve("content/cases/" + id + "/case.md")).lines()
                .filter(line -> line.startsWith("title: ")).findFirst().orElseThrow();
    }

    @AfterEach
    void stop() {
        browser.quit();
        server.close();
    }

    private Optional<byte[]> file(String path) throws IOException {
        Path file = folder.resolve("site").resolve(path.isEmpty() ? "index.html" : path);
        return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve("content").resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }

    private void publish(String on) {
        Published.from(folder.resolve("content"), folder.resolve("site"), on);
    }

    private void open(String page) {
        browser.get(server.address(page));
    }

    private void waitFor(String script, String text) {
        new WebDriverWait(browser, Duration.ofMinutes(1)).withMessage(() -> script + " gives " + browser.executeScript(script)
                + "; installing, waiting, active: " + browser.executeAsyncScript(WORKERS))
                .until(driver -> String.valueOf(browser.executeScript(script)).contains(text));
    }

    /** A browser takes a new edition a moment after the last page of the old one is left. */
    private void leaveAndComeBackUntil(String text) {
        new WebDriverWait(browser, Duration.ofMinutes(1), Duration.ofSeconds(3)).until(driver -> {
            if (browser.getCurrentUrl().equals(NOWHERE)) {
                open("");
                return false;
            }
            boolean said = String.valueOf(browser.executeScript(STATE)).contains(text);
            if (!said) {
                browser.get(NOWHERE);
            }
            return said;
        });
    }

    private void keep() {
        open("");
        waitFor(STATE, "Kept for offline: 2 of 2 cases, as of 1 June 2026.");
    }

    @Test
    void it_can_be_installed_and_reads_whole_without_a_line() throws IOException {
        keep();
        assertThat(browser.executeCdpCommand("Page.getInstallabilityErrors", Map.of()).get("installabilityErrors")).isEqualTo(List.of());
        server.close();
        for (String page : List.of("", "index.html", "cases/tide/index.html", "cases/tide/steps.html", "cases/ebb/results.html",
                "search.html?q=tide", "glossary.html")) {
            open(page);
            assertThat((String) browser.executeScript("return document.querySelector('h1').textContent;")).as(page).isNotBlank();
            assertThat(browser.executeScript("return [...document.images].filter(one => one.loading !== 'lazy' "
                    + "&& !one.naturalWidth).map(one => one.src);")).as(page).isEqualTo(List.of());
        }
        server.start();
    }

    @Test
    void an_update_fetches_what_changed_says_what_is_new_and_waits_until_the_pages_are_left() throws IOException {
        keep();
        change("cases/ebb/case.md", "title: The other sheet", "title: The other sheet, mended");
        publish("2026-06-02");
        server.asked().clear();
        open("");
        waitFor(NEWS, "A newer edition, of 2 June 2026, is ready. Changed: The other sheet, mended. It opens when all pages");
        assertThat(server.asked()).noneMatch(path -> path.startsWith("cases/tide/") || path.endsWith(".jpg"))
                .contains("cases/ebb/steps.html");
        open("cases/ebb/steps.html");
        assertThat(browser.getPageSource()).doesNotContain("mended");
        open("");
        assertThat((String) browser.executeScript("return document.body.textContent;")).doesNotContain("The other sheet, mended\n");
        leaveAndComeBackUntil("Kept for offline: 2 of 2 cases, as of 2 June 2026.");
        open("cases/ebb/steps.html");
        assertThat(browser.getPageSource()).contains("mended");
    }

    @Test
    void a_case_that_was_withdrawn_leaves_the_device_at_the_next_contact() throws IOException {
        keep();
        assertThat(browser.executeAsyncScript(AT_HAND, "cases/ebb/steps.html")).isEqualTo(true);
        change("cases/ebb/case.md", "state: cleared", "state: withdrawn");
        publish("2026-06-02");
        open("");
        open("");
        new WebDriverWait(browser, Duration.ofMinutes(1)).until(driver ->
                browser.executeAsyncScript(AT_HAND, "cases/ebb/steps.html").equals(false));
        open("");
        waitFor(STATE, "Kept for offline: 1 of 1 cases, as of 2 June 2026.");
        open("");
        assertThat((String) browser.executeScript("return document.body.textContent;")).doesNotContain("The other sheet");
    }

    @Test
    void an_edition_that_is_only_half_on_the_server_is_not_kept() throws IOException {
        keep();
        change("cases/ebb/case.md", "title: The other sheet", "title: The other sheet, mended");
        publish("2026-06-02");
        Path half = folder.resolve("site/cases/ebb/results.html");
        byte[] whole = Files.readAllBytes(half);
        Files.writeString(half, "<h1>an upload cut off</h1>");
        open("");
        assertThat(browser.executeAsyncScript(UPDATED)).isNotEqualTo("waiting");
        open("cases/ebb/results.html");
        assertThat(browser.getPageSource()).contains("The other sheet").doesNotContain("mended", "an upload cut off");
        Files.write(half, whole);
        open("");
        waitFor(NEWS, "A newer edition, of 2 June 2026, is ready.");
    }
}
