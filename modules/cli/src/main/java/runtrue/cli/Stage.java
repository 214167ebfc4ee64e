package runtrue.cli;

import java.util.Locale;

/** Stages of a check, in order. The shares of the whole are a rough guess: reading takes longest on most models. */
enum Stage {
    INDEXING(0, 0.2),
    READING_SHAPES(0.2, 0.6),
    LAYING_OUT(0.6, 0.8),
    JUDGING(0.8, 0.9),
    WRITING(0.9, 1);

    private final double startsAt;
    private final double endsAt;

    Stage(double startsAt, double endsAt) {
        this.startsAt = startsAt;
        this.endsAt = endsAt;
    }

    /** Share of the whole check that is done, 0 to 1, when {@code fraction} of this stage is. */
    double overall(double fraction) {
        return startsAt + fraction * (endsAt - startsAt);
    }

    /** For people: {@code reading shapes}. */
    String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
