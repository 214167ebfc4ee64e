package runtrue.result.build;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import runtrue.result.Measure;
import runtrue.result.ToleranceInfo;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Tolerances;

/** The tolerances of {@link Tolerances} and {@link RoofTolerance} with the reasons that stand beside them there. */
final class ToleranceReasons {
    private ToleranceReasons() {}

    static List<ToleranceInfo> of(Tolerances t) {
        return Stream.concat(
                        shapes(t).stream(),
                        Arrays.stream(RoofTolerance.values()).map(ToleranceReasons::roof))
                .toList();
    }

    private static ToleranceInfo roof(RoofTolerance t) {
        return switch (t.unit()) {
            case METRE -> length(t.title(), t.value(), t.reason());
            case DEGREE -> new ToleranceInfo(t.title(), new Measure(Rounded.of(t.value()), "deg"), t.reason());
            case FACTOR -> new ToleranceInfo(t.title(), new Measure(Rounded.of(t.value()), "1"), t.reason());
        };
    }

    private static List<ToleranceInfo> shapes(Tolerances t) {
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
