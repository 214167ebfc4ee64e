package runtrue.report.quantities;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.change.Changes;

/** What is ordered more or less of than by an earlier result, and the planes that it comes from. */
final class QuantityChangesSheet {
    private QuantityChangesSheet() {}

    static Page page(Changes changes) {
        List<Row> rows = Stream.concat(
                        changes.orders().stream().map(QuantityChangesSheet::order),
                        changes.planes().stream().flatMap(QuantityChangesSheet::plane))
                .toList();
        return new Table<>(
                        "Changes",
                        1,
                        columns(),
                        rows,
                        "Nothing to order and no plane changed since the run of " + changes.earlierRunStamp() + ".")
                .page();
    }

    private static List<Column<Row>> columns() {
        return List.of(
                Column.wrapped("What", 44, Row::what),
                Column.text("Figure", 20, Row::figure),
                Column.text("Unit", 8, Row::unit),
                number("Before", Row::before),
                number("Now", Row::now),
                number("Difference", Row::difference),
                Column.text("Remark", 30, Row::remark));
    }

    private static Column<Row> number(String header, Function<Row, OptionalDouble> value) {
        return new Column<>(header, "", 14, true, row -> Cell.of(value.apply(row), Look.MEASURE));
    }

    private static Row order(Changes.OfOrder order) {
        String what = order.description() + (order.variant().isEmpty() ? "" : ", " + order.variant());
        String remark =
                order.before().isEmpty() ? "not ordered before" : order.now().isEmpty() ? "no longer needed" : "";
        return new Row(
                what,
                "ordered",
                Units.symbol(order.unit()),
                order.before(),
                order.now(),
                OptionalDouble.of(order.difference()),
                remark);
    }

    private static Stream<Row> plane(Changes.OfPlane plane) {
        if (plane.figures().isEmpty()) {
            OptionalDouble none = OptionalDouble.empty();
            return Stream.of(new Row(
                    plane.name(), "plane", "", none, none, none, plane.kind().label()));
        }
        return plane.figures().stream()
                .map(f -> new Row(
                        plane.name(),
                        f.what(),
                        Units.symbol(f.unit()),
                        OptionalDouble.of(f.before()),
                        OptionalDouble.of(f.now()),
                        OptionalDouble.of(f.now() - f.before()),
                        ""));
    }

    private record Row(
            String what,
            String figure,
            String unit,
            OptionalDouble before,
            OptionalDouble now,
            OptionalDouble difference,
            String remark) {}
}
