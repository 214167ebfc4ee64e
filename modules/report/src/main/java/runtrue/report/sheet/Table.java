package runtrue.report.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * A page that is one table, with its headings in the first row so that other programs read it without ado.
 *
 * @param frozenColumns columns at the left that stay in view
 * @param printed columns that are printed, counted from the left
 * @param none sentence for the case that there are no rows: an empty table could as well be a fault
 */
public record Table<T>(
        String name, int frozenColumns, List<Column<T>> columns, int printed, List<T> rows, String none) {
    private static final float MARGIN = 4;

    /** What the distance from the cell's edge takes of the width, in characters. */
    private static final int INDENT = 1;

    /** Characters that the filter's button covers. */
    private static final int ROOM_FOR_FILTER = 2;

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A table that is printed with all its columns. */
    public Table(String name, int frozenColumns, List<Column<T>> columns, List<T> rows, String none) {
        this(name, frozenColumns, columns, columns.size(), rows, none);
    }

    public Page page() {
        return new Page(
                name,
                columns.stream().map(Column::width).toList(),
                1,
                frozenColumns,
                !rows.isEmpty(),
                printed,
                rows.isEmpty(),
                1 + Math.max(1, rows.size()),
                () -> Stream.concat(Stream.of(heads()), body()).iterator());
    }

    private Line heads() {
        double height = columns.stream()
                .mapToDouble(c -> TextHeight.points(c.heading(), c.width() - INDENT - ROOM_FOR_FILTER))
                .max()
                .orElse(0);
        return new Line(columns.stream().map(Table::head).toList(), (float) height + MARGIN, false);
    }

    private static Cell head(Column<?> column) {
        return Cell.of(column.heading(), column.number() ? Look.NUMBER_HEADER : Look.HEADER);
    }

    private Stream<Line> body() {
        return rows.isEmpty()
                ? Stream.of(new Line(List.of(Cell.of(none, Look.TEXT)), 0, true))
                : rows.stream().map(this::line);
    }

    /** Rows with wrapped texts get their height here: not every spreadsheet program fits them when it opens a file. */
    private Line line(T row) {
        List<Cell> cells = columns.stream().map(c -> c.cell().apply(row)).toList();
        float height = 0;
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i) instanceof Cell.Text text && text.look() == Look.WRAPPED) {
                height = Math.max(
                        height, TextHeight.points(text.text(), columns.get(i).width() - INDENT));
            }
        }
        return new Line(cells, height, false);
    }
}
