package runtrue.report.cover;

import java.util.List;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ToleranceInfo;

/** What the program takes for the same, near, level and so on, with the reason for each. */
public final class TolerancesSheet {
    private TolerancesSheet() {}

    public static Page page(CheckResult result) {
        return new Table<>("Tolerances", 1, columns(), columns().size(), result.tolerances(), "None is stated.").page();
    }

    private static List<Column<ToleranceInfo>> columns() {
        return List.of(
                Column.wrapped("What", 36, ToleranceInfo::name),
                new Column<>("Value", "", 12, true, t -> Cell.of(t.value().value(), Look.NOTE_MEASURE)),
                Column.text("Unit", 8, t -> Units.symbol(t.value().unit())),
                Column.wrapped("Reason", 90, ToleranceInfo::reason));
    }
}
