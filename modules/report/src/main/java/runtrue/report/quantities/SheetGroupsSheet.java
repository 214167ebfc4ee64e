package runtrue.report.quantities;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Sheet;

/** Sheets of one plane and order length together: to the millimetre, trimmed ones apart. */
final class SheetGroupsSheet {
    private SheetGroupsSheet() {}

    static Page page(CheckResult result) {
        List<Group> groups =
                result.planes().stream().flatMap(p -> groups(p).stream()).toList();
        return new Table<>("Sheets", 2, columns(new PlaneNames(result)), groups, "No sheet was laid out.").page();
    }

    private static List<Column<Group>> columns(PlaneNames names) {
        return List.of(
                Column.<Group>wrapped("Plane", 30, x -> x.plane().name())
                        .linked(x -> names.row(x.plane().id())),
                Column.text("Kind", 12, g -> g.key().trimmed() ? "trimmed" : "full width"),
                Column.metres("Width", g -> g.sheets().get(0).u().lengthMetres()),
                Column.<Group>metres("Order length", g -> g.key().millimetres() / 1000.0)
                        .wide(15),
                Column.count("Count", g -> g.sheets().size()),
                Column.<Group>metres("Total length", Group::totalLength).wide(14),
                Column.squareMetres("Net area", g -> sum(g.sheets(), Sheet::areaSquareMetres)),
                Column.count("Tapered end", g -> count(g.sheets(), Sheet::tapered)),
                Column.count("Cut by opening", g -> count(g.sheets(), Sheet::cut)),
                Column.wrapped("Strips", 44, g -> strips(g.sheets())));
    }

    /** Full sheets first, long before short. */
    private static List<Group> groups(PlaneResult plane) {
        Map<Key, List<Sheet>> byLength = new TreeMap<>(Comparator.comparing(Key::trimmed)
                .thenComparing(Comparator.comparingLong(Key::millimetres).reversed())
                .thenComparingLong(Key::width));
        byLength.putAll(plane.sheets().stream()
                .collect(Collectors.groupingBy(
                        s -> new Key(s.trimmed(), millimetres(s.orderMetres()), millimetres(s.u().lengthMetres())))));
        return byLength.entrySet().stream()
                .map(e -> new Group(plane, e.getKey(), e.getValue()))
                .toList();
    }

    private static String strips(List<Sheet> sheets) {
        return NumberRuns.of(
                sheets.stream().map(Sheet::number).distinct().sorted().toList());
    }

    private static long millimetres(double metres) {
        return Math.round(metres * 1000);
    }

    private static double sum(List<Sheet> sheets, ToDoubleFunction<Sheet> value) {
        return sheets.stream().mapToDouble(value).sum();
    }

    private static double count(List<Sheet> sheets, Predicate<Sheet> which) {
        return sheets.stream().filter(which).count();
    }

    private record Key(boolean trimmed, long millimetres, long width) {}

    private record Group(PlaneResult plane, Key key, List<Sheet> sheets) {
        double totalLength() {
            return key.millimetres() * sheets.size() / 1000.0;
        }
    }
}
