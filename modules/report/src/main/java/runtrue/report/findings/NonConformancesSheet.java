package runtrue.report.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** One row a non-conformance, conceded ones after the others with who conceded them. */
final class NonConformancesSheet {
    static final String NAME = "Non-conformances";

    private NonConformancesSheet() {}

    /** The findings in the order of their rows. */
    static List<Finding> findings(CheckResult result) {
        return Stream.concat(
                        result.findings(Outcome.DOES_NOT_CONFORM).stream(), result.findings(Outcome.CONCEDED).stream())
                .toList();
    }

    /**
     * The sheet.
     *
     * @param planes where a plane leads, by its id
     * @param rules where a rule leads, by its id
     */
    static Page page(List<Finding> findings, Map<String, Link> planes, Map<String, Link> rules) {
        return new Table<>(
                        NAME,
                        1,
                        columns(planes, rules),
                        printed().size(),
                        findings,
                        "Nothing that was assessed fails to conform; see 'Not assessed' for the rest.")
                .page();
    }

    /** What is printed tells the whole of it, for an RFI; what stands right of it is for filters and other programs. */
    private static List<Column<Finding>> printed() {
        return List.of(
                Column.wrapped("Id", 17, Finding::id),
                Outcomes.column(Finding::outcome),
                Column.text("Severity", 10, f -> f.severity().label()),
                Column.wrapped("What is found", 30, Finding::message),
                Columns.<Finding>measure("Measured", Finding::measured, Finding::limit)
                        .wide(11),
                Column.text("Must be", 9, Finding::comparison),
                Columns.<Finding>measure("Limit", Finding::limit, Finding::measured)
                        .wide(10),
                Columns.<Finding>unit(Finding::measured).wide(6),
                Column.wrapped("Source of the limit", 24, Finding::limitSource),
                Column.wrapped("What would cure it", 28, Finding::cure),
                Column.wrapped("Where", 28, Columns::where),
                Column.wrapped("Elements and their GlobalIds", 42, f -> Columns.namesAndIds(f.elements())));
    }

    private static List<Column<Finding>> columns(Map<String, Link> planes, Map<String, Link> rules) {
        Stream<Column<Finding>> where = Stream.concat(
                Stream.of(
                        Columns.margin(Finding::margin),
                        Column.wrapped("Conceded by, and why", 26, Finding::reason),
                        Column.wrapped("Rule", 24, Finding::title),
                        Column.wrapped("Subject", 28, Finding::subject),
                        Column.<Finding>wrapped("Plane", 44, Finding::planeName)
                                .linked(f -> Optional.ofNullable(planes.get(f.plane()))),
                        Column.wrapped("File", 26, f -> String.join("\n", f.files())),
                        Column.wrapped("Storey", 16, Finding::storey),
                        Column.wrapped("Nearest grid lines", 24, Finding::gridPlace)),
                Columns.place("", Finding::place).stream());
        Stream<Column<Finding>> ground = Stream.of(
                Column.wrapped("Rests on", 100, f -> String.join("; ", f.facts())),
                Column.<Finding>text("Rule id", 22, Finding::rule)
                        .linked(f -> Optional.ofNullable(rules.get(f.rule()))));
        return Stream.of(printed().stream(), where, ground).flatMap(s -> s).toList();
    }
}
