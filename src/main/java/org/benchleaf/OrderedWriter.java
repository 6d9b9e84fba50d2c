package org.benchleaf;

import java.io.IOException;
import java.io.Writer;

/**
 * One of two writers that may end in the same file or terminal: before one is written to, what waits in the other is
 * flushed, so that the lines come out in the order in which they were written.
 */
final class OrderedWriter extends Writer {

    private final Writer target;
    private OrderedWriter other;

    private OrderedWriter(Writer target, Object lock) {
        super(lock);
        this.target = target;
    }

    /** The two writers of a pair. */
    record Pair(OrderedWriter first, OrderedWriter second) {
    }

    /** Binds two writers to each other. */
    static Pair of(Writer first, Writer second) {
        Object lock = new Object();
        OrderedWriter one = new OrderedWriter(first, lock);
        OrderedWriter two = new OrderedWriter(second, lock);
        one.other = two;
        two.other = one;
        return new Pair(one, two);
    }

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
        synchronized (lock) {
            other.target.flush();
            target.write(letters, from, count);
        }
    }

    @Override
    public void flush() throws IOException {
        synchronized (lock) {
            target.flush();
        }
    }

    @Override
    public void close() throws IOException {
        synchronized (lock) {
            target.close();
        }
    }
}
