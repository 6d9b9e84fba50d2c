package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * The button that keeps the screen on, in browsers that grant it, refuse it or do not know it. How a browser behaves is
 * that of the Screen Wake Lock API (W3C): it may refuse, and it lets go when the page is hidden.
 */
@Execution(ExecutionMode.CONCURRENT)
class ScreenStaysOnIT {

    private static final String NONE = "delete Navigator.prototype.wakeLock;";
    private static final String GRANTS = Scripts.plain("screen-lock").replace("REFUSES", "false");
    private static final String REFUSES = Scripts.plain("screen-lock").replace("REFUSES", "true");

    @Test
    void a_browser_that_cannot_keep_the_screen_on_shows_no_button_for_it() {
        inABrowserThat(NONE, window -> assertThat(window.run("return document.querySelector('[data-desk=awake]').checkVisibility();"))
                .isEqualTo(false));
    }

    @Test
    void pressing_asks_for_the_screen_and_says_that_it_stays_on() {
        inABrowserThat(GRANTS, window -> {
            assertThat(button(window)).containsExactly("0", "false", "");
            press(window);
            assertThat(button(window)).containsExactly("1", "true", "The screen stays on.");
        });
    }

    @Test
    void pressing_again_lets_the_screen_go_and_says_so() {
        inABrowserThat(GRANTS, window -> {
            press(window);
            press(window);
            assertThat(button(window)).containsExactly("1", "false", "The screen may switch off.");
            away(window, true);
            away(window, false);
            assertThat(button(window)).containsExactly("1", "false", "The screen may switch off.");
        });
    }

    @Test
    void who_comes_back_to_the_page_finds_the_screen_kept_on_again() {
        inABrowserThat(GRANTS, window -> {
            press(window);
            away(window, true);
            assertThat(button(window)).containsExactly("1", "false", "The screen may switch off.");
            away(window, false);
            assertThat(button(window)).containsExactly("2", "true", "The screen stays on.");
        });
    }

    @Test
    void a_browser_that_refuses_is_told_of_in_words_and_not_asked_again_unasked() {
        inABrowserThat(REFUSES, window -> {
            press(window);
            assertThat(button(window)).containsExactly("1", "false", "This device does not allow it.");
            away(window, true);
            away(window, false);
            assertThat(button(window)).containsExactly("1", "false", "This device does not allow it.");
        });
    }

    private static void inABrowserThat(String behaves, Consumer<Window> work) {
        Windows.lend(window -> {
            Object planted = window.ask("Page.addScriptToEvaluateOnNewDocument", Map.of("source", behaves)).get("identifier");
            try {
                window.open("cases/tide-table/steps.html");
                work.accept(window);
            } finally {
                window.ask("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", planted));
            }
        });
    }

    private static void press(Window window) {
        window.textsLater("document.querySelector('[data-desk=awake]').click(); const done = arguments[0]; setTimeout(() => done([]));");
    }

    private static void away(Window window, boolean left) {
        window.textsLater("window.__away(arguments[0]); const done = arguments[1]; setTimeout(() => done([]));", left);
    }

    /** How often the browser was asked, whether the button is pressed, and what is told. */
    private static List<String> button(Window window) {
        return window.texts("return [window.__asked, document.querySelector('[data-desk=awake]').getAttribute('aria-pressed'),"
                + " document.querySelector('.bench-desk__status').textContent];");
    }
}
