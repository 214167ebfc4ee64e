package runtrue.report.findings;

import java.util.List;
import runtrue.report.cover.Columns;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;

/** What conforms, in short: one row for each rule and subject. */
final class ConformingSheet {
    /** All but the id. */
    private static final int PRINTED = 8;

    private ConformingSheet() {}

    static Page page(CheckResult result) {
        return new Table<>(
                        "Conforming",
                        1,
                        List.of(
                                Column.<Conforming>text("Rule id", 24, Conforming::rule),
                                Column.wrapped("Subject", 70, Conforming::subject),
                                Columns.measure("Measured", Conforming::measured, Conforming::limit),
                                Column.text("Must be", 10, Conforming::comparison),
                                Columns.measure("Limit", Conforming::limit, Conforming::measured),
                                Columns.margin(Conforming::margin),
                                Columns.unit(Conforming::measured),
                                Column.wrapped("Plane", 34, Conforming::planeName),
                                Column.text("Id", 32, Conforming::id)),
                        PRINTED,
                        result.conforming(),
                        "Nothing was found to conform.")
                .page();
    }
}
