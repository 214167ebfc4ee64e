package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Locale;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.curved.Curve;
import runtrue.roof.curved.CurveFall;
import runtrue.rules.cel.Facts;

/** Facts of a plane. */
public final class PlaneFacts {
    private static final double LEVEL = RoofTolerance.FLAT_PLANE.si();

    private PlaneFacts() {}

    /**
     * Facts of one plane.
     *
     * @param fixtures things fixed on it
     */
    public static Facts of(PlaneLayout layout, Drainage drainage, long fixtures, Facts building) {
        RoofPlane plane = layout.plane();
        Facts facts = building.inner()
                .know("plane.name", plane.name(), "")
                .know("plane.id", plane.id(), "")
                .know("plane.area", plane.area(), "outline, penetrations off")
                .know("plane.plan_area", plane.planArea(), "projected to the ground")
                .know(
                        "plane.width_across",
                        plane.outline().getEnvelopeInternal().getWidth(),
                        "extent across the fall")
                .know("plane.eave_level", plane.eaveLevel(), "")
                .know("plane.ridge_level", plane.ridgeLevel(), "")
                .know("plane.support_lines", layout.supports().size(), "members below the plane")
                .know("plane.elements", plane.elements().size(), "")
                .know("plane.penetrations", plane.penetrations().size(), "")
                .know("plane.fixtures", (double) fixtures, "")
                .know("plane.level", plane.pitch() < LEVEL, "pitch below 0.2 degrees");
        metals(facts, plane, drainage);
        plane.curve().ifPresentOrElse(curve -> curved(facts, curve), () -> flat(facts, plane));
        facts.know("plane.unread_supports", layout.bearing().unreadSupports().size(), "by their extents");
        BearingFacts.add(layout, facts);
        if (layout.sheets().isEmpty()) {
            facts.miss("plane.longest_run", "is not known: no sheets were laid out");
        } else {
            facts.know("plane.longest_run", layout.longestRun(), "longest sheet");
        }
        plane.azimuth()
                .ifPresentOrElse(
                        value -> facts.know("plane.azimuth", value, ""),
                        () -> facts.miss(
                                "plane.azimuth",
                                plane.curve().isPresent()
                                        ? "does not exist: the curved plane falls to both sides"
                                        : "does not exist: the plane is level"));
        plane.thickness()
                .ifPresentOrElse(
                        value -> facts.know("plane.thickness", value, "square to the plane"),
                        () -> facts.miss("plane.thickness", "is not known: the model has surfaces without thickness"));
        return facts;
    }

    /** What the model says of the sheet goes before the system. */
    private static void metals(Facts facts, RoofPlane plane, Drainage drainage) {
        facts.know("plane.metal_stated", stated(plane), "material in the model");
        metal(facts, "plane.metal", plane);
        List<PlaneLayout> above = drainage.above();
        facts.know("plane.drained_on", !above.isEmpty(), "eaves over it");
        if (above.isEmpty()) {
            facts.miss("plane.metal_above", "does not exist: no roof ends above the plane");
        } else {
            metal(facts, "plane.metal_above", above.get(0).plane());
        }
    }

    private static void metal(Facts facts, String name, RoofPlane plane) {
        String own = stated(plane);
        if (!own.equals(Metals.UNKNOWN)) {
            facts.know(name, own, "material in the model");
        } else if (facts.find("system.metal").orElse(null) instanceof Facts.Known known) {
            facts.know(name, known.value().toString(), known.evidence());
        } else {
            facts.miss(name, "is not known: neither the model's material nor the roof system states it");
        }
    }

    private static String stated(RoofPlane plane) {
        return plane.elements().stream()
                .map(e -> Metals.ofSheets(e.element().layers()))
                .filter(m -> !m.equals(Metals.UNKNOWN))
                .findFirst()
                .orElse(Metals.UNKNOWN);
    }

    private static void flat(Facts facts, RoofPlane plane) {
        String from = "normal of the plane through its elements";
        facts.know("plane.pitch", plane.pitch(), from)
                .know("plane.least_pitch", plane.pitch(), from)
                .know("plane.greatest_pitch", plane.pitch(), from)
                .know("plane.curved", false, "")
                .know("plane.eave_pitch", plane.pitch(), from)
                .know("plane.sag", 0, "the plane is flat")
                .miss("plane.flat_stretch", "does not exist: the plane is flat")
                .miss("plane.radius", "does not exist: the plane is flat");
    }

    /** A curved plane has no one pitch: what needs one is not assessed rather than judged by its eaves or its crown. */
    private static void curved(Facts facts, Curve curve) {
        drainage(facts, curve);
        String along = "tangents along the arc";
        facts.know("plane.least_pitch", curve.leastPitch(), along)
                .know("plane.greatest_pitch", curve.greatestPitch(), along)
                .know("plane.curved", true, "")
                .miss(
                        "plane.pitch",
                        String.format(
                                Locale.ROOT,
                                "is not one figure: the plane is curved and falls at %.1f to %.1f degrees along its arc",
                                Math.toDegrees(curve.leastPitch()),
                                Math.toDegrees(curve.greatestPitch())));
        if (curve.radius().isPresent()) {
            facts.know("plane.radius", curve.radius().getAsDouble(), "circle fitted to the folds of its facets");
        } else {
            facts.miss("plane.radius", "is not known: the section of the curved plane is no circle");
        }
    }

    /** A crown is level by nature; how water leaves, where it stands and how far it barely runs can be judged. */
    private static void drainage(Facts facts, Curve curve) {
        CurveFall fall = CurveFall.of(curve);
        fall.eavePitch()
                .ifPresentOrElse(
                        pitch -> facts.know("plane.eave_pitch", pitch, "tangent of the arc where water leaves it"),
                        () -> facts.miss("plane.eave_pitch", "does not exist: water leaves at neither end of the arc"));
        facts.know("plane.sag", fall.sag(), "heights along the arc");
        if (facts.find("system.minimum_pitch").orElse(null) instanceof Facts.Known known
                && known.value() instanceof Double pitch) {
            facts.know("plane.flat_stretch", fall.flatterThan(pitch), "tangents along the arc");
        } else {
            facts.miss("plane.flat_stretch", "is not known: the roof system states no minimum_pitch");
        }
    }
}
