package runtrue.result.build;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import runtrue.result.BodyResult;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofPlane;
import runtrue.roof.Zone;
import runtrue.rules.wind.BodyWind;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.ZoneUplift;
import runtrue.wind.ClipDemand;

/** One roof body with its zones and what the wind does there. */
record BodyMapping(World world, Map<String, RoofPlane> planes, List<BodyZones> zones) {
    BodyResult map(RoofBody body) {
        List<BodyZones> own =
                zones.stream().filter(z -> z.body().equals(body.id())).toList();
        return new BodyResult(
                body.id(),
                body.planes(),
                Rounded.of(body.width()),
                Rounded.of(body.length()),
                Rounded.of(body.eaveLevel()),
                Rounded.of(body.ridgeLevel()),
                own.stream().flatMap(z -> z.zones().stream()).map(this::zone).toList(),
                own.stream()
                        .flatMap(z -> z.winds().stream())
                        .map(BodyMapping::wind)
                        .toList());
    }

    private BodyResult.Zone zone(PlaneZone placed) {
        Zone zone = placed.zone();
        RoofPlane plane = planes.get(zone.plane());
        return new BodyResult.Zone(
                zone.plane(),
                zone.kind().label(),
                placed.name(),
                Rounded.of(zone.width()),
                Rounded.of(zone.area()),
                Rounded.of(zone.tributary()),
                uplift(placed.uplift()),
                plane == null ? List.of() : world.regions(plane, zone.region()));
    }

    private static BodyResult.Uplift uplift(ZoneUplift uplift) {
        return new BodyResult.Uplift(
                thousands(uplift.suction()),
                thousands(uplift.pressing()),
                Rounded.of(uplift.loadFactor()),
                of(uplift, c -> c.force() / 1000),
                of(uplift, ClipDemand::utilisation),
                of(uplift, ClipDemand::tributary),
                of(uplift, ClipDemand::density),
                uplift.given(),
                uplift.standard(),
                uplift.source(),
                uplift.how());
    }

    private static OptionalDouble thousands(OptionalDouble pascals) {
        return pascals.isPresent() ? OptionalDouble.of(Rounded.of(pascals.getAsDouble() / 1000)) : pascals;
    }

    private static OptionalDouble of(ZoneUplift uplift, ToDoubleFunction<ClipDemand> value) {
        return uplift.clip()
                .map(c -> OptionalDouble.of(Rounded.of(value.applyAsDouble(c))))
                .orElse(OptionalDouble.empty());
    }

    private static BodyResult.Wind wind(BodyWind wind) {
        return new BodyResult.Wind(
                wind.standard(),
                wind.form(),
                wind.steps(),
                wind.assumptions(),
                wind.notAvailable(),
                wind.sources(),
                wind.caution());
    }
}
