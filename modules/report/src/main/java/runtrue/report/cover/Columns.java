package runtrue.report.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
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

    /**
     * The number of a measure whose unit stands in a column of its own.
     *
     * @param beside what it is compared with: where rounding would hide that they differ, all digits are shown
     */
    public static <T> Column<T> measure(
            String header, Function<T, Optional<Measure>> measure, Function<T, Optional<Measure>> beside) {
        return new Column<>(
                header,
                "",
                12,
                true,
                row -> measure.apply(row)
                        .map(m -> Cell.of(m.value(), look(m, beside.apply(row))))
                        .orElseGet(() -> Cell.of("", Look.MEASURE)));
    }

    /** The margin is compared with nothing left. */
    public static <T> Column<T> margin(Function<T, Optional<Measure>> margin) {
        return measure("Margin", margin, row -> margin.apply(row).map(m -> new Measure(0, m.unit())));
    }

    private static Look look(Measure measure, Optional<Measure> beside) {
        int decimals = switch (measure.unit()) {
            case "pcs" -> 0;
            case "mm" -> 1;
            case "deg", "m2" -> 2;
            case "m", "kN", "kPa" -> 3;
            default -> -1;
        };
        boolean hidden = beside.filter(b -> differ(b.value(), measure.value())
                        && rounded(b.value(), decimals) == rounded(measure.value(), decimals))
                .isPresent();
        return hidden ? Look.MEASURE : look(decimals);
    }

    private static Look look(int decimals) {
        return switch (decimals) {
            case 0 -> Look.COUNT;
            case 1 -> Look.MILLIMETRES;
            case 2 -> Look.DEGREES;
            case 3 -> Look.METRES;
            default -> Look.MEASURE;
        };
    }

    /** By more than the judge grants, which is the equality tolerance of the IDS 1.0 standard. */
    private static boolean differ(double a, double b) {
        return Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(b));
    }

    private static long rounded(double value, int decimals) {
        return Math.round(value * Math.pow(10, decimals));
    }

    /** Plane, storey, grid and coordinates in one cell, to be read on paper. */
    public static String where(Finding finding) {
        List<String> lines = new ArrayList<>();
        add(lines, "", finding.planeName());
        add(lines, "storey ", finding.storey());
        add(lines, "grid ", finding.gridPlace());
        finding.place()
                .ifPresent(p -> lines.add(
                        String.format(Locale.ROOT, "x %.3f, y %.3f, z %.3f m", p.xMetres(), p.yMetres(), p.zMetres())));
        return String.join("\n", lines);
    }

    private static void add(List<String> lines, String label, String text) {
        if (!text.isEmpty()) {
            lines.add(label + text);
        }
    }

    /** Name and GlobalId of each element, one line each. */
    public static String namesAndIds(List<ElementRef> elements) {
        return lines(elements, e -> (e.name() + "  " + e.globalId()).strip());
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
