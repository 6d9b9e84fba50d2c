package org.benchleaf.command;

import java.io.PrintStream;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.util.Locale;
import java.util.Timer;
import java.util.TimerTask;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Shows how far a run has come, once it has taken more than a second: a bar on a terminal, plain lines elsewhere. */
final class Progress implements AutoCloseable {

    private static final long QUIET_NANOS = 1_000_000_000L;
    private static final int LINES = 10;
    private static final int MOST_SECONDS = 100;
    private static final DecimalFormat RATE = new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(Locale.ROOT));

    private final PrintStream out;
    private final boolean terminal;
    private final int width;
    private final String what;
    private final int total;
    private final long started = System.nanoTime();
    private ProgressBar bar;
    private Timer waiting;
    private int done;
    private int lines;
    private boolean closed;

    private Progress(PrintStream out, boolean terminal, int width, String what, int total) {
        this.out = out;
        this.terminal = terminal;
        this.width = width;
        this.what = what;
        this.total = total;
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

    /** Where progress is shown. */
    record Shown(PrintStream out, boolean terminal, int width) {

        /** On the terminal if there is one and nobody collects the output. */
        static Shown here(PrintStream out) {
            boolean terminal = System.console() != null && System.getenv("CI") == null
                    && !"dumb".equals(System.getenv("TERM"));
            return new Shown(out, terminal, columns());
        }

        private static int columns() {
            String columns = System.getenv("COLUMNS");
            return columns != null && columns.matches("[1-9][0-9]{1,2}") ? Integer.parseInt(columns) : 80;
        }

        Progress of(String what, int total) {
            return new Progress(out, terminal, width, what, total);
        }
    }

    /** Counts one more as done; may be called by several threads. */
    synchronized void step() {
        done++;
        if (System.nanoTime() - started < QUIET_NANOS) {
            return;
        }
        if (terminal) {
            showBar();
        } else {
            showLine();
        }
    }

    private synchronized void showBar() {
        if (closed) {
            return;
        }
        if (bar == null) {
            bar = new ProgressBarBuilder().setTaskName(what).setInitialMax(total).setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(200).hideEta().showSpeed(RATE).setUnit("", 1).setMaxRenderedLength(width - 1)
                    .setConsumer(new ConsoleProgressBarConsumer(out, width - 1)).clearDisplayOnFinish()
                    .startsFrom(done, Duration.ofNanos(System.nanoTime() - started)).build();
        }
        bar.stepTo(done);
        bar.setExtraMessage(left());
    }

    /** How long the rest takes if it goes on as it went so far; in minutes once there are several. */
    private String left() {
        if (done == 0) {
            return "";
        }
        double seconds = (System.nanoTime() - started) / 1e9 / done * (total - done);
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
        }
    }
}
