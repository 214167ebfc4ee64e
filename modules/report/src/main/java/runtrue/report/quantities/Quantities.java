package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.cover.Cover;
import runtrue.report.cover.NotRead;
import runtrue.report.cover.TolerancesSheet;
import runtrue.report.cover.WindBasisSheet;
import runtrue.report.findings.StatedSheet;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;

/** The sheets of {@code quantities.xlsx} in their order. */
public final class Quantities {
    private Quantities() {}

    public static List<Page> pages(CheckResult result) {
        List<Page> pages = new ArrayList<>(order(result));
        pages.addAll(List.of(
                PlanesSheet.page(result),
                SheetGroupsSheet.page(result),
                SheetListSheet.page(result),
                SettingOutSheet.page(result),
                SupportsSheet.page(result),
                SpansSheet.page(result),
                EdgesSheet.page(result)));
        if (WindBasisSheet.applies(result)) {
            pages.add(WindBasisSheet.page(result));
        }
        pages.addAll(List.of(ModelledSheet.page(result), StatedSheet.page(result)));
        pages.addAll(
                List.of(MethodsSheet.page(result), NotRead.notReadOrAssessed(result), TolerancesSheet.page(result)));
        return pages;
    }

    /** What to order, what it costs where rates are known, how much of it is waste, and where it is from. */
    private static List<Page> order(CheckResult result) {
        List<Page> pages = new ArrayList<>(List.of(Cover.page(result, "Roof quantities"), OrderSheet.page(result)));
        result.bill().rates().ifPresent(rates -> pages.add(CostSheet.page(result, rates)));
        pages.addAll(List.of(
                WasteSheet.page(result),
                TakenFromSheet.page(result),
                PiecesSheet.page(result),
                CuttingSheet.page(result),
                OffcutsSheet.page(result),
                LiftingSheet.page(result)));
        result.changes().map(QuantityChangesSheet::page).ifPresent(pages::add);
        return pages;
    }
}
