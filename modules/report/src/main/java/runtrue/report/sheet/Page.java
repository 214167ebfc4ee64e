package runtrue.report.sheet;

import java.util.List;

/**
 * One sheet of a workbook.
 *
 * @param name at most 31 characters, none of {@code []:*?/\}
 * @param widths of the columns in characters
 * @param heads rows at the top that stay in view and are repeated on each printed page; 0 for none
 * @param frozenColumns columns at the left that stay in view
 * @param filtered whether the last head row carries filters
 * @param printed columns that are printed, counted from the left; what stands right of them is for the screen
 * @param merging whether any line is merged; looking for them makes every row once more, which many rows need not
 * @param count number of lines
 * @param lines all rows, heads included; gone through more than once and made anew each time, so that many rows need no room
 * @param over what lies over the cells
 */
public record Page(
        String name,
        List<Integer> widths,
        int heads,
        int frozenColumns,
        boolean filtered,
        int printed,
        boolean merging,
        int count,
        Iterable<Line> lines,
        Overlay over) {
    public Page {
        widths = List.copyOf(widths);
    }
}
