package runtrue.rules.wind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofPlane;
import runtrue.roof.Roofs;
import runtrue.roof.ZoneKind;
import runtrue.wind.GivenPressures;
import runtrue.wind.GoverningZone;
import runtrue.wind.WindException;
import runtrue.wind.WindPressures;
import runtrue.wind.WindResult;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.RoofForms;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.site.WindSite;

/** Zones as a standard draws them: a body becomes one roof for each part that stands apart in plan. */
final class StandardZones {
    private final Roof roof;
    private final WindSetting wind;
    private final Uplifts uplifts;

    StandardZones(Roof roof, WindSetting wind, Uplifts uplifts) {
        this.roof = roof;
        this.wind = wind;
        this.uplifts = uplifts;
    }

    BodyZones of(RoofBody body) {
        if (wind.site().isEmpty()) {
            return RoofZones.lacking(body, "zones and pressures are not known: " + wind.noSite());
        }
        if (wind.buildingHeight().isEmpty()) {
            return RoofZones.lacking(
                    body, "zones and pressures are not known: building_height is not stated; add it to runtrue.yaml");
        }
        List<PlaneZone> zones = new ArrayList<>();
        Map<String, String> lacking = new LinkedHashMap<>();
        List<BodyWind> winds = new ArrayList<>();
        parts(body).forEach((outline, layouts) -> {
            try {
                BodyZones part = part(body, outline, layouts, wind.site().get());
                zones.addAll(part.zones());
                lacking.putAll(part.lacking());
                winds.addAll(part.winds());
            } catch (WindException e) {
                layouts.forEach(l -> lacking.put(l.plane().id(), String.valueOf(e.getMessage())));
            }
        });
        return new BodyZones(body.id(), zones, lacking, winds);
    }

    /** Every plane goes to the part that it lies in most. */
    private Map<Polygon, List<PlaneLayout>> parts(RoofBody body) {
        Map<Polygon, List<PlaneLayout>> parts = new LinkedHashMap<>();
        for (Object polygon : PolygonExtracter.getPolygons(body.plan())) {
            parts.put((Polygon) polygon, new ArrayList<>());
        }
        for (PlaneLayout layout : roof.planes()) {
            if (body.planes().contains(layout.plane().id())) {
                Geometry plan = PlanViews.plan(layout.plane());
                parts.entrySet().stream()
                        .max((a, b) -> Double.compare(shared(a.getKey(), plan), shared(b.getKey(), plan)))
                        .ifPresent(p -> p.getValue().add(layout));
            }
        }
        parts.values().removeIf(List::isEmpty);
        return parts;
    }

    private static double shared(Polygon part, Geometry plan) {
        return PlanViews.shared(part, plan).getArea();
    }

    private BodyZones part(RoofBody body, Polygon outline, List<PlaneLayout> layouts, WindSite site) {
        Map<String, String> lacking = new LinkedHashMap<>();
        List<PlaneLayout> flat = new ArrayList<>();
        for (PlaneLayout layout : layouts) {
            if (layout.plane().curve().isPresent()) {
                lacking.put(
                        layout.plane().id(),
                        "the plane is curved, and the zones of " + site.standard()
                                + " at hand are those of flat planes");
            } else {
                flat.add(layout);
            }
        }
        List<WindSlope> slopes =
                flat.stream().map(l -> PlanViews.slope(l.plane())).toList();
        Optional<RoofForm> form = form(outline, slopes, flat.size() < layouts.size());
        if (form.isEmpty()) {
            flat.forEach(l -> lacking.put(l.plane().id(), formless(site)));
            return new BodyZones(body.id(), List.of(), lacking, List.of());
        }
        WindRoof windRoof = windRoof(body, outline, form.get(), slopes, flat);
        WindResult result = wind.given()
                .map(g -> WindPressures.given(zonesOnly(g), Optional.of(site), windRoof))
                .orElseGet(() -> WindPressures.of(site, windRoof));
        return new BodyZones(body.id(), zones(body, flat, result), lacking, List.of(bodyWind(result, windRoof)));
    }

    private static String formless(WindSite site) {
        return "the form of its roof is none that " + site.standard()
                + " has zones for, or cannot be told from the planes; state wind.form, or the engineer's pressures";
    }

