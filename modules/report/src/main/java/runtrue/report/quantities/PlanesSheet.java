package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Units;
import runtrue.report.drawing.plan.ArcPitch;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Curve;
import runtrue.result.PlaneResult.Span;
import runtrue.result.StatedValue;

/** One row a plane. */
final class PlanesSheet {
    private static final int NAMED = 5;

    static final String NAME = "Planes";

    private PlanesSheet() {}

    /**
     * The sheet.
     *
     * @param plan where a plane's name leads, by its id
     * @param parts where its number of bill lines leads
     * @param findings where its number of findings leads
     */
    static Page page(CheckResult result, Map<String, Link> plan, Map<String, Link> parts, Map<String, Link> findings) {
        return new Table<>(NAME, 1, columns(result, plan, parts, findings), result.planes(), "No roof plane was found.")
                .page();
    }

    private static List<Column<PlaneResult>> columns(
            CheckResult result, Map<String, Link> plan, Map<String, Link> parts, Map<String, Link> findings) {
        List<Column<PlaneResult>> columns = new ArrayList<>(flat(result, plan));
        if (result.planes().stream().anyMatch(p -> p.curve().isPresent())) {
            int afterPitch = 6;
            columns.addAll(
                    afterPitch,
                    List.of(
                            Column.<PlaneResult>degrees(
                                            "Least pitch of a curve", p -> curve(p, Curve::leastPitchDegrees))
                                    .wide(13),
                            Column.wrapped(
                                    "Pitch along a curve", 24, p -> p.curve().isPresent() ? ArcPitch.of(p) : ""),
                            new Column<>(
                                    "Radius of a curve",
                                    "m",
                                    13,
                                    true,
                                    p -> Cell.of(
                                            p.curve().map(Curve::radiusMetres).orElse(OptionalDouble.empty()),
                                            Look.METRES))));
        }
        Map<String, Long> failed = result.findings(Outcome.DOES_NOT_CONFORM).stream()
                .collect(Collectors.groupingBy(Finding::plane, Collectors.counting()));
        Map<String, Long> lines = result.bill().lines().stream()
                .flatMap(l -> l.parts().stream().map(BillResult.Part::plane).distinct())
                .collect(Collectors.groupingBy(p -> p, Collectors.counting()));
        columns.add(Column.<PlaneResult>count("✗ Does not conform", p -> failed.getOrDefault(p.id(), 0L))
                .linked(p -> Optional.ofNullable(findings.get(p.id()))));
        columns.add(Column.<PlaneResult>count("Bill lines", p -> lines.getOrDefault(p.id(), 0L))
                .linked(p -> Optional.ofNullable(parts.get(p.id()))));
        return columns;
    }

    private static OptionalDouble curve(PlaneResult plane, ToDoubleFunction<Curve> figure) {
        return plane.curve()
                .map(c -> OptionalDouble.of(figure.applyAsDouble(c)))
                .orElse(OptionalDouble.empty());
    }

    private static List<Column<PlaneResult>> flat(CheckResult result, Map<String, Link> plan) {
        return List.of(
                Column.<PlaneResult>wrapped("Plane", 28, PlaneResult::name)
                        .linked(p -> Optional.ofNullable(plan.get(p.id()))),
                Column.text("Id", 13, PlaneResult::id),
                Column.wrapped("Building", 13, PlaneResult::building),
                Column.wrapped("Storey", 13, PlaneResult::storey),
                Column.wrapped("Grid", 25, PlaneResult::gridPlace),
                Column.degrees(
                        result.planes().stream().anyMatch(p -> p.curve().isPresent())
                                ? "Pitch, steepest of a curve"
                                : "Pitch",
                        p -> OptionalDouble.of(p.pitchDegrees())),
                Column.<PlaneResult>degrees("Fall towards, from model +Y", PlaneResult::azimuthDegrees)
                        .wide(14),
                Column.<PlaneResult>degrees("Fall towards, from true north", PlaneResult::azimuthTrueNorthDegrees)
                        .wide(14),
                Column.squareMetres("Area", PlaneResult::areaSquareMetres),
                Column.<PlaneResult>squareMetres("Area with openings", PlaneResult::grossAreaSquareMetres)
                        .wide(15),
                Column.squareMetres("Plan area", PlaneResult::planAreaSquareMetres),
                Column.metres("Lowest level", PlaneResult::eaveLevelMetres),
                Column.metres("Highest level", PlaneResult::ridgeLevelMetres),
                Column.metres("Longest run", PlaneResult::longestRunMetres),
                Column.millimetres("Thickness", PlaneResult::thicknessMetres),
                Column.count("Sheets", p -> p.sheets().size()),
                Column.count("Support lines", p -> p.supports().size()),
                length("Longest end span", "end span"),
                length("Longest internal span", "internal span"),
                length("Longest eave overhang", "eave overhang"),
                length("Longest ridge overhang", "ridge overhang"),
                Column.count("Openings", p -> p.penetrations().size()),
                Column.wrapped("Elements", 30, p -> elements(p)),
                Column.wrapped("Stated by the models", 44, p -> stated(result, p)),
                Column.wrapped("Remarks", 44, p -> String.join("\n", p.remarks())));
    }

    private static Column<PlaneResult> length(String header, String kind) {
        return Column.<PlaneResult>millimetres(header, p -> longest(p, kind)).wide(13);
    }

    /** Some by name: a plane may be made of hundreds. */
    private static String elements(PlaneResult plane) {
        int count = plane.elements().size();
        List<ElementRef> some = plane.elements().subList(0, Math.min(count, NAMED));
        String names = Columns.lines(some, e -> e.name().isEmpty() ? e.globalId() : e.name());
        return count > NAMED ? names + "\nand " + (count - NAMED) + " more" : names;
    }

    /** Some of what its elements state: sheet Stated values of the other workbook has all of it. */
    private static String stated(CheckResult result, PlaneResult plane) {
        List<String> lines = result.stated().stream()
                .filter(v -> v.role().equals("roof") && v.planes().contains(plane.id()))
                .map(PlanesSheet::stated)
                .toList();
        String some = String.join("\n", lines.subList(0, Math.min(lines.size(), NAMED)));
        return lines.size() > NAMED ? some + "\nand " + (lines.size() - NAMED) + " more" : some;
    }

    private static String stated(StatedValue value) {
        String sign = switch (value.verdict()) {
            case "contradicts" -> "✗";
            case "agrees" -> "✓";
            default -> "?";
        };
        return String.format(
                Locale.ROOT,
                "%s %s %.2f %s (%s)",
                sign,
                value.quantity(),
                value.stated().value(),
                Units.symbol(value.stated().unit()),
                value.source());
    }

    private static OptionalDouble longest(PlaneResult plane, String kind) {
        return plane.spans().stream()
                .filter(s -> s.kind().equals(kind))
                .mapToDouble(Span::lengthMetres)
                .max();
    }
}
