package runtrue.report.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * A page that is one table, with its headings in the first row so that other programs read it without ado.
 *
 * @param frozenColumns columns at the left that stay in view
 * @param none sentence for the case that there are no rows: an empty table could as well be a fault
 */
public record Table<T>(String name, int frozenColumns, List<Column<T>> columns, List<T> rows, String none) {
    private static final float TWO_LINES = 30;

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    public Page page() {
        return new Page(
                name,
                columns.stream().map(Column::width).toList(),
                1,
                frozenColumns,
                !rows.isEmpty(),
                1 + Math.max(1, rows.size()),
                () -> Stream.concat(Stream.of(heads()), body()).iterator());
    }

    private Line heads() {
        return new Line(
                columns.stream().map(c -> Cell.of(c.heading(), Look.HEADER)).toList(), TWO_LINES, false);
    }

    private Stream<Line> body() {
        return rows.isEmpty()
                ? Stream.of(new Line(List.of(Cell.of(none, Look.TEXT)), 0, true))
                : rows.stream()
                        .map(row -> Line.of(
                                columns.stream().map(c -> c.cell().apply(row)).toList()));
    }
}
