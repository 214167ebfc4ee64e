package runtrue.report.quantities;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Rate;
import runtrue.result.CheckResult;

/** What to order, line by line; with a rate file also what it costs, by formulas over the quantities beside them. */
final class OrderSheet {
    static final String NAME = "Order";
    static final String NONE = "No quantity could be worked out; see 'Not read or assessed'.";

    /** Letters of the columns that formulas refer to. */
    private static final String COUNT = "D";

    private static final String LENGTH = "F";
    private static final String ORDERED = "G";
    private static final String MASS = "I";
    private static final String RATE = "K";
    static final String CURRENCY = "M";
    static final String COST = "N";

    private OrderSheet() {}

    /** A line with the number of its row, from 1. */
    private record Numbered(int row, Line line) {}

    static Page page(CheckResult result) {
        List<Line> lines = bySection(result);
        List<Numbered> rows = IntStream.range(0, lines.size())
                .mapToObj(i -> new Numbered(i + 2, lines.get(i)))
                .toList();
        List<Column<Numbered>> columns = new ArrayList<>(quantities());
        if (result.bill().rates().isPresent()) {
            columns.addAll(costs());
        }
        return new Table<>(NAME, 3, columns, rows, NONE).page();
    }

    /** Sections in the order of the build-up, each with all of its lines. */
    static List<Line> bySection(CheckResult result) {
        return result.bill().lines().stream()
                .collect(Collectors.groupingBy(Line::section, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .flatMap(List::stream)
                .toList();
    }

    private static List<Column<Numbered>> quantities() {
        return List.of(
                text("Section", 22, Line::section),
                text("Item", 40, Line::description),
                text("Which", 18, Line::variant),
                new Column<>(
                        "Count", "", 9, true, n -> positive((double) n.line().count(), Look.COUNT)),
                text("Each", 18, l -> l.each()),
                new Column<>(
                        "Length of each", "m", 11, true, n -> positive(n.line().lengthMetres(), Look.METRES)),
                new Column<>("Ordered", "", 13, true, n -> Cell.of(n.line().ordered(), look(n.line()))),
                new Column<>(
                        "Unit", "", 8, false, n -> Cell.of(Units.symbol(n.line().unit()), Look.TEXT)),
                new Column<>("Mass", "kg", 12, true, n -> Cell.of(n.line().massKilograms(), Look.DECIMAL)),
                new Column<>("Item id", "", 20, false, n -> Cell.of(n.line().item(), Look.TEXT)));
    }

    private static List<Column<Numbered>> costs() {
        return List.of(
                new Column<>("Rate", "", 11, true, n -> Cell.of(n.line().rate().map(Rate::value), Look.DECIMAL)),
                text("Per", 10, l -> l.rate().map(Rate::unit).orElse("no rate")),
                new Column<>(
                        "Currency",
                        "",
                        12,
                        false,
                        n -> Cell.of(n.line().rate().map(Rate::currency).orElse(""), Look.TEXT)),
                new Column<>("Cost", "", 14, true, OrderSheet::cost));
    }

    private static Column<Numbered> text(String header, int width, Function<Line, String> text) {
        return Column.wrapped(header, width, n -> text.apply(n.line()));
    }

    static Look look(Line line) {
        return line.unit().equals("pcs") ? Look.COUNT : Look.DECIMAL;
    }

    private static Cell positive(double value, Look look) {
        return value > 0 ? Cell.of(value, look) : Cell.of("", look);
    }

    private static Cell cost(Numbered row) {
        if (row.line().rate().isEmpty()) {
            return Cell.of("", Look.DECIMAL);
        }
        int number = row.row();
        String of = switch (row.line().rate().get().of()) {
            case "count" -> COUNT + number;
            case "length" -> COUNT + number + "*" + LENGTH + number;
            case "mass" -> MASS + number;
            default -> ORDERED + number;
        };
        return new Cell.Formula(
                "ROUND(" + of + "*" + RATE + number + ",2)", cost(row.line()).doubleValue(), Look.DECIMAL);
    }

    /** To the cent, half away from zero, as spreadsheet programs round; 0 without a rate. */
    static BigDecimal cost(Line line) {
        return line.rate()
                .map(rate -> of(line, rate).multiply(BigDecimal.valueOf(rate.value())))
                .orElse(BigDecimal.ZERO)
                .setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal of(Line line, Rate rate) {
        return switch (rate.of()) {
            case "count" -> BigDecimal.valueOf(line.count());
            case "length" -> BigDecimal.valueOf(line.count()).multiply(BigDecimal.valueOf(line.lengthMetres()));
            case "mass" -> BigDecimal.valueOf(line.massKilograms().orElse(0));
            default -> BigDecimal.valueOf(line.ordered());
        };
    }
}
