package runtrue.report.findings;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.cover.Cover;
import runtrue.report.cover.NotRead;
import runtrue.report.cover.TolerancesSheet;
import runtrue.report.cover.WindBasisSheet;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;

/** The sheets of {@code non-conformances.xlsx} in their order. */
public final class Findings {
    private Findings() {}

    public static List<Page> pages(CheckResult result) {
        List<Page> pages = new ArrayList<>(List.of(
                Cover.page(result, "Roof non-conformances"),
                NonConformancesSheet.page(result),
                NotAssessedSheet.page(result)));
        result.changes().map(ChangesSheet::page).ifPresent(pages::add);
        if (!result.concessions().isEmpty()) {
            pages.add(ConcessionsSheet.page(result));
        }
        if (WindSheet.applies(result)) {
            pages.add(WindSheet.page(result));
        }
        if (WindBasisSheet.applies(result)) {
            pages.add(WindBasisSheet.page(result));
        }
        pages.addAll(List.of(
                HealthSheet.page(result),
                StatedSheet.page(result),
                ConformingSheet.page(result),
                RulesSheet.page(result),
                NotRead.notRead(result),
                TolerancesSheet.page(result)));
        return pages;
    }
}