    /** Planes beside a curved one do not show what the whole is. */
    private Optional<RoofForm> form(Polygon outline, List<WindSlope> slopes, boolean curved) {
        Optional<RoofForm> found = curved || slopes.isEmpty() ? Optional.empty() : RoofForms.of(outline, slopes);
        return found.or(() -> slopes.isEmpty()
                ? Optional.empty()
                : wind.form()
                        .map(f -> RoofForm.valueOf(f.toUpperCase(Locale.ROOT).replace('-', '_'))));
    }

    /** The width of a strip is for zones by place; those of a standard have their own. */
    private static GivenPressures zonesOnly(GivenPressures given) {
        return new GivenPressures(given.reference(), OptionalDouble.empty(), given.zones());
    }

    private WindRoof windRoof(
            RoofBody body, Polygon outline, RoofForm form, List<WindSlope> slopes, List<PlaneLayout> layouts) {
        double highest =
                roof.bodies().stream().mapToDouble(RoofBody::ridgeLevel).max().orElse(body.ridgeLevel());
        double ground = highest - wind.buildingHeight().orElseThrow();
        double low =
                layouts.stream().mapToDouble(l -> l.plane().eaveLevel()).min().orElse(body.eaveLevel());
        double high =
                layouts.stream().mapToDouble(l -> l.plane().ridgeLevel()).max().orElse(body.ridgeLevel());
        boolean stated = wind.eavesHeight().isPresent() && Math.abs(high - highest) < 1e-6;
        return new WindRoof(
                body.id(),
                outline,
                form,
                slopes,
                stated ? wind.eavesHeight().getAsDouble() : low - ground,
                high - ground,
                wind.parapet().isPresent() ? EavesDetail.parapet(wind.parapet().getAsDouble()) : EavesDetail.sharp());
    }

    private List<PlaneZone> zones(RoofBody body, List<PlaneLayout> layouts, WindResult result) {
        Map<String, PlaneLayout> byId = new LinkedHashMap<>();
        layouts.forEach(l -> byId.put(l.plane().id(), l));
        double tributary = layouts.stream()
                .flatMap(l -> Roofs.zone(roof, body, l, ZoneKind.INTERIOR, 0, PlanViews.plan(l.plane())).stream())
                .mapToDouble(z -> z.tributary())
                .max()
                .orElse(0);
        List<PlaneZone> zones = new ArrayList<>();
        for (GoverningZone governing : GoverningZone.of(result, uplifts.clipArea(tributary))) {
            PlaneLayout layout = byId.get(governing.slope());
            if (layout != null) {
                Roofs.zone(roof, body, layout, Places.of(governing.name()), 0, governing.region())
                        .ifPresent(zone -> zones.add(new PlaneZone(
                                zone, governing.name(), uplifts.of(zone, governing.places(), result.standard()))));
            }
        }
        return zones;
    }

    private BodyWind bodyWind(WindResult result, WindRoof windRoof) {
        List<String> assumptions = new ArrayList<>(wind.assumptions());
        assumptions.add(String.format(
                Locale.ROOT,
                "Heights above ground by the levels of the model below the ridge at building_height: eaves %.2f m, ridge"
                        + " %.2f m; the ground is taken as level.",
                windRoof.eavesHeight(),
                windRoof.ridgeHeight()));
        if (roof.bodies().size() > 1) {
            assumptions.add(
                    "Each roof is taken as that of a building of its own: what a higher or lower roof beside it does to"
                            + " the wind is not included.");
        }
        assumptions.addAll(result.assumptions());
        return new BodyWind(
                result.standard(),
                windRoof.form().words(),
                result.steps(),
                assumptions,
                named(result.notAvailable()),
                result.sources(),
                result.caution());
    }

    /** People know planes by name. */
    private List<String> named(List<String> sentences) {
        return sentences.stream()
                .map(sentence -> {
                    String named = sentence;
                    for (PlaneLayout layout : roof.planes()) {
                        RoofPlane plane = layout.plane();
                        named = named.replace("Plane " + plane.id() + ",", "Plane " + plane.name() + ",");
                    }
                    return named;
                })
                .toList();
    }
}
