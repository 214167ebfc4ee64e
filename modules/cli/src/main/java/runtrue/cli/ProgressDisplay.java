package runtrue.cli;

import java.io.PrintWriter;

/**
 * Shows one drop's progress from a thread of its own until closed: a bar that is drawn over itself on a terminal, a
 * plain line now and then elsewhere, nothing when quiet. Nothing is shown of a check that is over at once.
 */
final class ProgressDisplay implements AutoCloseable {
    private static final long BAR_EVERY_MS = 100;
    private static final long LINE_EVERY_MS = 10_000;

    /** Where progress is shown. */
    enum Style {
        BAR,
        LINES,
        NONE
    }

    private final ProgressState state;
    private final Style style;
    private final PrintWriter out;
    private final Thread ticker;
    private int drawn;

    ProgressDisplay(String title, Style style, PrintWriter out) {
        this.state = new ProgressState(title);
        this.style = style;
        this.out = out;
        this.ticker = new Thread(this::run, "progress");
        ticker.setDaemon(true);
        if (style != Style.NONE) {
            ticker.start();
        }
    }

    Progress progress() {
        return state;
    }

    private void run() {
        try {
            while (true) {
                Thread.sleep(style == Style.BAR ? BAR_EVERY_MS : LINE_EVERY_MS);
                show();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // closed
        }
    }

    void show() {
        if (style == Style.LINES) {
            out.println(state.line());
            out.flush();
            return;
        }
        String bar = state.bar();
        out.print("\r" + bar + " ".repeat(Math.max(0, drawn - bar.length())));
        out.flush();
        drawn = bar.length();
    }

    /** Wipes the bar, so that what is printed next starts on a clean line. */
    @Override
    public void close() {
        if (style == Style.NONE) {
            return;
        }
        ticker.interrupt();
        try {
            ticker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (drawn > 0) {
            out.print("\r" + " ".repeat(drawn) + "\r");
            out.flush();
            drawn = 0;
        }
    }
}
