package runtrue.report.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.HealthLine;
import runtrue.result.Importance;

/** What is amiss with the models: one row for each element or file, most important first. */
final class HealthSheet {
    /** The rest of one kind in one file is counted: the result file lists them all. */
    private static final int SHOWN = 25;

    /** What is missing from all elements alike need not be told of each. */
    private static final int SHOWN_OF_LOW = 5;

    /** Up to the storey; number and class are for the screen. */
    private static final int PRINTED = 8;

    private HealthSheet() {}

    static Page page(CheckResult result) {
        return new Table<>(
                        "Model health",
                        1,
                        columns(),
                        PRINTED,
                        result.health().stream().flatMap(HealthSheet::rows).toList(),
                        "Nothing was found amiss with the models.")
                .page();
    }

    private static List<Column<Row>> columns() {
        return List.of(
                new Column<>(
                        "Importance", "", 13, false, r -> importance(r.line().importance())),
                Column.wrapped("What", 22, Row::what),
                Column.wrapped("Element", 24, r -> of(r, ElementRef::name)),
                Column.text("GlobalId", 30, r -> of(r, ElementRef::globalId)),
                Column.wrapped("In particular", 36, Row::detail),
                Column.wrapped("Why it matters", 36, r -> r.line().why()),
                Column.wrapped(
                        "What the authoring team can do", 36, r -> r.line().action()),
                Column.wrapped("File", 24, r -> r.line().file()),
                Column.text("Storey", 16, r -> of(r, ElementRef::storey)),
                Column.text("Class", 16, r -> of(r, ElementRef::ifcClass)),
                Column.text("Number in the file", 12, r -> of(r, e -> "#" + e.stepId())));
    }

    /** By sign, word and tint, so that it does not depend on colour alone. */
    static Cell importance(Importance importance) {
        return switch (importance) {
            case HIGH -> Cell.of("▲ high", Look.DOES_NOT_CONFORM);
            case MEDIUM -> Cell.of("△ medium", Look.NOT_ASSESSED);
            case LOW -> Cell.of("· low", Look.TEXT);
        };
    }

    private static String of(Row row, Function<ElementRef, String> part) {
        return row.element().map(part).orElse("");
    }

    private static Stream<Row> rows(HealthLine line) {
        if (line.items().isEmpty()) {
            return Stream.of(new Row(line, line.title(), Optional.empty(), line.detail()));
        }
        int count = line.items().size();
        int shown = line.importance() == Importance.LOW ? SHOWN_OF_LOW : SHOWN;
        List<Row> rows = new ArrayList<>();
        line.items().stream()
                .limit(shown)
                .forEach(i -> rows.add(new Row(line, line.title(), Optional.of(i.element()), i.detail())));
        if (count > shown) {
            String more = "and " + (count - shown) + " more elements of this file, listed in result.json";
            rows.add(new Row(line, line.title(), Optional.empty(), more));
        }
        return rows.stream();
    }

    private record Row(HealthLine line, String what, Optional<ElementRef> element, String detail) {}
}
