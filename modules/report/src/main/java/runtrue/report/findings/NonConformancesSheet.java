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

/** One row a non-conformance, conceded ones after the others with who conceded them. */
final class NonConformancesSheet {
    private NonConformancesSheet() {}

    static Page page(CheckResult result) {
        List<Finding> findings = Stream.concat(
                        result.findings(Outcome.DOES_NOT_CONFORM).stream(), result.findings(Outcome.CONCEDED).stream())
                .toList();
        return new Table<>(
                        "Non-conformances",
                        2,
                        columns(),
                        findings,
                        "Nothing that was assessed fails to conform; see 'Not assessed' for the rest.")
                .page();
    }

    private static List<Column<Finding>> columns() {
        Stream<Column<Finding>> verdict = Stream.of(
                Column.text("Id", 14, Finding::id),
                Column.wrapped("Rule", 24, Finding::title),
                Outcomes.column(Finding::outcome),
                Column.text("Severity", 11, f -> f.severity().label()),
                Column.wrapped("Subject", 28, Finding::subject),
                Column.wrapped("What is found", 42, Finding::message),
                Columns.measure("Measured", Finding::measured),
                Column.text("Must be", 10, Finding::comparison),
                Columns.measure("Limit", Finding::limit),
                Columns.measure("Margin", Finding::margin),
                Columns.unit(Finding::measured),
                Column.wrapped("Source of the limit", 30, Finding::limitSource),
                Column.wrapped("What would cure it", 40, Finding::cure),
                Column.wrapped("Conceded by, and why", 26, Finding::reason));
        Stream<Column<Finding>> where = Stream.concat(
                Stream.of(
                        Column.wrapped("Plane", 26, Finding::planeName),
                        Column.wrapped("Elements", 26, f -> Columns.lines(f.elements(), ElementRef::name)),
                        Column.wrapped("GlobalIds", 26, f -> Columns.lines(f.elements(), ElementRef::globalId)),
                        Column.wrapped("File", 26, f -> String.join("\n", f.files())),
                        Column.wrapped("Storey", 16, Finding::storey),
                        Column.wrapped("Nearest grid lines", 24, Finding::gridPlace)),
                Columns.place("", Finding::place).stream());
        Stream<Column<Finding>> ground = Stream.of(
                Column.wrapped("Rests on", 50, f -> String.join("\n", f.facts())),
                Column.text("Rule id", 22, Finding::rule));
        return Stream.of(verdict, where, ground).flatMap(s -> s).toList();
    }
}
