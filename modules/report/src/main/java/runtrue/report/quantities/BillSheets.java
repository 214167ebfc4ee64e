package runtrue.report.quantities;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.CheckResult;

/** The bill: totals over all planes, and the lines per plane. */
final class BillSheets {
    private static final String NONE = "No quantity could be worked out; see 'Not read or assessed'.";

    private BillSheets() {}

    static Page totals(CheckResult result) {
        return new Table<>("Totals", 2, columns(), byItem(result.bill().totals()), NONE).page();
    }

    static Page perPlane(CheckResult result) {
        PlaneNames names = new PlaneNames(result);
        Stream<Column<Line>> plane = Stream.of(Column.wrapped("Plane", 28, l -> names.of(l.plane())));
        Stream<Column<Line>> from = Stream.of(Column.wrapped("Taken from", 26, l -> names.sources(l)));
        List<Column<Line>> columns =
                Stream.of(plane, columns().stream(), from).flatMap(s -> s).toList();
        return new Table<>("Bill per plane", 3, columns, result.bill().lines(), NONE).page();
    }

    /** Items stay in their order, but all lines of an item stand together. */
    private static List<Line> byItem(List<Line> lines) {
        Map<String, List<Line>> items =
                lines.stream().collect(Collectors.groupingBy(Line::item, LinkedHashMap::new, Collectors.toList()));
        return items.values().stream().flatMap(List::stream).toList();
    }

    /** Lines are in unlike units, so the unit has a column of its own. */
    private static List<Column<Line>> columns() {
        return List.of(
                Column.text("Item", 17, Line::item),
                Column.wrapped("Description", 34, Line::description),
                new Column<>("Quantity", "", 14, true, BillSheets::quantity),
                Column.text("Unit", 8, l -> Units.symbol(l.quantity().unit())),
                new Column<>("Length of each piece", "m", 14, true, BillSheets::length),
                Column.wrapped("How worked out", 54, Line::method));
    }

    private static Cell quantity(Line line) {
        boolean pieces = line.quantity().unit().equals("pcs");
        return Cell.of(line.quantity().value(), pieces ? Look.COUNT : Look.DECIMAL);
    }

    private static Cell length(Line line) {
        return line.lengthMetres() > 0 ? Cell.of(line.lengthMetres(), Look.METRES) : Cell.of("", Look.METRES);
    }
}
