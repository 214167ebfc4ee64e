package runtrue.report.quantities;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Part;
import runtrue.result.CheckResult;

/** Which planes, edges and supports each line is from: one row a line and plane, to be filtered either way. */
final class TakenFromSheet {
    private TakenFromSheet() {}

    static final String NAME = "Taken from";

    private record Row(Line line, Part part) {}

    private static List<Row> rows(CheckResult result) {
        return result.bill().lines().stream()
                .flatMap(l -> l.parts().stream().map(p -> new Row(l, p)))
                .toList();
    }

    /** The first row of each plane, by its id. */
    static Map<String, Link> ofPlanes(CheckResult result) {
        return Link.toRows(NAME, rows(result), r -> r.part().plane());
    }

    /** The first row of each line of the bill: the very record, as lines hold long lists. */
    static IdentityHashMap<Line, Link> ofLines(CheckResult result) {
        IdentityHashMap<Line, Link> first = new IdentityHashMap<>();
        List<Row> rows = rows(result);
        for (int i = 0; i < rows.size(); i++) {
            first.putIfAbsent(rows.get(i).line(), Link.toTable(NAME, i));
        }
        return first;
    }

    static Page page(CheckResult result, IdentityHashMap<Line, Link> order) {
        PlaneNames names = new PlaneNames(result);
        ModelElements elements = new ModelElements(result);
        return new Table<>(NAME, 3, columns(names, elements, order), rows(result), OrderSheet.NONE).page();
    }

    private static List<Column<Row>> columns(
            PlaneNames names, ModelElements elements, IdentityHashMap<Line, Link> order) {
        return List.of(
                Column.<Row>wrapped("Plane", 26, r -> names.of(r.part().plane()))
                        .linked(r -> names.row(r.part().plane())),
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
                Column.wrapped("Taken from", 36, r -> names.sources(r.part().from())),
                Column.wrapped("Model elements", 42, r -> elements.of(r.part())),
                Column.<Row>text("Item id", 20, r -> r.line().item())
                        .linked(r -> Optional.ofNullable(order.get(r.line()))));
    }

    private static String which(Line line) {
        String length = line.each().equals("sheet") ? String.format(Locale.ROOT, "%.3f m", line.lengthMetres()) : "";
        return line.variant().isEmpty() || length.isEmpty() ? line.variant() + length : length + ", " + line.variant();
    }

    private static Cell count(Part part) {
        return part.count() > 0 ? Cell.of((double) part.count(), Look.COUNT) : Cell.of("", Look.COUNT);
    }
}
