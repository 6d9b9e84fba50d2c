package org.benchleaf.browser;

import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** A few windows that tests running side by side take in turn, because starting a browser takes seconds. */
final class Windows {

    private static final int MOST = 2;
    private static final BlockingQueue<Window> FREE = new LinkedBlockingQueue<>();
    private static final AtomicInteger STARTED = new AtomicInteger();

    private Windows() {
    }

    /** Lends a window on the demo's site, in the setting of a desk. */
    static void lend(Consumer<Window> test) {
        Window window = free();
        try {
            window.surviving(() -> {
                window.show(Setting.DESK);
                test.accept(window);
                return window;
            });
        } finally {
            FREE.add(window);
        }
    }

    private static Window free() {
        Window window = FREE.poll();
        if (window != null) {
            return window;
        }
        if (STARTED.incrementAndGet() <= MOST) {
            return start(SiteUnderTest.demo().root());
        }
        try {
            return FREE.take();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while waiting for a window", stopped);
        }
    }

    private static Window start(Path root) {
        // Read with each page, because by a script that takes longer than running it on most pages.
        Window window = Window.on(root, Scripts.axe());
        Runtime.getRuntime().addShutdownHook(new Thread(window::close));
        return window;
    }
}
