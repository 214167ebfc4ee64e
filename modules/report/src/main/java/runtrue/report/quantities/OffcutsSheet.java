package runtrue.report.quantities;

import java.util.List;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.MayServe;
import runtrue.result.CheckResult;

/** Which trimmed and tapered sheets may come two from one: a proposal, the order counts each by itself. */
final class OffcutsSheet {
    private OffcutsSheet() {}

    static Page page(CheckResult result) {
        PlaneNames names = new PlaneNames(result);
        return new Table<>(
                        "Offcuts",
                        0,
                        columns(names),
                        result.bill().offcuts(),
                        "No two trimmed or tapered sheets fit into one that saves 0.3 m; sheets are not turned end for end.")
                .page();
    }

    private static List<Column<MayServe>> columns(PlaneNames names) {
        return List.of(
                Column.wrapped("This sheet's plane", 34, p -> names.of(p.plane())),
                Column.count("Sheet", MayServe::sheet),
                Column.wrapped("may also give one of", 34, p -> names.of(p.otherPlane())),
                Column.count("Its sheet", MayServe::otherSheet),
                Column.<MayServe>metres("One sheet for both", MayServe::lengthMetres)
                        .wide(15),
                Column.<MayServe>metres("Would save", MayServe::savedMetres).wide(12),
                Column.wrapped("How they lie in it", 34, MayServe::way),
                Column.wrapped(
                        "Not in the order",
                        40,
                        p ->
                                "an option: same profile and hand, not turned end for end; the order counts both in full"));
    }
}
