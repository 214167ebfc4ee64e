package runtrue.report.quantities;

import java.util.List;
import runtrue.report.cover.Cover;
import runtrue.report.cover.NotRead;
import runtrue.report.cover.TolerancesSheet;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;

/** The sheets of {@code quantities.xlsx} in their order. */
public final class Quantities {
    private Quantities() {}

    public static List<Page> pages(CheckResult result) {
        return List.of(
                Cover.page(result, "Roof quantities"),
                BillSheets.totals(result),
                PlanesSheet.page(result),
                SheetGroupsSheet.page(result),
                SheetListSheet.page(result),
                SettingOutSheet.page(result),
                SupportsSheet.page(result),
                SpansSheet.page(result),
                EdgesSheet.page(result),
                BillSheets.perPlane(result),
                MethodsSheet.page(result),
                NotRead.notReadOrAssessed(result),
                TolerancesSheet.page(result));
    }
}
