package runtrue.report.sheet;

/** Estimates how high a cell must be because spreadsheet programs do not all fit it themselves. */
public final class TextHeight {
    private static final float POINTS_PER_LINE = 13.5f;

    /** Widths of letters in Arial against a digit's, which is the unit of column widths; from memory, rounded up. */
    private static final String NARROW = "ijltfrI.,;:'|!/()[]-";

    private static final String WIDE = "mwMWOQG@%✗✓△";
    private static final double NARROW_WIDTH = 0.55;
    private static final double WIDE_WIDTH = 1.5;
    private static final double CAPITAL_WIDTH = 1.25;

    /** Left free at the end of a line for fonts that stand in for Arial. */
    private static final double SPARE = 0.97;

    /** Highest row that the file format allows. */
    private static final float HIGHEST = 409;

    private TextHeight() {}

    /** Height in points of a text in a column of the given width in characters; at least one line. */
    public static float points(String text, int width) {
        long rows = text.lines().mapToLong(line -> rows(line, width * SPARE)).sum();
        return Math.min(HIGHEST, Math.max(1, rows) * POINTS_PER_LINE);
    }

    /** Whether it fits a column of the given width without a second line. */
    public static boolean isOneLine(String text, int width) {
        return points(text, width) <= POINTS_PER_LINE;
    }

    /** Whole words go to the next line; longer ones than a line are broken. */
    private static long rows(String line, double width) {
        long rows = 1;
        double filled = 0;
        for (String word : line.split(" ", -1)) {
            double wide = width(word);
            if (filled > 0 && filled + wide > width) {
                rows++;
                filled = 0;
            }
            rows += (long) Math.max(0, Math.ceil(wide / width) - 1);
            filled += wide % width + NARROW_WIDTH;
        }
        return rows;
    }

    private static double width(String word) {
        return word.codePoints().mapToDouble(TextHeight::width).sum();
    }

    private static double width(int c) {
        if (NARROW.indexOf(c) >= 0) {
            return NARROW_WIDTH;
        } else if (WIDE.indexOf(c) >= 0) {
            return WIDE_WIDTH;
        }
        return Character.isUpperCase(c) ? CAPITAL_WIDTH : 1;
    }
}
