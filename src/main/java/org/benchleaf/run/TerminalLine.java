package org.benchleaf.run;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBarConsumer;

/**
 * The line of a terminal in which a bar is drawn until it is taken away.
 *
 * <p>The library clears its bar only if it was drawn once before it was closed, and draws from a thread of its own.
 * So the line is cleared here, and nothing is drawn in it afterwards.
 */
final class TerminalLine implements ProgressBarConsumer {

    private final PrintStream out;
    private final ConsoleProgressBarConsumer line;
    private boolean drawn;
    private boolean removed;

    TerminalLine(PrintStream out, int width) {
        this.out = out;
        this.line = new ConsoleProgressBarConsumer(out, width);
    }

    @Override
    public int getMaxRenderedLength() {
        return line.getMaxRenderedLength();
    }

    @Override
    public synchronized void accept(String bar) {
        if (!removed) {
            line.accept(bar);
            drawn = true;
        }
    }

    /** Blanks the line and puts the cursor at its head; what is drawn later is dropped. */
    synchronized void remove() {
        if (drawn && !removed) {
            clear();
            out.print('\r');
            out.flush();
        }
        removed = true;
    }

    /** The library's own end of a bar; the line is cleared by {@link #remove}. */
    @Override
    public void close() {
    }
}
