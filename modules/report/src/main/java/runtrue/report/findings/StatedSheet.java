package runtrue.report.findings;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import runtrue.report.cover.Columns;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.StatedValue;

/** What the models state beside what the geometry gives: contradictions first. */
public final class StatedSheet {
    /** Up to the file; class and number are for the screen. */
    private static final int PRINTED = 12;

    private StatedSheet() {}

    public static Page page(CheckResult result) {
        Map<String, String> names = new HashMap<>();
        result.planes().forEach(p -> names.put(p.id(), p.name()));
        List<StatedValue> ordered = result.stated().stream()
                .sorted(Comparator.comparingInt(StatedSheet::order))
                .toList();
        return new Table<>(
                        "Stated values",
                        1,
                        columns(names),
                        PRINTED,
                        ordered,
                        "The models state no pitch, area, length or thickness.")
                .page();
    }

    private static int order(StatedValue value) {
        return switch (value.verdict()) {
            case "contradicts" -> 0;
            case "not compared" -> 1;
            default -> 2;
        };
    }

    private static List<Column<StatedValue>> columns(Map<String, String> names) {
        return List.of(
                new Column<>("Verdict", "", 15, false, StatedSheet::verdict),
                Column.wrapped("Element", 24, v -> v.element().name()),
                Column.text("GlobalId", 30, v -> v.element().globalId()),
                Column.text("Quantity", 12, StatedValue::quantity),
                Columns.<StatedValue>measure("Stated", v -> Optional.of(v.stated()), StatedValue::derived)
                        .wide(11),
                Columns.<StatedValue>measure("Derived", StatedValue::derived, v -> Optional.of(v.stated()))
                        .wide(11),
                Columns.<StatedValue>measure("Difference", StatedValue::difference, StatedValue::tolerance)
                        .wide(12),
                Columns.<StatedValue>measure("Tolerance", StatedValue::tolerance, StatedValue::difference)
                        .wide(12),
                Columns.<StatedValue>unit(v -> Optional.of(v.stated())).wide(6),
                Column.wrapped("Stated in", 28, StatedSheet::source),
                Column.wrapped("What is wrong, or why it was not compared", 40, StatedValue::remark),
                Column.wrapped("File", 26, v -> v.element().file()),
                Column.wrapped("Derived from", 30, StatedValue::derivedFrom),
                Column.wrapped(
                        "Planes",
                        30,
                        v -> v.planes().stream()
                                .map(id -> names.getOrDefault(id, id))
                                .collect(Collectors.joining("\n"))),
                Column.text("Class", 16, v -> v.element().ifcClass()),
                Column.text("Number in the file", 12, v -> "#" + v.element().stepId()));
    }

    private static Cell verdict(StatedValue value) {
        return switch (value.verdict()) {
            case "contradicts" -> Cell.of("✗ contradicts", Look.DOES_NOT_CONFORM);
            case "not compared" -> Cell.of("? not compared", Look.NOT_ASSESSED);
            default -> Cell.of("✓ " + value.verdict(), Look.CONFORMS);
        };
    }

    private static String source(StatedValue value) {
        String unit = value.unitStated() ? "" : ", without a unit";
        return value.source() + (value.inherited() ? ", from the type" : "") + unit;
    }
}
