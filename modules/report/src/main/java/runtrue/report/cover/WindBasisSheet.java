package runtrue.report.cover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** What wind worked out by a standard rests on, a sentence a row: its caution first, the sources last. */
public final class WindBasisSheet {
    private WindBasisSheet() {}

    /** Whether any roof has its wind by a standard. */
    public static boolean applies(CheckResult result) {
        return result.bodies().stream().anyMatch(b -> !b.winds().isEmpty());
    }

    public static Page page(CheckResult result) {
        List<Row> rows = new ArrayList<>();
        for (BodyResult body : result.bodies()) {
            body.winds().forEach(wind -> rows.addAll(rows(roof(result, body), wind)));
        }
        List<Column<Row>> columns = List.of(
                Column.wrapped("Roof", 34, Row::roof),
                Column.text("What", 16, Row::what),
                Column.wrapped("In words", 96, Row::sentence));
        return new Table<>("Wind basis", 1, columns, rows, "No wind was worked out by a standard.").page();
    }

    private static List<Row> rows(String roof, BodyResult.Wind wind) {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        parts.put("Caution", List.of(wind.caution()));
        parts.put("Form", List.of("Taken as a " + wind.form() + "."));
        parts.put("Site", wind.steps());
        parts.put("Assumption", wind.assumptions());
        parts.put("Not available", wind.notAvailable());
        parts.put("Source", wind.sources());
        return parts.entrySet().stream()
                .flatMap(p -> p.getValue().stream().map(sentence -> new Row(roof, p.getKey(), sentence)))
                .toList();
    }

    /** Roofs have no names; their planes do. */
    private static String roof(CheckResult result, BodyResult body) {
        return result.planes().stream()
                .filter(p -> body.planes().contains(p.id()))
                .map(PlaneResult::name)
                .collect(Collectors.joining(", "));
    }

    private record Row(String roof, String what, String sentence) {}
}
