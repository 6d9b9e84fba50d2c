package org.benchleaf.run;

import java.io.PrintStream;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.util.Locale;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.LongSupplier;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Shows how far a run has come, once it has taken more than a second: a bar on a terminal, plain lines elsewhere. */
public final class Progress implements AutoCloseable {

    private static final long QUIET_NANOS = 1_000_000_000L;
    private static final int LINES = 10;
    private static final int MOST_SECONDS = 100;
    private static final DecimalFormat RATE = new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(Locale.ROOT));

    private final PrintStream out;
    private final boolean terminal;
    private final int width;
    private final String what;
    private final int total;
    private final LongSupplier nanos;
    private final long started;
    private ProgressBar bar;
    private TerminalLine line;
    private Timer waiting;
    private int done;
    private int lines;
    private boolean closed;

    private Progress(Shown shown, String what, int total) {
        this.out = shown.out();
        this.terminal = shown.terminal();
        this.width = shown.width();
        this.what = what;
        this.total = total;
        this.nanos = shown.nanos();
        this.started = nanos.getAsLong();
        if (terminal) {
            // Also where the first case takes long, something is to be seen.
            waiting = new Timer("progress", true);
            waiting.schedule(new TimerTask() {
                @Override
                public void run() {
                    showBar();
                }
            }, QUIET_NANOS / 1_000_000);
        }
    }

    /**
     * Where progress is shown.
     *
     * @param width of the terminal in letters
     * @param nanos the clock, in nanoseconds from any moment
     */
    public record Shown(PrintStream out, boolean terminal, int width, LongSupplier nanos) {

        /** On the terminal if there is one and nobody collects the output. */
        public static Shown here(PrintStream out) {
            boolean terminal = System.console() != null && System.getenv("CI") == null
                    && !"dumb".equals(System.getenv("TERM"));
            return new Shown(out, terminal, columns(), System::nanoTime);
        }

        private static int columns() {
            String columns = System.getenv("COLUMNS");
            return columns != null && columns.matches("[1-9][0-9]{1,2}") ? Integer.parseInt(columns) : 80;
        }

        Progress of(String what, int total) {
            return new Progress(this, what, total);
        }
    }

    /** Counts one more as done; may be called by several threads. */
    synchronized void step() {
        done++;
        if (taken() < QUIET_NANOS) {
            return;
        }
        if (terminal) {
            showBar();
        } else {
            showLine();
        }
    }

    private long taken() {
        return nanos.getAsLong() - started;
    }

    private synchronized void showBar() {
        if (closed) {
            return;
        }
        if (bar == null) {
            line = new TerminalLine(out, width - 1);
            bar = new ProgressBarBuilder().setTaskName(what).setInitialMax(total).setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(200).hideEta().showSpeed(RATE).setUnit("", 1).setMaxRenderedLength(width - 1)
                    .setConsumer(line)
                    .startsFrom(done, Duration.ofNanos(taken())).build();
        }
        bar.stepTo(done);
        bar.setExtraMessage(left());
    }

    /** How long the rest takes if it goes on as it went so far; in minutes once there are several. */
    private String left() {
        if (done == 0) {
            return "";
        }
        double seconds = taken() / 1e9 / done * (total - done);
        return ", " + (seconds < MOST_SECONDS ? Math.round(seconds) + " s left" : Math.round(seconds / 60) + " min left");
    }

    private void showLine() {
        int due = (int) ((long) done * LINES / total);
        if (due > lines) {
            lines = due;
            out.println(what + ": " + done + " of " + total);
        }
    }

    /** Takes the bar away. */
    @Override
    public synchronized void close() {
        closed = true;
        if (waiting != null) {
            waiting.cancel();
        }
        if (bar != null) {
            bar.close();
            line.remove();
        }
    }
}
