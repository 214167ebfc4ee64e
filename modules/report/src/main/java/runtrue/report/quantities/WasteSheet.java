package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Difference;
import runtrue.result.BillResult.Line;
import runtrue.result.CheckResult;

/** How much more is ordered than the geometry needs, and why: one row an item, all its lines together. */
final class WasteSheet {
    /** Less than this is no reason that two decimals could show. */
    private static final double LEAST = 0.005;

    private WasteSheet() {}

    private record Item(List<Line> lines) {
        Line first() {
            return lines.get(0);
        }

        double sum(ToDoubleFunction<Line> quantity) {
            return lines.stream().mapToDouble(quantity).sum();
        }

        double more() {
            return sum(Line::ordered) - sum(Line::net);
        }
    }

    static Page page(CheckResult result) {
        Map<String, List<Line>> items = OrderSheet.bySection(result).stream()
                .collect(Collectors.groupingBy(
                        l -> l.item() + " " + l.description(), LinkedHashMap::new, Collectors.toList()));
        List<Item> rows = items.values().stream().map(Item::new).toList();
        return new Table<>("Waste", 2, columns(), rows, OrderSheet.NONE).page();
    }

    private static List<Column<Item>> columns() {
        return List.of(
                Column.wrapped("Section", 22, i -> i.first().section()),
                Column.wrapped("Item", 38, i -> i.first().description()),
                quantity("Net", i -> i.sum(Line::net)),
                quantity("Gross", i -> i.sum(Line::gross)),
                quantity("Ordered", i -> i.sum(Line::ordered)),
                Column.text("Unit", 8, i -> Units.symbol(i.first().unit())),
                new Column<>("More than net", "%", 10, true, WasteSheet::percent),
                Column.wrapped("Why", 62, WasteSheet::reasons),
                Column.wrapped(
                        "How the net quantity was worked out",
                        46,
                        i -> i.first().method()));
    }

    private static Column<Item> quantity(String header, ToDoubleFunction<Item> value) {
        return new Column<>(header, "", 13, true, i -> Cell.of(value.applyAsDouble(i), OrderSheet.look(i.first())));
    }

    private static Cell percent(Item item) {
        double net = item.sum(Line::net);
        return net > 0 ? Cell.of(100 * item.more() / net, Look.MILLIMETRES) : Cell.of("", Look.MILLIMETRES);
    }

    private static String reasons(Item item) {
        Map<String, Double> reasons = new LinkedHashMap<>();
        for (Line line : item.lines()) {
            for (Difference difference : line.differences()) {
                reasons.merge(difference.reason(), difference.quantity(), Double::sum);
            }
        }
        List<String> sentences = new ArrayList<>();
        reasons.forEach((reason, quantity) -> {
            if (Math.abs(quantity) >= LEAST) {
                sentences.add(String.format(
                        Locale.ROOT,
                        "%.2f %s %s",
                        quantity,
                        Units.symbol(item.first().unit()),
                        reason));
            }
        });
        return String.join("\n", sentences);
    }
}
