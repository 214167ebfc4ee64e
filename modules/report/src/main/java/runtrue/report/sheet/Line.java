package runtrue.report.sheet;

import java.util.List;

/**
 * One row.
 *
 * @param height in points; 0 lets the spreadsheet program fit it to the text
 * @param merged whether the last cell that is not blank reaches to the last column of the page
 * @param free columns at the right that it leaves free all the same
 */
public record Line(List<Cell> cells, float height, boolean merged, int free) {
    public Line {
        cells = List.copyOf(cells);
    }

    public Line(List<Cell> cells, float height, boolean merged) {
        this(cells, height, merged, 0);
    }

    public static Line of(List<Cell> cells) {
        return new Line(cells, 0, false);
    }
}
