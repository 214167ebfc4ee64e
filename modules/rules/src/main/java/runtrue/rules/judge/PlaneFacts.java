package runtrue.rules.judge;

import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.rules.cel.Facts;

/** Facts of a plane. */
final class PlaneFacts {
    private static final double LEVEL = RoofTolerance.FLAT_PLANE.si();

    private PlaneFacts() {}

    static Facts of(PlaneLayout layout, Facts building) {
        RoofPlane plane = layout.plane();
        Facts facts = building.inner()
                .know("plane.name", plane.name(), "")
                .know("plane.id", plane.id(), "")
                .know("plane.pitch", plane.pitch(), "normal of the plane through its elements")
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
                .know("plane.level", plane.pitch() < LEVEL, "pitch below 0.2 degrees");
        if (layout.sheets().isEmpty()) {
            facts.miss("plane.longest_run", "is not known: no sheets were laid out");
        } else {
            facts.know("plane.longest_run", layout.longestRun(), "longest sheet");
        }
        plane.azimuth()
                .ifPresentOrElse(
                        value -> facts.know("plane.azimuth", value, ""),
                        () -> facts.miss("plane.azimuth", "does not exist: the plane is level"));
        plane.thickness()
                .ifPresentOrElse(
                        value -> facts.know("plane.thickness", value, "square to the plane"),
                        () -> facts.miss("plane.thickness", "is not known: the model has surfaces without thickness"));
        return facts;
    }
}
