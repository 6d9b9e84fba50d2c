package org.benchleaf.browser;

import java.time.Instant;
import java.util.Map;

/** The clock that a window's pages read: it stands still until it is set, so that nobody has to wait for a timer. */
final class PageClock implements AutoCloseable {

    private static final long START = Instant.parse("2026-03-02T09:00:00Z").toEpochMilli();

    private final Window window;
    private String planted = "";

    private PageClock(Window window) {
        this.window = window;
    }

    /** A clock at its start, for what is opened from now on. */
    static PageClock in(Window window) {
        PageClock clock = new PageClock(window);
        clock.plant(0);
        return clock;
    }

    /** Sets the clock to so many seconds after its start and lets the page look at it. */
    void set(long seconds) {
        plant(seconds);
        window.run(standing(seconds));
        window.run(Scripts.plain("do-again"));
    }

    private void plant(long seconds) {
        close();
        planted = String.valueOf(window.ask("Page.addScriptToEvaluateOnNewDocument", Map.of("source", standing(seconds)))
                .get("identifier"));
    }

    private static String standing(long seconds) {
        return Scripts.plain("clock-stands").replace("TIME", String.valueOf(START + seconds * 1000));
    }

    @Override
    public void close() {
        if (!planted.isEmpty()) {
            window.ask("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", planted));
            planted = "";
        }
    }
}
