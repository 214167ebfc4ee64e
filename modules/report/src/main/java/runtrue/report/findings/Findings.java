package runtrue.report.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import runtrue.report.cover.Cover;
import runtrue.report.cover.Gaps;
import runtrue.report.cover.NotRead;
import runtrue.report.cover.TolerancesSheet;
import runtrue.report.cover.Ways;
import runtrue.report.cover.WindBasisSheet;
import runtrue.report.roofs.RoofPlanSheet;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.RuleSetInfo;

/** The sheets of {@code non-conformances.xlsx} in their order. */
public final class Findings {
    private Findings() {}

    public static List<Page> pages(CheckResult result) {
        Map<String, Link> planes = RoofPlanSheet.rows(result);
        Map<String, Link> rules = Link.toRows(RulesSheet.NAME, result.ruleSet().rules(), RuleSetInfo.Rule::id);
        List<Finding> failed = NonConformancesSheet.findings(result);
        List<Page> pages = new ArrayList<>(List.of(
                Cover.page(result, "Roof non-conformances", ways(result, failed)),
                NonConformancesSheet.page(failed, planes, rules),
                NotAssessedSheet.page(result, planes, rules),
                RoofPlanSheet.page(result, Map.of(), Link.toRows(NonConformancesSheet.NAME, failed, Finding::plane))));
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
                ConformingSheet.page(result, planes, rules),
                RulesSheet.page(result),
                NotRead.notRead(result),
                TolerancesSheet.page(result)));
        return pages;
    }

    private static Ways ways(CheckResult result, List<Finding> failed) {
        Map<String, Link> rows = Link.toRows(NonConformancesSheet.NAME, failed, Finding::id);
        List<List<Finding>> gaps = Gaps.of(result);
        for (int i = 0; i < gaps.size(); i++) {
            Link row = Link.toTable(NotAssessedSheet.NAME, i);
            gaps.get(i).forEach(f -> rows.put(f.id(), row));
        }
        return new Ways(
                Map.of(
                        Outcome.DOES_NOT_CONFORM, Link.toTable(NonConformancesSheet.NAME, 0),
                        Outcome.NOT_ASSESSED, Link.toTable(NotAssessedSheet.NAME, 0),
                        Outcome.CONCEDED, Link.toTable(NonConformancesSheet.NAME, 0),
                        Outcome.CONFORMS, Link.toTable(ConformingSheet.NAME, 0)),
                rows);
    }
}
