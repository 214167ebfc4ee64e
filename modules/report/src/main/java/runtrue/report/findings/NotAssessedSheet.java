package runtrue.report.findings;

import java.util.List;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** One row for each rule and subject that could not be judged, with the reason. */
final class NotAssessedSheet {
    private NotAssessedSheet() {}

    static Page page(CheckResult result) {
        return new Table<>(
                        "Not assessed",
                        1,
                        columns(),
                        printed().size(),
                        result.findings(Outcome.NOT_ASSESSED),
                        "Every rule that applies could be assessed.")
                .page();
    }

    private static List<Column<Finding>> printed() {
        return List.of(
                Column.wrapped("Id", 18, Finding::id),
                Outcomes.column(Finding::outcome),
                Column.text("Severity", 10, f -> f.severity().label()),
                Column.wrapped("Rule", 24, Finding::title),
                Column.wrapped("Subject", 32, Finding::subject),
                Column.wrapped("Why it was not assessed", 50, Finding::reason),
                Column.wrapped("Where", 28, Columns::where),
                Column.wrapped("Elements and their GlobalIds", 39, f -> Columns.namesAndIds(f.elements())));
    }

    private static List<Column<Finding>> columns() {
        Stream<Column<Finding>> where = Stream.of(
                Column.wrapped("Plane", 26, Finding::planeName),
                Column.wrapped("File", 26, f -> String.join("\n", f.files())),
                Column.wrapped("Storey", 16, Finding::storey),
                Column.wrapped("Nearest grid lines", 24, Finding::gridPlace));
        Stream<Column<Finding>> rule = Stream.of(Column.text("Rule id", 22, Finding::rule));
        return Stream.of(printed().stream(), where, Columns.place("", Finding::place).stream(), rule)
                .flatMap(s -> s)
                .toList();
    }
}
