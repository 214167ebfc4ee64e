package runtrue.wind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.wind.asce.AscePressures;
import runtrue.wind.asnzs.AsNzsPressures;
import runtrue.wind.eurocode.EurocodePressures;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Partition;
import runtrue.wind.plan.Places;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.site.AsNzsSite;
import runtrue.wind.site.AsceSite;
import runtrue.wind.site.EurocodeSite;
import runtrue.wind.site.WindSite;

/** The door to this module: what presses and lifts on the zones of a roof. */
public final class WindPressures {
    private WindPressures() {}

    /** By a standard. */
    public static WindResult of(WindSite site, WindRoof roof) {
        if (site instanceof EurocodeSite eurocode) {
            return EurocodePressures.of(eurocode, roof);
        }
        if (site instanceof AsceSite asce) {
            return AscePressures.of(asce, roof);
        }
        return AsNzsPressures.of((AsNzsSite) site, roof);
    }

    /**
     * As the project's engineer gives them, whatever a standard would say. Pressures for the zones of a standard need
     * the site, for their shapes.
     *
     * @throws WindException when neither the width of the engineer's strip nor a site is there
     */
    public static WindResult given(GivenPressures given, Optional<WindSite> site, WindRoof roof) {
        if (given.stripWidth().isPresent()) {
            double width = given.stripWidth().getAsDouble();
            PlanOutline outline = PlanOutline.of(roof.outline());
            List<WindZone> zones = new ArrayList<>();
            for (WindSlope slope : roof.slopes()) {
                zones.addAll(new Partition()
                        .then("corner", outline.corners(width))
                        .then("edge", outline.rim(width))
                        .zones(slope, "", "interior"));
            }
            String how =
                    "Corner, edge and interior are drawn with the engineer's strip along every outer edge, corners at outward"
                            + " corners only.";
            return given(given, zones, roof, List.of(how), List.of());
        }
        WindSite known = site.orElseThrow(() -> new WindException("The pressures of '" + given.reference()
                + "' have no width of an edge strip, and no site tells whose zones they are for; give one of both."));
        WindResult standard = of(known, roof);
        return given(
                given,
                standard.zones().stream().map(ZonePressure::zone).toList(),
                roof,
                standard.assumptions(),
                List.of("Zones by " + standard.standard() + "."));
    }

    private static WindResult given(
            GivenPressures given, List<WindZone> zones, WindRoof roof, List<String> assumptions, List<String> steps) {
        List<ZonePressure> pressures =
                zones.stream().map(z -> new ZonePressure(z, given.of(z.name()))).toList();
        List<String> missing = pressures.stream()
                .filter(p -> p.pressure().at(1).suction().isEmpty())
                .map(p -> p.zone().name() + ": " + p.pressure().at(1).how())
                .distinct()
                .toList();
        String standard = "the project's engineer (" + given.reference() + ")";
        return new WindResult(
                standard,
                pressures,
                Places.of(roof, pressures),
                steps,
                assumptions,
                missing,
                List.of("Pressures: " + given.reference() + ", as given by the project's engineer."),
                WindResult.cautionFor(standard));
    }
}
