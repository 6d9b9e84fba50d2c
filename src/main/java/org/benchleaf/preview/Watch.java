package org.benchleaf.preview;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Looks at the files while a page is open, and tells each open page when it has changed.
 *
 * <p>Files are looked at again and again: what a system tells of changed files differs from one to the next, and is nothing at
 * all on many shared drives.
 */
final class Watch implements AutoCloseable {

    private static final int MOST_STREAMS = 16;
    /** In milliseconds. */
    private static final long SHORTEST_PAUSE = 50;
    private static final long LONGEST_PAUSE = 1000;
    /** Looking takes at most this part of the time. */
    private static final int PAUSES_EACH_LOOK = 20;

    private final PreviewedSite site;
    private final Deque<EventStream> streams = new ArrayDeque<>();
    private final Thread looking;
    private long changes;
    private boolean closed;

    Watch(PreviewedSite site) {
        this.site = site;
        this.looking = daemon(this::keepLooking);
        looking.start();
    }

    /** A thread that does not keep the program running. */
    static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "preview");
        thread.setDaemon(true);
        return thread;
    }

    /** Looks at the files at once. */
    void look() {
        if (site.look()) {
            synchronized (this) {
                changes++;
                notifyAll();
            }
        }
    }

    private void keepLooking() {
        try {
            // The quickest look is that which waited for nothing else, such as a page that was being made.
            long quickest = Long.MAX_VALUE;
            while (awaitReader()) {
                long started = System.nanoTime();
                look();
                quickest = Math.min(quickest, (System.nanoTime() - started) / 1_000_000);
                Thread.sleep(Math.min(LONGEST_PAUSE, Math.max(SHORTEST_PAUSE, PAUSES_EACH_LOOK * quickest)));
            }
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized boolean awaitReader() throws InterruptedException {
        while (streams.isEmpty() && !closed) {
            wait();
        }
        return !closed;
    }

    /**
     * Tells an open page what is new until it is left.
     *
     * @param version of the page that is open, as its script was told it
     */
    void tell(HttpExchange exchange, String page, String version) throws IOException {
        EventStream stream = new EventStream(site, exchange, page, version);
        synchronized (this) {
            streams.add(stream);
            if (streams.size() > MOST_STREAMS) {
                streams.remove().close();
            }
            notifyAll();
        }
        try {
            stream.open();
            long seen;
            do {
                seen = changes();
            } while (stream.tell() && awaitChange(seen, stream));
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        } finally {
            synchronized (this) {
                streams.remove(stream);
            }
        }
    }

    private synchronized long changes() {
        return changes;
    }

    /** Waits for a change, or for as long as a line may be silent before it is tried whether the reader is still there. */
    private synchronized boolean awaitChange(long seen, EventStream stream) throws InterruptedException {
        if (changes == seen && !closed) {
            wait(EventStream.LONGEST_SILENCE);
        }
        return !closed && !stream.isClosed();
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            streams.forEach(EventStream::close);
            notifyAll();
        }
        looking.interrupt();
    }
}
