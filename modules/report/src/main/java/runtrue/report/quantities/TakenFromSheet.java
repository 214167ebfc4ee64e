package runtrue.report.quantities;

import java.util.List;
import java.util.Locale;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Part;
import runtrue.result.CheckResult;

/** Which planes, edges and supports each line is from: one row a line and plane, to be filtered either way. */
final class TakenFromSheet {
    private TakenFromSheet() {}

    private record Row(Line line, Part part) {}

    static Page page(CheckResult result) {
        PlaneNames names = new PlaneNames(result);
        ModelElements elements = new ModelElements(result);
        List<Row> rows = result.bill().lines().stream()
                .flatMap(l -> l.parts().stream().map(p -> new Row(l, p)))
                .toList();
        return new Table<>("Taken from", 3, columns(names, elements), rows, OrderSheet.NONE).page();
    }

    private static List<Column<Row>> columns(PlaneNames names, ModelElements elements) {
        return List.of(
                Column.wrapped("Plane", 26, r -> names.of(r.part().plane())),
                Column.wrapped("Item", 34, r -> r.line().description()),
                Column.wrapped(
                        "Which",
                        18,
                        r -> r.part().zone().isEmpty()
                                ? which(r.line())
                                : r.part().zone() + " zone"),
                new Column<>("Net", "", 13, true, r -> Cell.of(r.part().net(), OrderSheet.look(r.line()))),
                Column.text("Unit", 8, r -> Units.symbol(r.line().unit())),
                new Column<>("Count", "", 9, true, r -> count(r.part())),
                Column.wrapped(
                        "Shared with (counted here only)",
                        22,
                        r -> names.of(r.part().sharedWith())),
                Column.wrapped("Taken from", 38, r -> names.sources(r.part().from())),
                Column.wrapped("Model elements", 48, r -> elements.of(r.part())));
    }

    private static String which(Line line) {
        String length = line.each().equals("sheet") ? String.format(Locale.ROOT, "%.3f m", line.lengthMetres()) : "";
        return line.variant().isEmpty() || length.isEmpty() ? line.variant() + length : length + ", " + line.variant();
    }

    private static Cell count(Part part) {
        return part.count() > 0 ? Cell.of((double) part.count(), Look.COUNT) : Cell.of("", Look.COUNT);
    }
}
