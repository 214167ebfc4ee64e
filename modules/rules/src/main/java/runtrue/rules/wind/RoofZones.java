package runtrue.rules.wind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.Zone;
import runtrue.rules.RoofSystem;
import runtrue.wind.LoadedPressure;
import runtrue.wind.WindPlace;
import runtrue.wind.WindZone;
import runtrue.wind.ZonePressure;

/**
 * Zones of roof bodies with what lifts on them. Pressures that the project's engineer gives come before all; then those of
 * the standard that the settings name; without either there are zones by place and nothing lifts on them that is known.
 */
public final class RoofZones {
    private final WindSetting wind;
    private final BiFunction<RoofBody, Double, List<Zone>> byPlace;
    private final Uplifts uplifts;
    private final StandardZones standard;

    /**
     * Prepares.
     *
     * @param byPlace zones along the outline of a body for a width in plan, metres
     */
    public RoofZones(Roof roof, RoofSystem system, WindSetting wind, BiFunction<RoofBody, Double, List<Zone>> byPlace) {
        this.wind = wind;
        this.byPlace = byPlace;
        this.uplifts = new Uplifts(system, wind);
        this.standard = new StandardZones(roof, wind, uplifts);
    }

    /** The width that a rule set declares, metres, or why it is not known. */
    public record Width(OptionalDouble metres, String lacking) {}

    /** Zones of one body; the declared width is asked for where neither engineer nor standard has one. */
    public BodyZones of(RoofBody body, Supplier<Width> declared) {
        if (!wind.byPlace()) {
            return standard.of(body);
        }
        OptionalDouble strip = wind.given().map(g -> g.stripWidth()).orElse(OptionalDouble.empty());
        Width width = strip.isPresent() ? new Width(strip, "") : declared.get();
        if (width.metres().isEmpty()) {
            return lacking(body, width.lacking());
        }
        List<PlaneZone> zones = new ArrayList<>();
        for (Zone zone : byPlace.apply(body, width.metres().getAsDouble())) {
            zones.add(new PlaneZone(zone, zone.kind().label(), given(zone)));
        }
        return new BodyZones(body.id(), zones, Map.of(), List.of());
    }

    static BodyZones lacking(RoofBody body, String why) {
        Map<String, String> lacking = new LinkedHashMap<>();
        body.planes().forEach(plane -> lacking.put(plane, why));
        return new BodyZones(body.id(), List.of(), lacking, List.of());
    }

    private ZoneUplift given(Zone zone) {
        String kind = zone.kind().label();
        if (wind.given().isEmpty()) {
            return ZoneUplift.unknown(
                    "neither uplift." + kind + " nor wind.standard is stated; add one to runtrue.yaml");
        }
        LoadedPressure pressure = wind.given().get().of(kind);
        WindZone place = new WindZone(zone.plane(), "", kind, zone.region(), zone.area());
        return uplifts.of(
                zone,
                List.of(new WindPlace(
                        zone.plane(), zone.region(), zone.area(), List.of(new ZonePressure(place, pressure)))),
                "the project's engineer");
    }
}
