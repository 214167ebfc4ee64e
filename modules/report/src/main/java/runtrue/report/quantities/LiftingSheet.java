package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import runtrue.report.cover.Units;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.BuildUp;
import runtrue.result.BillResult.Figure;
import runtrue.result.CheckResult;

/** Areas, coil, lifting and transport, and the build-up that all quantities rest on. */
final class LiftingSheet {
    private LiftingSheet() {}

    static Page page(CheckResult result) {
        BuildUp buildUp = result.bill().buildUp();
        List<Figure> rows = new ArrayList<>(result.bill().figures());
        rows.add(new Figure(
                "Build-up",
                OptionalDouble.empty(),
                "",
                "",
                buildUp.title() + " (" + buildUp.file() + "). " + buildUp.source()));
        return new Table<>("Coil and lifting", 1, columns(), rows, OrderSheet.NONE).page();
    }

    private static List<Column<Figure>> columns() {
        return List.of(
                Column.wrapped("What", 46, Figure::what),
                new Column<>("Value", "", 14, true, f -> Cell.of(f.value(), Look.DECIMAL)),
                Column.text("Unit", 8, f -> Units.symbol(f.unit())),
                new Column<>("Verdict", "", 18, false, f -> Cell.of(f.verdict(), look(f.verdict()))),
                Column.wrapped("How worked out, or why not", 100, Figure::remark));
    }

    private static Look look(String verdict) {
        return switch (verdict) {
            case "fits" -> Look.CONFORMS;
            case "does not fit" -> Look.DOES_NOT_CONFORM;
            case "not assessed" -> Look.NOT_ASSESSED;
            default -> Look.TEXT;
        };
    }
}
