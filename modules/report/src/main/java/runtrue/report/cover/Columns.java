package runtrue.report.cover;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.result.ElementRef;
import runtrue.result.Measure;
import runtrue.result.Point;

/** Columns that several sheets share. */
public final class Columns {
    private Columns() {}

    /** X, Y and Z of a place in world coordinates. */
    public static <T> List<Column<T>> place(String name, Function<T, Optional<Point>> place) {
        return List.of(
                coordinate(name + "X", place, Point::xMetres),
                coordinate(name + "Y", place, Point::yMetres),
                coordinate(name + "Z", place, Point::zMetres));
    }

    private static <T> Column<T> coordinate(
            String header, Function<T, Optional<Point>> place, Function<Point, Double> part) {
        return new Column<>(
                header, "m", 14, true, row -> Cell.of(place.apply(row).map(part), Look.METRES));
    }

    /** The number of a measure whose unit stands in a column of its own. */
    public static <T> Column<T> measure(String header, Function<T, Optional<Measure>> measure) {
        return new Column<>(
                header, "", 12, true, row -> Cell.of(measure.apply(row).map(Measure::value), Look.MEASURE));
    }

    public static <T> Column<T> unit(Function<T, Optional<Measure>> measure) {
        return Column.text(
                "Unit",
                9,
                row -> measure.apply(row).map(m -> Units.symbol(m.unit())).orElse(""));
    }

    /** One line per element. */
    public static String lines(List<ElementRef> elements, Function<ElementRef, String> part) {
        return String.join("\n", elements.stream().map(part).distinct().toList());
    }
}
