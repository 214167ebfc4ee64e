package runtrue.report.quantities;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** What does not conform in brief, so that whoever orders sees which lines of the bill a finding may change. */
final class FindingsOnPlanesSheet {
    static final String NAME = "Findings";

    private FindingsOnPlanesSheet() {}

    private static List<Finding> findings(CheckResult result) {
        return result.findings(Outcome.DOES_NOT_CONFORM);
    }

    /** The row of each finding, by its id. */
    static Map<String, Link> rows(CheckResult result) {
        return Link.toRows(NAME, findings(result), Finding::id);
    }

    /** The first row of each plane, by its id. */
    static Map<String, Link> ofPlanes(CheckResult result) {
        return Link.toRows(NAME, findings(result), Finding::plane);
    }

    static Page page(CheckResult result) {
        PlaneNames names = new PlaneNames(result);
        Map<String, Link> parts = TakenFromSheet.ofPlanes(result);
        List<Column<Finding>> columns = List.of(
                Column.wrapped("Id", 17, Finding::id),
                Outcomes.column(Finding::outcome),
                Column.text("Severity", 10, f -> f.severity().label()),
                Column.wrapped("What is found", 60, Finding::message),
                Column.wrapped("What would cure it", 40, Finding::cure),
                Column.<Finding>wrapped("Plane", 34, Finding::planeName).linked(f -> names.row(f.plane())),
                Column.<Finding>wrapped(
                                "Bill lines", 22, f -> parts.containsKey(f.plane()) ? "what is taken from it" : "")
                        .linked(f -> Optional.ofNullable(parts.get(f.plane()))));
        return new Table<>(
                        NAME,
                        1,
                        columns,
                        findings(result),
                        "Nothing that was assessed fails to conform; non-conformances.xlsx has the rest.")
                .page();
    }
}
