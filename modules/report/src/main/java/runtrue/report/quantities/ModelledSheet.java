package runtrue.report.quantities;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Modelled;
import runtrue.result.CheckResult;

/** What the models count by themselves beside what was derived: one row a kind and plane. */
final class ModelledSheet {
    /** Up to the remarks; GlobalIds are for the screen. */
    private static final int PRINTED = 9;

    private static final int NAMED = 5;

    private ModelledSheet() {}

    static Page page(CheckResult result) {
        PlaneNames names = new PlaneNames(result);
        Map<String, String> items = new LinkedHashMap<>();
        result.bill().lines().forEach(l -> items.putIfAbsent(l.item(), l.description()));
        return new Table<>(
                        "Modelled counts",
                        2,
                        columns(names, items),
                        PRINTED,
                        result.bill().modelled(),
                        "The models contain no fasteners, accessories or single sheets.")
                .page();
    }

    private static List<Column<Modelled>> columns(PlaneNames names, Map<String, String> items) {
        return List.of(
                Column.wrapped("Modelled as", 28, m -> m.kind() + "\n" + m.ifcClass()),
                Column.wrapped("Plane", 28, m -> m.plane().isEmpty() ? "no roof plane" : names.of(m.plane())),
                Column.count("Modelled", Modelled::count),
                Column.count("Elements", Modelled::occurrences),
                Column.wrapped("How each was counted", 24, Modelled::how),
                new Column<>("Derived", "", 11, true, m -> Cell.of(m.derived(), Look.COUNT)),
                new Column<>("Modelled less derived", "", 12, true, m -> Cell.of(difference(m), Look.COUNT)),
                Column.wrapped(
                        "Compared with",
                        32,
                        m -> m.items().stream()
                                .map(i -> items.getOrDefault(i, i))
                                .collect(Collectors.joining("\n"))),
                Column.wrapped("Remark", 34, Modelled::remark),
                Column.text("GlobalIds", 30, ModelledSheet::ids));
    }

    private static OptionalDouble difference(Modelled modelled) {
        return modelled.derived().isPresent()
                ? OptionalDouble.of(modelled.count() - modelled.derived().getAsDouble())
                : OptionalDouble.empty();
    }

    private static String ids(Modelled modelled) {
        List<String> ids = modelled.globalIds();
        String some = String.join(", ", ids.stream().limit(NAMED).toList());
        return ids.size() > NAMED ? some + " and " + (ids.size() - NAMED) + " more" : some;
    }
}
