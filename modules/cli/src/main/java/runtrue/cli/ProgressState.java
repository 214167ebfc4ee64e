package runtrue.cli;

import java.util.Locale;
import java.util.concurrent.atomic.LongAdder;

/** Counts progress of one drop and says it in one line. Workers only add; a display reads. */
final class ProgressState implements Progress {
    private static final int BAR = 20;
    private static final int LONGEST_NAME = 30;

    private final String title;
    private volatile Step step = new Step(Stage.INDEXING, 0, new LongAdder());

    private record Step(Stage stage, long total, LongAdder done) {}

    ProgressState(String title) {
        this.title = title.length() <= LONGEST_NAME ? title : title.substring(0, LONGEST_NAME - 3) + "...";
    }

    @Override
    public void stage(Stage stage, long total) {
        step = new Step(stage, total, new LongAdder());
    }

    @Override
    public void advance(long steps) {
        step.done().add(steps);
    }

    /** For a terminal: {@code [#####---------------] hall: reading shapes 25 %}. */
    String bar() {
        Step now = step;
        int full = (int) (now.stage().overall(fraction(now)) * BAR);
        return "[" + "#".repeat(full) + "-".repeat(BAR - full) + "] " + line();
    }

    /** For a log: {@code hall: reading shapes 25 %}, without the percentage while the total is not known. */
    String line() {
        Step now = step;
        String percent = now.total() > 0 ? String.format(Locale.ROOT, " %d %%", (int) (100 * fraction(now))) : "";
        return title + ": " + now.stage().label() + percent;
    }

    private static double fraction(Step now) {
        return now.total() > 0 ? Math.min(1, (double) now.done().sum() / now.total()) : 0;
    }
}
