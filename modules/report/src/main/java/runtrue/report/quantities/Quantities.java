package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import runtrue.report.cover.Cover;
import runtrue.report.cover.NotRead;
import runtrue.report.cover.TolerancesSheet;
import runtrue.report.cover.Ways;
import runtrue.report.cover.WindBasisSheet;
import runtrue.report.findings.StatedSheet;
import runtrue.report.roofs.RoofPlanSheet;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;

/** The sheets of {@code quantities.xlsx} in their order. */
public final class Quantities {
    private Quantities() {}

    public static List<Page> pages(CheckResult result) {
        List<Page> pages = new ArrayList<>(order(result));
        Map<String, Link> findings = FindingsOnPlanesSheet.ofPlanes(result);
        pages.addAll(List.of(
                PlanesSheet.page(result, RoofPlanSheet.rows(result), TakenFromSheet.ofPlanes(result), findings),
                RoofPlanSheet.page(result, Link.toRows(PlanesSheet.NAME, result.planes(), PlaneResult::id), findings),
                FindingsOnPlanesSheet.page(result),
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
        List<Page> pages = new ArrayList<>(List.of(
                Cover.page(result, "Roof quantities", ways(result)),
                OrderSheet.page(result, TakenFromSheet.ofLines(result))));
        result.bill().rates().ifPresent(rates -> pages.add(CostSheet.page(result, rates)));
        pages.addAll(List.of(
                WasteSheet.page(result),
                TakenFromSheet.page(result, OrderSheet.ofLines(result)),
                PiecesSheet.page(result),
                CuttingSheet.page(result),
                OffcutsSheet.page(result),
                LiftingSheet.page(result)));
        result.changes().map(QuantityChangesSheet::page).ifPresent(pages::add);
        return pages;
    }

    private static Ways ways(CheckResult result) {
        return new Ways(
                Map.of(Outcome.DOES_NOT_CONFORM, Link.toTable(FindingsOnPlanesSheet.NAME, 0)),
                FindingsOnPlanesSheet.rows(result));
    }
}
