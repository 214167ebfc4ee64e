package runtrue.report.quantities;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Span;

/** One row a span or overhang over a part of a plane's width. */
final class SpansSheet {
    private SpansSheet() {}

    static Page page(CheckResult result) {
        List<Placed> spans =
                result.planes().stream().flatMap(p -> placed(p).stream()).toList();
        return new Table<>(
                        "Spans",
                        2,
                        columns(new PlaneNames(result)),
                        spans,
                        "No span was measured: no support was found.")
                .page();
    }

    private static List<Placed> placed(PlaneResult plane) {
        Map<String, String> numbers = new HashMap<>();
        plane.supports().forEach(l -> numbers.put(l.id(), "line " + l.number()));
        return plane.spans().stream()
                .map(s -> new Placed(
                        plane,
                        s,
                        s.lower().isEmpty() ? "eave" : numbers.getOrDefault(s.lower(), s.lower()),
                        s.upper().isEmpty() ? "high edge" : numbers.getOrDefault(s.upper(), s.upper())))
                .toList();
    }

    private static List<Column<Placed>> columns(PlaneNames names) {
        return List.of(
                Column.<Placed>wrapped("Plane", 30, x -> x.plane().name())
                        .linked(x -> names.row(x.plane().id())),
                Column.text("Kind", 18, p -> p.span().kind()),
                Column.text("From", 14, Placed::lower),
                Column.text("To", 14, Placed::upper),
                millimetres("Greatest", p -> p.lengthMetres()),
                millimetres("Least", p -> p.leastMetres()),
                Column.<Placed>metres("Over width", p -> p.span().u().lengthMetres()),
                Column.<Placed>metres("Across the fall, from", p -> p.span().u().fromMetres())
                        .wide(15),
                Column.<Placed>metres("Across the fall, to", p -> p.span().u().toMetres())
                        .wide(15),
                Column.<Placed>metres("Up the fall, from", p -> p.span().v().fromMetres())
                        .wide(15),
                Column.<Placed>metres("Up the fall, to", p -> p.span().v().toMetres())
                        .wide(15));
    }

    private static Column<Placed> millimetres(String header, ToDoubleFunction<Span> metres) {
        return Column.millimetres(header, p -> OptionalDouble.of(metres.applyAsDouble(p.span())));
    }

    private record Placed(PlaneResult plane, Span span, String lower, String upper) {}
}
