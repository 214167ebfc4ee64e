package runtrue.wind.asce;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import runtrue.wind.Certainty;
import runtrue.wind.LoadedPressure;
import runtrue.wind.Pressure;
import runtrue.wind.WindResult;
import runtrue.wind.WindSource;
import runtrue.wind.WindZone;
import runtrue.wind.ZonePressure;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Places;
import runtrue.wind.site.AsceSite;

/**
 * Net pressures on components and cladding of low-rise roofs by ASCE 7: p = qh ((GCp) - (GCpi)) (30.3-1), at least 16 psf
 * (30.2.2), for an effective wind area.
 */
public final class AscePressures {
    /** 16 psf, 30.2.2 (from memory), Pa. */
    static final double LEAST = 16 * VelocityPressure.PASCALS_A_PSF;

    /** The figures are those of buildings up to 60 ft, metres (from memory). */
    private static final double LOW_RISE = 60 * VelocityPressure.METRES_A_FOOT;

    private final AsceSite site;
    private final WindRoof roof;
    private final AsceZones zones;
    private final VelocityPressure velocity;

    private AscePressures(AsceSite site, WindRoof roof) {
        this.site = site;
        this.roof = roof;
        this.zones = new AsceZones(roof, site.edition());
        this.velocity = VelocityPressure.at(AsceZones.height(roof), site);
    }

    /** Zones, coefficients and pressures; one set for all winds. */
    public static WindResult of(AsceSite site, WindRoof roof) {
        return new AscePressures(site, roof).result();
    }

    /**
     * Effective wind area of a sheet or member (26.2, from memory): the span times the greater of its own width and a
     * third of the span. That of a fixing is no more than its tributary area.
     *
     * @param span metres
     * @param width metres
     * @return square metres
     */
    public static double effectiveArea(double span, double width) {
        return span * Math.max(width, span / 3);
    }

    private WindResult result() {
        List<ZonePressure> pressures = new ArrayList<>();
        for (WindSlope slope : roof.slopes()) {
            for (WindZone zone : zones.zones(slope)) {
                pressures.add(new ZonePressure(zone, pressureOn(zone, slope)));
            }
        }
        Set<String> sources = new LinkedHashSet<>(List.of(
                velocity.source().sentence(),
                figures().sentence(),
                rule("30.3.2, 30.2.2, table 26.13-1").sentence()));
        Set<String> missing = new LinkedHashSet<>();
        for (ZonePressure p : pressures) {
            Pressure small = p.pressure().at(1);
            sources.add(small.source().sentence());
            if (small.suction().isEmpty() || small.pressing().isEmpty()) {
                missing.add("Plane " + p.zone().slope() + ", zone " + p.zone().name() + ": " + small.how());
            }
        }
        String steps = String.format(
                Locale.ROOT,
                "h %.2f m, a %.2f m, Kz %.3f, qh with Kd %.0f Pa, GCpi ±%.2f.",
                AsceZones.height(roof),
                zones.width(),
                velocity.exposureFactor(),
                velocity.pascals(),
                site.enclosure().internal());
        return new WindResult(
                site.standard(),
                pressures,
                Places.of(roof, pressures),
                List.of(steps),
                assumptions(),
                List.copyOf(missing),
                List.copyOf(sources),
                WindResult.cautionFor(site.standard()));
    }

    private LoadedPressure pressureOn(WindZone zone, WindSlope slope) {
        String missing = zones.missing(slope);
        if (!missing.isEmpty()) {
            return area -> Pressure.notAvailable(missing, figures());
        }
        if (AsceZones.height(roof) > LOW_RISE) {
            return area -> Pressure.notAvailable("the data at hand are for buildings up to 60 ft (18.3 m).", figures());
        }
        String form = zones.form(slope);
        double pitch = Math.max(0, slope.pitchDegrees());
        Optional<GcpTables.Gcp> suction = GcpTables.find(site.edition(), form, pitch, zone.name(), "-");
        Optional<GcpTables.Gcp> pressing = GcpTables.find(site.edition(), form, pitch, zone.name(), "+");
        if (suction.isEmpty()) {
            String why = String.format(
                    Locale.ROOT,
                    "GCp of zone %s of a %s roof at %.1f° is not among the data at hand for %s.",
                    zone.name(),
                    form,
                    pitch,
                    site.edition().label());
            return area -> Pressure.notAvailable(why, figures());
        }
        return area -> pressure(suction.get(), pressing, area);
    }

    private Pressure pressure(GcpTables.Gcp suction, Optional<GcpTables.Gcp> pressing, double area) {
        double internal = site.enclosure().internal();
        double up = Math.max(LEAST, -velocity.pascals() * (suction.at(area) - internal));
        OptionalDouble down = pressing.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Math.max(LEAST, velocity.pascals() * (pressing.get().at(area) + internal)));
        String how = String.format(
                Locale.ROOT,
                "GCp %.2f%s for %.2f m², GCpi ±%.2f, qh %.0f Pa%s.%s",
                suction.at(area),
                pressing.map(p -> String.format(Locale.ROOT, " and +%.2f", p.at(area)))
                        .orElse(""),
                area,
                internal,
                velocity.pascals(),
                up <= LEAST ? ", the least pressure of 16 psf governs" : "",
                pressing.isEmpty()
                        ? " Pressing is not available: its GCp is not among the data at hand for "
                                + site.edition().label() + "."
                        : "");
        return new Pressure(OptionalDouble.of(up), down, how, suction.source());
    }

    private WindSource figures() {
        return new WindSource(site.standard(), "figures 30.3-2", Certainty.MEMORY, "shapes of the zones");
    }

    private WindSource rule(String place) {
        return new WindSource(site.standard(), place, Certainty.MEMORY, "pressure, least pressure, GCpi");
    }

    private List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add(
                "Strips run along the real outline with one width for the whole building, corners are outward corners only.");
        if (!zones.rectangular()) {
            all.add("The plan is not rectangular: its least dimension is that of the least rectangle around it.");
        }
        if (roof.slopes().stream().anyMatch(s -> !zones.form(s).equals("low-slope"))) {
            all.add(
                    "Gable and hip roofs: every strip along an eaves, rake, ridge or hip is zone 2, which may be worse than the"
                            + " figure.");
        }
        all.add("Overhangs have curves of their own that are not included; no parapet is taken to ease the corners.");
        return all;
    }
}
