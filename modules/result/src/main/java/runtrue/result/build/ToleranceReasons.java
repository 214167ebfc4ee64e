package runtrue.result.build;

import java.util.List;
import runtrue.result.Measure;
import runtrue.result.ToleranceInfo;
import runtrue.shape.Tolerances;

/** The tolerances of {@link Tolerances} with the reasons that stand beside them there. */
final class ToleranceReasons {
    private ToleranceReasons() {}

    static List<ToleranceInfo> of(Tolerances t) {
        return List.of(
                length("same point", t.point(), "Authoring programs write millimetres with up to three decimals."),
                length(
                        "same plane",
                        t.plane(),
                        "Joints between slabs and rounding of placements; far below a sheet's rib."),
                new ToleranceInfo(
                        "parallel planes",
                        new Measure(Rounded.degrees(t.angle()), "deg"),
                        "About a tenth of the least pitch that is sheeted."),
                length("joint bridged", t.joint(), "Movement joints between panels do not part a plane."),
                length(
                        "edge reach",
                        t.edge(),
                        "Two planes meet when both come this near to their line of intersection."),
                length(
                        "curve to facet",
                        t.chord(),
                        "Greatest distance between a curve and the facets that stand for it."),
                new ToleranceInfo(
                        "least roof area",
                        new Measure(Rounded.of(t.sliver()), "m2"),
                        "Smaller faces are by-products of cuts, no roof."));
    }

    private static ToleranceInfo length(String name, double metres, String reason) {
        return new ToleranceInfo(name, new Measure(Rounded.of(metres * 1000), "mm"), reason);
    }
}
