package runtrue.report.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One column of a table.
 *
 * @param unit symbol for the heading; empty for none
 * @param width in characters
 * @param number whether its cells are numbers
 * @param cell the row's cell
 * @param link where the row's cell leads; empty for nowhere
 */
public record Column<T>(
        String header,
        String unit,
        int width,
        boolean number,
        Function<T, Cell> cell,
        Optional<Function<T, Optional<Link>>> link) {
    public Column(String header, String unit, int width, boolean number, Function<T, Cell> cell) {
        this(header, unit, width, number, cell, Optional.empty());
    }

    public static <T> Column<T> text(String header, int width, Function<T, String> text) {
        return new Column<>(header, "", width, false, row -> Cell.of(text.apply(row), Look.TEXT));
    }

    /** For sentences. */
    public static <T> Column<T> wrapped(String header, int width, Function<T, String> text) {
        return new Column<>(header, "", width, false, row -> Cell.of(text.apply(row), Look.WRAPPED));
    }

    public static <T> Column<T> count(String header, ToDoubleFunction<T> value) {
        return new Column<>(header, "", 11, true, row -> Cell.of(value.applyAsDouble(row), Look.COUNT));
    }

    public static <T> Column<T> metres(String header, ToDoubleFunction<T> value) {
        return new Column<>(header, "m", 13, true, row -> Cell.of(value.applyAsDouble(row), Look.METRES));
    }

    public static <T> Column<T> squareMetres(String header, ToDoubleFunction<T> value) {
        return new Column<>(header, "m²", 12, true, row -> Cell.of(value.applyAsDouble(row), Look.SQUARE_METRES));
    }

    public static <T> Column<T> degrees(String header, Function<T, OptionalDouble> value) {
        return new Column<>(header, "°", 11, true, row -> Cell.of(value.apply(row), Look.DEGREES));
    }

    /** From metres to millimetres. */
    public static <T> Column<T> millimetres(String header, Function<T, OptionalDouble> metres) {
        return new Column<>(header, "mm", 11, true, row -> Cell.of(thousandfold(metres.apply(row)), Look.MILLIMETRES));
    }

    public Column<T> wide(int characters) {
        return new Column<>(header, unit, characters, number, cell, link);
    }

    /** The same column, its cells leading where the function says. */
    public Column<T> linked(Function<T, Optional<Link>> to) {
        return new Column<>(header, unit, width, number, cell, Optional.of(to));
    }

    /** Nowhere where the text takes several lines: some spreadsheet programs set a text that leads elsewhere in one. */
    Optional<Link> link(T row) {
        return link.flatMap(to -> to.apply(row)).filter(to -> fitsOneLine(cell.apply(row)));
    }

    Cell cell(T row) {
        return link(row).isPresent() ? cell.apply(row).linked() : cell.apply(row);
    }

    private boolean fitsOneLine(Cell shown) {
        return !(shown instanceof Cell.Text text) || TextHeight.isOneLine(text.text(), width - 1);
    }

    String heading() {
        return unit.isEmpty() ? header : header + " (" + unit + ")";
    }

    private static OptionalDouble thousandfold(OptionalDouble metres) {
        return metres.isPresent() ? OptionalDouble.of(metres.getAsDouble() * 1000) : metres;
    }
}
