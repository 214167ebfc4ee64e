package runtrue.report.findings;

import java.util.List;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** One row for each rule and subject that could not be judged, with the reason. */
final class NotAssessedSheet {
    private NotAssessedSheet() {}

    static Page page(CheckResult result) {
        return new Table<>(
                        "Not assessed",
                        2,
                        columns(),
                        result.findings(Outcome.NOT_ASSESSED),
                        "Every rule that applies could be assessed.")
                .page();
    }

    private static List<Column<Finding>> columns() {
        Stream<Column<Finding>> verdict = Stream.of(
                Column.text("Id", 16, Finding::id),
                Column.wrapped("Rule", 28, Finding::title),
                Outcomes.column(Finding::outcome),
                Column.text("Severity", 11, f -> f.severity().label()),
                Column.wrapped("Subject", 32, Finding::subject),
                Column.wrapped("Why it was not assessed", 56, Finding::reason),
                Column.wrapped("Plane", 26, Finding::planeName),
                Column.wrapped("Elements", 26, f -> Columns.lines(f.elements(), ElementRef::name)),
                Column.wrapped("GlobalIds", 26, f -> Columns.lines(f.elements(), ElementRef::globalId)),
                Column.wrapped("File", 26, f -> String.join("\n", f.files())),
                Column.wrapped("Storey", 16, Finding::storey),
                Column.wrapped("Nearest grid lines", 24, Finding::gridPlace));
        Stream<Column<Finding>> rule = Stream.of(Column.text("Rule id", 22, Finding::rule));
        return Stream.of(verdict, Columns.place("", Finding::place).stream(), rule)
                .flatMap(s -> s)
                .toList();
    }
}
