package runtrue.report.sheet;

/** Estimates how high a cell must be because spreadsheet programs do not all fit it themselves. */
public final class TextHeight {
    private static final float POINTS_PER_LINE = 13.5f;

    /** What whole words leave empty at the end of a line. */
    private static final double FILLED = 0.9;

    private static final double ONE_LINE = 0.95;

    /** Highest row that the file format allows. */
    private static final float HIGHEST = 409;

    private TextHeight() {}

    /** Height in points of a text in a column of the given width in characters; at least one line. */
    public static float points(String text, int width) {
        long rows = text.lines()
                .mapToLong(l -> l.length() <= width * ONE_LINE ? 1 : (long) Math.ceil(l.length() / (width * FILLED)))
                .sum();
        return Math.min(HIGHEST, Math.max(1, rows) * POINTS_PER_LINE);
    }
}
