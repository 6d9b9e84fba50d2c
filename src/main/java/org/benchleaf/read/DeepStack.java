package org.benchleaf.read;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Runs work on a stack of known size, so that whether it overflows does not depend on who calls. */
final class DeepStack {

    private static final long BYTES = 4L * 1024 * 1024;

    private DeepStack() {
    }

    /** What the work gives; empty if it overflowed the stack. */
    static <T> Optional<T> run(Supplier<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Thread thread = new Thread(null, () -> result.set(work.get()), "markdown", BYTES);
        thread.setUncaughtExceptionHandler((worker, thrown) -> failure.set(thrown));
        thread.start();
        join(thread);
        if (failure.get() instanceof RuntimeException broken) {
            throw broken;
        }
        if (failure.get() instanceof Error error && !(error instanceof StackOverflowError)) {
            throw error;
        }
        return Optional.ofNullable(result.get());
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while reading a story", stopped);
        }
    }
}
