package runtrue.report.quantities;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
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

    /**
     * A row.
     *
     * @param number from 1, as formulas count
     * @param line empty for what is missing
     * @param missing sentence; empty for a line
     */
    private record Row(int number, Optional<Line> line, String missing) {
        String text(Function<Line, String> text) {
            return line.map(text).orElse("");
        }

        Cell figure(Function<Line, Optional<Double>> figure, Look look) {
            return Cell.of(line.flatMap(figure), look);
        }
    }

    /** The row of each line. */
    static IdentityHashMap<Line, Link> ofLines(CheckResult result) {
        IdentityHashMap<Line, Link> rows = new IdentityHashMap<>();
        int first = result.bill().missing().size();
        List<Line> lines = bySection(result);
        for (int i = 0; i < lines.size(); i++) {
            rows.put(lines.get(i), Link.toTable(NAME, first + i));
        }
        return rows;
    }

    /** @param parts where a line's item leads */
    static Page page(CheckResult result, IdentityHashMap<Line, Link> parts) {
        List<Row> rows = new ArrayList<>();
        result.bill().missing().forEach(m -> rows.add(new Row(rows.size() + 2, Optional.empty(), m)));
        bySection(result).forEach(line -> rows.add(new Row(rows.size() + 2, Optional.of(line), "")));
        List<Column<Row>> columns = new ArrayList<>(quantities(parts));
        if (result.bill().rates().isPresent()) {
            columns.addAll(costs());
        }
        return new Table<>(NAME, 3, columns, rows, NONE).page();
    }

    /** Number of the last row; what is missing stands first, so that nobody orders without it unawares. */
    static int lastRow(CheckResult result) {
        return 1 + result.bill().missing().size() + result.bill().lines().size();
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

    private static List<Column<Row>> quantities(IdentityHashMap<Line, Link> parts) {
        return List.of(
                new Column<>("Section", "", 22, false, OrderSheet::section),
                Column.<Row>wrapped("Item", 40, r -> r.missing() + r.text(Line::description))
                        .linked(r -> r.line().flatMap(l -> Optional.ofNullable(parts.get(l)))),
                Column.wrapped("Which", 18, r -> r.text(Line::variant)),
                new Column<>("Count", "", 9, true, r -> r.figure(l -> positive((double) l.count()), Look.COUNT)),
                Column.wrapped("Each", 18, r -> r.text(Line::each)),
                new Column<>(
                        "Length of each", "m", 11, true, r -> r.figure(l -> positive(l.lengthMetres()), Look.METRES)),
                new Column<>("Ordered", "", 13, true, OrderSheet::ordered),
                Column.text("Unit", 8, r -> r.text(l -> Units.symbol(l.unit()))),
                new Column<>("Mass", "kg", 12, true, r -> r.figure(OrderSheet::mass, Look.DECIMAL)),
                Column.<Row>text("Item id", 20, r -> r.text(Line::item))
                        .linked(r -> r.line().flatMap(l -> Optional.ofNullable(parts.get(l)))));
    }

    private static Cell section(Row row) {
        return row.line().isPresent()
                ? Cell.of(row.text(Line::section), Look.WRAPPED)
                : Cell.of("Missing, not ordered", Look.NOT_ASSESSED);
    }

    private static Cell ordered(Row row) {
        return row.figure(
                l -> Optional.of(l.ordered()), row.line().map(OrderSheet::look).orElse(Look.DECIMAL));
    }

    private static Optional<Double> mass(Line line) {
        return line.massKilograms().isPresent()
                ? Optional.of(line.massKilograms().getAsDouble())
                : Optional.empty();
    }

    private static List<Column<Row>> costs() {
        return List.of(
                new Column<>("Rate", "", 11, true, r -> r.figure(l -> l.rate().map(Rate::value), Look.DECIMAL)),
                Column.wrapped(
                        "Per", 10, r -> r.text(l -> l.rate().map(Rate::unit).orElse("no rate"))),
                Column.text(
                        "Currency",
                        12,
                        r -> r.text(l -> l.rate().map(Rate::currency).orElse(""))),
                new Column<>("Cost", "", 14, true, OrderSheet::costCell));
    }

    static Look look(Line line) {
        return line.unit().equals("pcs") ? Look.COUNT : Look.DECIMAL;
    }

    private static Optional<Double> positive(double value) {
        return value > 0 ? Optional.of(value) : Optional.empty();
    }

    private static Cell costCell(Row row) {
        Optional<Rate> rate = row.line().flatMap(Line::rate);
        if (rate.isEmpty()) {
            return Cell.of("", Look.DECIMAL);
        }
        int number = row.number();
        String of = switch (rate.get().of()) {
            case "count" -> COUNT + number;
            case "length" -> COUNT + number + "*" + LENGTH + number;
            case "mass" -> MASS + number;
            default -> ORDERED + number;
        };
        double value = row.line().map(OrderSheet::cost).orElse(BigDecimal.ZERO).doubleValue();
        return new Cell.Formula("ROUND(" + of + "*" + RATE + number + ",2)", value, Look.DECIMAL);
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
