package runtrue.report.quantities;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Rates;
import runtrue.result.CheckResult;

/** Sums of the costs by currency, by formulas over the order, and what has no rate. */
final class CostSheet {
    static final String NAME = "Cost";

    private CostSheet() {}

    private record Row(String currency, Cell sum, String remark) {}

    static Page page(CheckResult result, Rates rates) {
        List<Row> rows = new ArrayList<>();
        TreeMap<String, BigDecimal> sums = new TreeMap<>();
        List<Line> lines = result.bill().lines();
        lines.forEach(l -> l.rate().ifPresent(r -> sums.merge(r.currency(), OrderSheet.cost(l), BigDecimal::add)));
        int last = OrderSheet.lastRow(result);
        sums.forEach((currency, sum) -> rows.add(
                new Row(currency, sum(rows.size() + 2, last, sum), "sum of column Cost of sheet " + OrderSheet.NAME)));
        if (!rates.unpriced().isEmpty()) {
            rows.add(new Row(
                    "",
                    Cell.of("", Look.DECIMAL),
                    "No rate, so not in the sums: " + String.join(", ", rates.unpriced())));
        }
        rates.unknown()
                .forEach(u ->
                        rows.add(new Row("", Cell.of("", Look.DECIMAL), "Rate not used, " + rates.file() + ", " + u)));
        return new Table<>(NAME, 1, columns(), rows, "The rate file has no rate for anything ordered here.").page();
    }

    /** Currencies are compared cell by cell: what the rate file says never stands in a formula. */
    private static Cell sum(int row, int last, BigDecimal value) {
        String order = OrderSheet.NAME + "!";
        String currencies = order + "$" + OrderSheet.CURRENCY + "$2:$" + OrderSheet.CURRENCY + "$" + last;
        String costs = order + "$" + OrderSheet.COST + "$2:$" + OrderSheet.COST + "$" + last;
        return new Cell.Formula(
                "SUMPRODUCT((" + currencies + "=A" + row + ")*" + costs + ")", value.doubleValue(), Look.DECIMAL);
    }

    private static List<Column<Row>> columns() {
        return List.of(
                Column.text("Currency", 14, Row::currency),
                new Column<>("Cost", "", 18, true, Row::sum),
                Column.wrapped("Remark", 120, Row::remark));
    }
}
