package runtrue.wind.eurocode;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.wind.Certainty;
import runtrue.wind.LoadedPressure;
import runtrue.wind.Pressure;
import runtrue.wind.WindResult;
import runtrue.wind.WindSource;
import runtrue.wind.WindZone;
import runtrue.wind.ZonePressure;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Places;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.site.EurocodeSite;

/**
 * Net pressures on the zones of a roof by EN 1991-1-4:2005+A1:2010: w = qp(ze) (cpe - cpi), 5.2. The reference height ze
 * is the ridge, for flat roofs the eaves with the parapet; e is counted from the height without the parapet.
 */
public final class EurocodePressures {
    private static final WindSource ZONES = new WindSource(
            "EN 1991-1-4:2005+A1:2010",
            "figures 7.6 to 7.9",
            Certainty.MEMORY,
            "shapes of the zones; e as read in an example");

    private final EurocodeSite site;
    private final WindRoof roof;
    private final PlanOutline outline;
    private final PeakPressure peak;
    private final double highest;
    private final double lowest;

    private EurocodePressures(EurocodeSite site, WindRoof roof) {
        this.site = site;
        this.roof = roof;
        this.outline = PlanOutline.of(roof.outline());
        this.peak = PeakPressure.at(referenceHeight(roof), site);
        List<Double> internal = site.internal().isEmpty()
                ? List.of(
                        site.national().value("internal_high"), site.national().value("internal_low"))
                : site.internal();
        this.highest = internal.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        this.lowest = internal.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    /** Zones, coefficients and pressures for the four winds. */
    public static WindResult of(EurocodeSite site, WindRoof roof) {
        return new EurocodePressures(site, roof).result();
    }

    /** ze, metres above ground. */
    public static double referenceHeight(WindRoof roof) {
        boolean parapet = roof.eaves().kind() == EavesDetail.Kind.PARAPET;
        return height(roof)
                + (roof.form() == RoofForm.FLAT && parapet ? roof.eaves().size() : 0);
    }

    private static double height(WindRoof roof) {
        return roof.form() == RoofForm.FLAT ? roof.eavesHeight() : roof.ridgeHeight();
    }

    private WindResult result() {
        List<ZonePressure> pressures = new ArrayList<>();
        List<String> steps = new ArrayList<>(List.of(peak.sentence(), internalSentence()));
        boolean rectangular = true;
        for (WindDirection direction : WindDirection.values()) {
            EurocodeZones zones = new EurocodeZones(roof, outline, direction, height(roof));
            rectangular &= zones.rectangular();
            steps.add(String.format(
                    Locale.ROOT,
                    "%s, from %.0f° clockwise of the y axis: b %.2f m, d %.2f m, e %.2f m.",
                    capital(direction.label()),
                    zones.bearing(),
                    zones.across(),
                    zones.along(),
                    zones.reach()));
            for (WindZone zone : zones.zones()) {
                pressures.add(new ZonePressure(zone, pressureOn(zone, zones)));
            }
        }
        Set<String> sources = new LinkedHashSet<>();
        PeakPressure.sources(site).forEach(s -> sources.add(s.sentence()));
        if (site.internal().isEmpty()) {
            sources.add(site.national().source("internal_high").sentence());
            sources.add(site.national().source("internal_low").sentence());
        }
        sources.add(ZONES.sentence());
        Set<String> missing = new TreeSet<>();
        for (ZonePressure p : pressures) {
            Pressure small = p.pressure().at(1);
            sources.add(small.source().sentence());
            if (small.suction().isEmpty()) {
                missing.add("Plane " + p.zone().slope() + ", zone " + p.zone().label() + ": " + small.how());
            }
        }
        return new WindResult(
                site.standard(),
                pressures,
                Places.of(roof, pressures),
                steps,
                assumptions(rectangular),
                List.copyOf(missing),
                List.copyOf(sources),
                WindResult.cautionFor(site.standard()));
    }

    private LoadedPressure pressureOn(WindZone zone, EurocodeZones zones) {
        WindSlope slope = roof.slopes().stream()
                .filter(s -> s.id().equals(zone.slope()))
                .findFirst()
                .orElseThrow();
        SlopeRole role = zones.role(slope);
        Table table = table(role);
        Set<Double> at = new LinkedHashSet<>(List.of(at(table, slope)));
        if (table.form().equals("hipped")) {
            zones.windward().forEach(w -> at.add(w.pitchDegrees()));
        }
        Optional<Cpe> found = Optional.empty();
        for (double one : at) {
            Optional<Cpe> cpe = site.coefficients().find(table.form(), table.wind(), table.kind(), one, zone.name());
            if (cpe.isEmpty()) {
                String why = String.format(
                        Locale.ROOT,
                        "the table for a %s has no value for zone %s at %.2f (pitch in degrees, or the ratio or angle of the eaves).",
                        table.words(),
                        zone.name(),
                        one);
                return area -> Pressure.notAvailable(why, ZONES);
            }
            found = Optional.of(found.isEmpty() ? cpe.get() : found.get().with(cpe.get()));
        }
        Cpe cpe = found.orElseThrow();
        WindSource source = site.coefficients().source(table.form(), table.wind(), table.kind(), cpe);
        return area -> pressure(cpe, area, source);
    }

    private Pressure pressure(Cpe cpe, double area, WindSource source) {
        double low = cpe.low(area);
        double high = cpe.high(area);
        String how = String.format(
                Locale.ROOT,
                "cpe %.2f to %.2f for %.2f m², cpi %.2f to %.2f, qp %.0f Pa.",
                low,
                high,
                area,
                lowest,
                highest,
                peak.peak());
        return Pressure.between(peak.peak() * (low - highest), peak.peak() * (high - lowest), how, source);
    }

    /** A table of coefficients by the names of the data file. */
    private record Table(String form, String wind, String kind) {
        String words() {
            return form + " roof" + (kind.isEmpty() ? "" : " with " + kind + " eaves") + ", wind " + wind;
        }
    }

    private Table table(SlopeRole role) {
        if (role == SlopeRole.FLAT) {
            return new Table("flat", "any", flatEaves().kind().label());
        }
        String turned = role == SlopeRole.SIDE ? "90" : "0";
        return switch (roof.form()) {
            case MONO_PITCH -> new Table("mono-pitch", role == SlopeRole.LEEWARD ? "180" : turned, "");
            case HIPPED -> new Table("hipped", "any", "");
            default -> new Table("duo-pitch", turned, "");
        };
    }

    private double at(Table table, WindSlope slope) {
        if (!table.form().equals("flat")) {
            return roof.form() == RoofForm.TROUGHED ? -slope.pitchDegrees() : slope.pitchDegrees();
        }
        EavesDetail eaves = flatEaves();
        double value = eaves.kind() == EavesDetail.Kind.MANSARD
                ? Math.toDegrees(eaves.size())
                : eaves.size() / roof.eavesHeight();
        // Higher parapets and larger curbs than the table's do not ease the wind further.
        double greatest = site.coefficients()
                .reach(table.form(), table.wind(), table.kind())
                .map(r -> r[1])
                .orElse(value);
        return eaves.kind() == EavesDetail.Kind.MANSARD ? value : Math.min(value, greatest);
    }

    /** Parapets and curbs smaller than the table begins with ease nothing: the edge counts as sharp. */
    private EavesDetail flatEaves() {
        EavesDetail eaves = roof.eaves();
        if (eaves.kind() == EavesDetail.Kind.SHARP || eaves.kind() == EavesDetail.Kind.MANSARD) {
            return eaves.kind() == EavesDetail.Kind.SHARP ? EavesDetail.sharp() : eaves;
        }
        double least = site.coefficients()
                .reach("flat", "any", eaves.kind().label())
                .map(r -> r[0])
                .orElse(Double.POSITIVE_INFINITY);
        return eaves.size() / roof.eavesHeight() < least - 1e-9 ? EavesDetail.sharp() : eaves;
    }

    private List<String> assumptions(boolean rectangular) {
        List<String> all = new ArrayList<>();
        if (!rectangular) {
            all.add(
                    "The plan is not rectangular, and EN 1991-1-4 has figures for rectangles only: b and d are those of the"
                            + " rectangle around it, strips run along the real edges that face the wind, corners are outward"
                            + " corners only, and the worse zone has the place. This is a choice of the program, no published rule.");
        }
        if (roof.outline().getNumInteriorRing() > 0) {
            all.add("Openings and courtyards within the outline count as no edges.");
        }
        if (roof.form() == RoofForm.HIPPED) {
            all.add(
                    "Hipped roof: the shapes of the zones K, L, M and N are from memory and little sure; check them in a licensed"
                            + " copy.");
            all.add(
                    "Hipped roof: the coefficients are the worse of those at the pitch of the plane itself and at that of the"
                            + " windward plane.");
        }
        all.add("Overhangs: the pressure on their underside is not included.");
        all.add(
                "Internal pressure acts on the sheets, at the same reference height: true of a single skin, and on the safe side where a sealed skin lies below.");
        all.add(
                "Both sets of coefficients are covered place by place: the suction is that of the lower, the pressing that of the"
                        + " higher.");
        return all;
    }

    private String internalSentence() {
        String given = site.internal().isEmpty() ? " (openings not known: the worse of both)" : "";
        return String.format(Locale.ROOT, "Internal coefficient %.2f to %.2f%s.", lowest, highest, given);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
