package runtrue.report.quantities;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ReadMethod;

/** One row an element of a plane or a support: what its shape was read from, and how sure that is. */
final class MethodsSheet {
    /** Up to the remarks; the rest is for the screen. */
    private static final int PRINTED = 9;

    private MethodsSheet() {}

    static Page page(CheckResult result) {
        Map<String, String> names = new HashMap<>();
        result.planes().forEach(p -> names.put(p.id(), p.name()));
        return new Table<>(
                        "How it was read", 1, columns(names), PRINTED, result.methods(), "No element was read as roof.")
                .page();
    }

    private static List<Column<ReadMethod>> columns(Map<String, String> names) {
        return List.of(
                Column.wrapped("Element", 28, m -> m.element().name()),
                Column.text("GlobalId", 30, m -> m.element().globalId()),
                Column.text("Role", 10, ReadMethod::role),
                Column.wrapped("Chosen because of", 28, m -> m.element().evidence()),
                Column.wrapped("Read from", 36, ReadMethod::representation),
                Column.text("Engine", 16, ReadMethod::engine),
                Column.text("Shape is", 11, ReadMethod::basis),
                Column.text("Closed", 9, m -> m.closed() ? "yes" : "no"),
                Column.wrapped("Remarks", 40, m -> String.join("\n", m.remarks())),
                Column.wrapped(
                        "Planes",
                        30,
                        m -> m.planes().stream()
                                .map(id -> names.getOrDefault(id, id))
                                .collect(Collectors.joining("\n"))),
                Column.text("Class", 16, m -> m.element().ifcClass()),
                Column.wrapped("File", 28, m -> m.element().file()),
                Column.text("Number in the file", 12, m -> "#" + m.element().stepId()));
    }
}
