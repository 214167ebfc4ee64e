package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Cut;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Pattern;
import runtrue.result.BillResult.StockPlan;
import runtrue.result.CheckResult;

/** How stock lengths are cut: one row for those that are cut alike, with what the pieces are for. */
final class CuttingSheet {
    private CuttingSheet() {}

    /** @param number of the pattern within its line, from 1 */
    private record Row(Line line, StockPlan plan, Pattern pattern, int number) {}

    static Page page(CheckResult result) {
        List<Row> rows = new ArrayList<>();
        for (Line line : OrderSheet.bySection(result)) {
            line.cutting().ifPresent(plan -> {
                int number = 0;
                for (Pattern pattern : plan.patterns()) {
                    rows.add(new Row(line, plan, pattern, ++number));
                }
            });
        }
        CutUses uses = new CutUses(result);
        return new Table<>("Cutting", 1, columns(uses), rows, "Nothing is cut from stock lengths.").page();
    }

    private static List<Column<Row>> columns(CutUses uses) {
        return List.of(
                Column.wrapped("Item", 28, r -> r.line().description()),
                Column.<Row>metres("Stock length", r -> r.plan().stockMetres()).wide(10),
                Column.<Row>count("How many", r -> r.pattern().times()).wide(9),
                Column.wrapped("Cut each into", 20, r -> cuts(r.pattern())),
                Column.wrapped("For", 52, r -> uses.of(r.pattern())),
                Column.<Row>metres("Left of each", r -> r.pattern().restMetres())
                        .wide(10),
                Column.<Row>metres(
                                "Left in all",
                                r -> r.pattern().times() * r.pattern().restMetres())
                        .wide(10),
                new Column<>("At least needed", "", 10, true, CuttingSheet::bound),
                Column.wrapped("How sure", 34, r -> r.number() == 1 ? proof(r.plan()) : ""));
    }

    private static String cuts(Pattern pattern) {
        return pattern.cuts().stream().map(CuttingSheet::cut).collect(Collectors.joining("\n"));
    }

    private static String cut(Cut cut) {
        return String.format(Locale.ROOT, "%d × %.3f m", cut.each(), cut.lengthMetres());
    }

    private static Cell bound(Row row) {
        return row.number() == 1 ? Cell.of((double) row.plan().lowerBound(), Look.COUNT) : Cell.of("", Look.COUNT);
    }

    private static String proof(StockPlan plan) {
        String of = plan.count() + (plan.count() == 1 ? " stock length" : " stock lengths");
        String left = String.format(
                Locale.ROOT, "%.1f %% left", 100 * plan.restsMetres() / (plan.count() * plan.stockMetres()));
        if (plan.proved()) {
            return of + ", " + left + "; no plan cuts fewer, by " + plan.bound();
        }
        return of + ", " + left + "; whether fewer would do is not proved; lower bound by " + plan.bound()
                + (plan.cutShort() ? "; the clock ended the search, another run may find fewer" : "");
    }
}
