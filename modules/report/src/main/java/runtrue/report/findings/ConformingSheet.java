package runtrue.report.findings;

import java.util.List;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;
import runtrue.result.Outcome;

/** What conforms, in short: one row for each rule and subject. */
final class ConformingSheet {
    private ConformingSheet() {}

    static Page page(CheckResult result) {
        return new Table<>(
                        "Conforming",
                        1,
                        List.of(
                                Column.<Conforming>text("Rule id", 26, Conforming::rule),
                                Outcomes.column(c -> Outcome.CONFORMS),
                                Column.wrapped("Plane", 30, Conforming::planeName),
                                Column.wrapped("Subject", 44, Conforming::subject),
                                Columns.measure("Measured", Conforming::measured),
                                Column.text("Must be", 10, Conforming::comparison),
                                Columns.measure("Limit", Conforming::limit),
                                Columns.measure("Margin", Conforming::margin),
                                Columns.unit(Conforming::measured),
                                Column.text("Id", 16, Conforming::id)),
                        result.conforming(),
                        "Nothing was found to conform.")
                .page();
    }
}
