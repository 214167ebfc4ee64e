package runtrue.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                () -> Stream.concat(Stream.of(heads()), body()).iterator(),
                Overlay.of(links()));
    }

    /** Rows below each other that lead to the same place are one: a table by planes has few. */
    private List<Overlay.Linked> links() {
        List<Overlay.Linked> links = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
            if (columns.get(column).link().isPresent()) {
                links(column, links);
            }
        }
        return links;
    }

    private void links(int column, List<Overlay.Linked> links) {
        int first = 0;
        Optional<Link> before = Optional.empty();
        for (int row = 0; row <= rows.size(); row++) {
            Optional<Link> to = row < rows.size() ? columns.get(column).link(rows.get(row)) : Optional.empty();
            if (!to.equals(before)) {
                if (before.isPresent()) {
                    links.add(new Overlay.Linked(1 + first, row, column, before.get()));
                }
                before = to;
                first = row;
            }
        }
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
        List<Cell> cells = columns.stream().map(c -> c.cell(row)).toList();
        float height = 0;
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i) instanceof Cell.Text text && (text.look() == Look.WRAPPED || text.look() == Look.LINK)) {
                height = Math.max(
                        height, TextHeight.points(text.text(), columns.get(i).width() - INDENT));
            }
        }
        return new Line(cells, height, false);
    }
}
