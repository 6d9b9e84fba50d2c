package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebDriverException;

/** A browser that falls is not taken for a fault of the page, unless the page brings it down again. */
class WindowIT {

    private static Window window;

    @BeforeAll
    static void open() {
        window = Window.on(SiteUnderTest.demo().root(), "window.__read = 'before the page';");
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @Test
    void a_check_whose_browser_fell_once_is_made_again_in_a_fresh_one() {
        AtomicInteger times = new AtomicInteger();
        assertThat(window.surviving(falling(times, 1))).containsExactly("before the page");
        assertThat(times).hasValue(2);
    }

    @Test
    void a_page_that_brings_the_browser_down_twice_fails_its_check() {
        Supplier<List<String>> check = falling(new AtomicInteger(), 2);
        assertThatThrownBy(() -> window.surviving(check)).isInstanceOf(WebDriverException.class);
        assertThat(window.surviving(falling(new AtomicInteger(), 0))).containsExactly("before the page");
    }

    private static Supplier<List<String>> falling(AtomicInteger times, int falls) {
        return () -> {
            window.open("index.html");
            if (times.getAndIncrement() < falls) {
                window.ask("Page.crash", Map.of());
            }
            return window.texts("return [window.__read];");
        };
    }
}
