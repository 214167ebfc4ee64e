package runtrue.report.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.report.cover.Columns;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;

/** What conforms, in short: one row for each rule and subject. */
final class ConformingSheet {
    /** All but the id. */
    private static final int PRINTED = 8;

    static final String NAME = "Conforming";

    private ConformingSheet() {}

    static Page page(CheckResult result, Map<String, Link> planes, Map<String, Link> rules) {
        return new Table<>(
                        NAME,
                        1,
                        List.of(
                                Column.<Conforming>text("Rule id", 24, Conforming::rule)
                                        .linked(c -> Optional.ofNullable(rules.get(c.rule()))),
                                Column.wrapped("Subject", 70, Conforming::subject),
                                Columns.measure("Measured", Conforming::measured, Conforming::limit),
                                Column.text("Must be", 10, Conforming::comparison),
                                Columns.measure("Limit", Conforming::limit, Conforming::measured),
                                Columns.margin(Conforming::margin),
                                Columns.unit(Conforming::measured),
                                Column.<Conforming>wrapped("Plane", 34, Conforming::planeName)
                                        .linked(c -> Optional.ofNullable(planes.get(c.plane()))),
                                Column.text("Id", 32, Conforming::id)),
                        PRINTED,
                        result.conforming(),
                        "Nothing was found to conform.")
                .page();
    }
}
