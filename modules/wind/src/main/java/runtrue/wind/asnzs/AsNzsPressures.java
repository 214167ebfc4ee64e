package runtrue.wind.asnzs;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.Certainty;
import runtrue.wind.Pressure;
import runtrue.wind.WindResult;
import runtrue.wind.WindSource;
import runtrue.wind.WindZone;
import runtrue.wind.ZonePressure;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Partition;
import runtrue.wind.plan.Places;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.plan.Regions;
import runtrue.wind.plan.SlopeEdges;
import runtrue.wind.site.AsNzsSite;

/**
 * Suction on cladding in the local pressure zones of AS/NZS 1170.2: p = 0.5 rho V^2 (Cp,e Ka Kc Kp Kl - Cp,i Kc,i), rho 1.2
 * kg/m3 (2.4, 5.2). One local factor at a time, the greatest that holds for the loaded area; every outer edge is upwind
 * for some wind, and either side of a ridge is downwind for some.
 */
public final class AsNzsPressures {
    private static final double DENSITY = 1.2;

    /** Zone of no local factor. */
    private static final String GENERAL = "general";

    private final AsNzsSite site;
    private final WindRoof roof;
    private final PlanOutline outline;
    private final double a;
    private final List<LocalFactor> factors = LocalFactor.all();

    private AsNzsPressures(AsNzsSite site, WindRoof roof) {
        this.site = site;
        this.roof = roof;
        this.outline = PlanOutline.of(roof.outline());
        double[] sides = outline.sides();
        this.a = edgeDimension(site.edition(), sides[0], sides[1], roof.meanHeight());
    }

    /** Zones, and suction where the coefficient of the whole surface is given; one set for all winds. */
    public static WindResult of(AsNzsSite site, WindRoof roof) {
        return new AsNzsPressures(site, roof).result();
    }

    /**
     * The width a of 5.4.4, metres. 2011: the least of 0.2 b, 0.2 d and h. 2021: the lesser of 0.2 b and 0.2 d when h/b or
     * h/d is 0.2 or more, else 2 h.
     *
     * @param breadth b in plan, metres
     * @param depth d in plan, metres
     * @param height h, metres
     */
    public static double edgeDimension(AsNzsSite.Edition edition, double breadth, double depth, double height) {
        double fifth = 0.2 * Math.min(breadth, depth);
        if (edition == AsNzsSite.Edition.AS_NZS_2011) {
            return Math.min(fifth, height);
        }
        return height / breadth >= 0.2 || height / depth >= 0.2 ? fifth : 2 * height;
    }

    private WindResult result() {
        List<ZonePressure> pressures = new ArrayList<>();
        for (WindSlope slope : roof.slopes()) {
            for (WindZone zone : zones(slope)) {
                pressures.add(new ZonePressure(zone, area -> pressure(zone.name(), slope, area)));
            }
        }
        List<String> missing = new ArrayList<>(
                List.of("Pressing on to the roof: no coefficients are at hand for " + site.standard() + "."));
        if (site.external().isEmpty()) {
            missing.add("Suction: the coefficients of whole roof surfaces of " + site.standard()
                    + " are not at hand; give Cp,e Ka Kc Kp of the project.");
        }
        Set<String> sources = new LinkedHashSet<>(
                List.of(widthSource().sentence(), factorSource().sentence()));
        return new WindResult(
                site.standard(),
                pressures,
                Places.of(roof, pressures),
                List.of(String.format(
                        Locale.ROOT, "h %.2f m, a %.2f m, 0.5 rho V² %.0f Pa.", roof.meanHeight(), a, dynamic())),
                assumptions(),
                missing,
                List.copyOf(sources),
                WindResult.cautionFor(site.standard()));
    }

    private List<WindZone> zones(WindSlope slope) {
        Partition partition = new Partition();
        for (LocalFactor factor : factors) {
            if (factor.suits(slope.pitchDegrees())) {
                partition.then(factor.zone(), region(factor, slope));
            }
        }
        return partition.zones(slope, "", GENERAL);
    }

    private Geometry region(LocalFactor factor, WindSlope slope) {
        double reach = factor.reachShare() * a;
        return switch (factor.place()) {
            case "corner" -> outline.corners(reach);
            case "ridge" ->
                Regions.union(new SlopeEdges(outline)
                        .highEdges(roof, slope).stream()
                                .map(e -> e.strip(reach))
                                .toList());
            default -> outline.rim(reach);
        };
    }

    /** The greatest factor that holds at a place within a zone for an area: larger areas fall back to the zone around it. */
    private double localFactor(String zone, WindSlope slope, double area) {
        return factors.stream()
                .filter(f -> f.zone().equals(zone) || holdsWithin(f, zone))
                .filter(f -> f.suits(slope.pitchDegrees()) && f.suits(area, a))
                .mapToDouble(LocalFactor::factor)
                .max()
                .orElse(1);
    }

    /** Zones that lie within another: a corner within the edge, the inner half of a strip within the whole. */
    private static boolean holdsWithin(LocalFactor factor, String zone) {
        return switch (zone) {
            case "RC1", "RA2" -> factor.zone().equals("RA1");
            case "RA4" -> factor.zone().equals("RA3");
            default -> false;
        };
    }

    private Pressure pressure(String zone, WindSlope slope, double area) {
        double kl = localFactor(zone, slope, area);
        if (site.external().isEmpty()) {
            String why = String.format(Locale.ROOT, "Kl %.1f for %.2f m², but no Cp,e Ka Kc Kp is given.", kl, area);
            return Pressure.notAvailable(why, factorSource());
        }
        double external = site.external().getAsDouble() * kl;
        double suction = Math.max(0, -dynamic() * (external - site.internalHigh()));
        String how = String.format(
                Locale.ROOT,
                "Cp,e Ka Kc Kp %.2f times Kl %.1f for %.2f m², Cp,i Kc,i %.2f, 0.5 rho V² %.0f Pa.",
                site.external().getAsDouble(),
                kl,
                area,
                site.internalHigh(),
                dynamic());
        return new Pressure(OptionalDouble.of(suction), OptionalDouble.empty(), how, factorSource());
    }

    private double dynamic() {
        return DENSITY * site.velocity() * site.velocity() / 2;
    }

    private WindSource widthSource() {
        return site.edition() == AsNzsSite.Edition.AS_NZS_2021
                ? new WindSource(site.standard(), "5.4.4", Certainty.SEEN, "width a, as engineers quote it in public")
                : new WindSource(site.standard(), "5.4.4", Certainty.MEMORY, "width a");
    }

    private WindSource factorSource() {
        return new WindSource(
                site.standard(), "table 5.6", Certainty.MEMORY, "local pressure factors; 2.4 and 5.2 for the pressure");
    }

    private List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add(
                "Every outer edge is upwind for some wind, and either side of ridges and hips downwind for some; corners are outward"
                        + " corners only.");
        all.add("One local factor at a time, for cladding, its fixings and what carries them directly.");
        all.add("b and d are the sides of the least rectangle around the plan, h is the mean roof height.");
        return all;
    }
}
