package runtrue.report.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BodyResult;
import runtrue.result.BodyResult.Uplift;
import runtrue.result.BodyResult.Zone;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** Zones with what lifts on them and what that asks of their clips, one row each, hardest loaded first within a plane. */
final class WindSheet {
    /** Up to the figures; sources are for the screen. */
    private static final int PRINTED = 13;

    private WindSheet() {}

    /** Whether anybody says what lifts on any zone, or why it is not known. */
    static boolean applies(CheckResult result) {
        return zones(result).stream().anyMatch(z -> !z.uplift().standard().isEmpty());
    }

    static Page page(CheckResult result) {
        Map<String, String> names = new HashMap<>();
        result.planes().forEach((PlaneResult p) -> names.put(p.id(), p.name()));
        List<Column<Zone>> columns = List.of(
                Column.wrapped("Plane", 30, z -> names.getOrDefault(z.plane(), z.plane())),
                Column.text("Zone", 10, Zone::name),
                Column.text("Place", 10, Zone::kind),
                Column.squareMetres("Area", Zone::areaSquareMetres),
                figure("Suction", "kPa", Look.METRES, Uplift::suctionKilopascals),
                figure("Pressing", "kPa", Look.METRES, Uplift::pressingKilopascals),
                figure("Load factor", "", Look.DECIMAL, Uplift::loadFactor),
                new Column<>("Length on one support", "m", 13, true, z -> tributary(z)),
                figure("Force on one clip", "kN", Look.METRES, Uplift::clipForceKilonewtons),
                figure("Share of its resistance", "", Look.DECIMAL, Uplift::utilisation),
                new Column<>("Clip", "", 20, false, z -> verdict(z.uplift().utilisation())),
                figure("Length that clips allow", "m", Look.METRES, Uplift::spacingAllowedMetres),
                figure("Clips that go with it", "1/m²", Look.DECIMAL, Uplift::clipsPerSquareMetre),
                Column.wrapped("By", 26, z -> z.uplift().standard()),
                Column.wrapped("Figures", 54, z -> z.uplift().how()),
                Column.wrapped(
                        "Source, and how it is known", 46, z -> z.uplift().source()));
        return new Table<>("Wind", 2, columns, PRINTED, zones(result), "No zones were formed.").page();
    }

    private static List<Zone> zones(CheckResult result) {
        return result.bodies().stream()
                .flatMap((BodyResult b) -> b.zones().stream())
                .sorted((a, b) -> a.plane().equals(b.plane())
                        ? Double.compare(suction(b), suction(a))
                        : a.plane().compareTo(b.plane()))
                .toList();
    }

    private static double suction(Zone zone) {
        return zone.uplift().suctionKilopascals().orElse(0);
    }

    private static Column<Zone> figure(String header, String unit, Look look, Function<Uplift, OptionalDouble> value) {
        return new Column<>(header, unit, 12, true, z -> Cell.of(value.apply(z.uplift()), look));
    }

    private static Cell tributary(Zone zone) {
        return zone.tributaryMetres() > 0 ? Cell.of(zone.tributaryMetres(), Look.METRES) : new Cell.Blank(Look.METRES);
    }

    /** By word and tint, so that it does not depend on colour alone. */
    private static Cell verdict(OptionalDouble utilisation) {
        if (utilisation.isEmpty()) {
            return Cell.of("not assessed", Look.NOT_ASSESSED);
        }
        return utilisation.getAsDouble() > 1
                ? Cell.of("overloaded", Look.DOES_NOT_CONFORM)
                : Cell.of("carries it", Look.CONFORMS);
    }
}
