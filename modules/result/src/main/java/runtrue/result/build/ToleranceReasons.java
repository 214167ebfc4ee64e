package runtrue.result.build;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import runtrue.result.Measure;
import runtrue.result.ToleranceInfo;
import runtrue.roof.Bound;
import runtrue.roof.RoofTolerance;
import runtrue.roof.health.HealthLimit;
import runtrue.roof.stated.StatedTolerances;
import runtrue.shape.Tolerances;

/** All tolerances that results hang on, with the reasons that stand beside them where they are set. */
final class ToleranceReasons {
    private ToleranceReasons() {}

    static List<ToleranceInfo> of(Tolerances t) {
        return Stream.of(
                        shapes(t).stream(),
                        Arrays.stream(RoofTolerance.values())
                                .map(RoofTolerance::bound)
                                .map(ToleranceReasons::roof),
                        stated(StatedTolerances.standard()).stream(),
                        Arrays.stream(HealthLimit.values())
                                .map(HealthLimit::bound)
                                .map(ToleranceReasons::health))
                .flatMap(s -> s)
                .toList();
    }

    private static List<ToleranceInfo> stated(StatedTolerances t) {
        return List.of(
                new ToleranceInfo(
                        "stated pitch",
                        new Measure(Rounded.degrees(t.pitch()), "deg"),
                        "People and programs state whole degrees, which are off by half a degree at most."),
                new ToleranceInfo(
                        "stated area",
                        new Measure(Rounded.of(t.areaShare()), "1"),
                        "Share of the area: facets of curves, and cut edges counted or not."),
                new ToleranceInfo(
                        "stated area, small",
                        new Measure(Rounded.of(t.area()), "m2"),
                        "Where it is more than the share: areas are stated with one or two decimals."),
                new ToleranceInfo(
                        "stated length or thickness",
                        new Measure(Rounded.of(t.lengthShare()), "1"),
                        "Share of it: values are rounded to the millimetre or the sixteenth of an inch."),
                length(
                        "stated thickness, small",
                        t.thickness(),
                        "A sheet or membrane that some count and some do not."),
                length(
                        "stated length, small",
                        t.length(),
                        "And the depth of the section: ends cut on a bevel are measured on either side."));
    }

    /** Sizes of whole roofs are read in metres. */
    private static ToleranceInfo health(Bound limit) {
        String unit = limit.unit() == Bound.Unit.METRE ? "m" : "1";
        return new ToleranceInfo(limit.title(), new Measure(Rounded.of(limit.value()), unit), limit.reason());
    }

    private static ToleranceInfo roof(Bound t) {
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
                        "circle to polygon",
                        new Measure(Rounded.of(t.round()), "1"),
                        "Greatest share of a circle's area that its sides leave out: rods and pipes keep their volume."),
                new ToleranceInfo(
                        "least roof area",
                        new Measure(Rounded.of(t.sliver()), "m2"),
                        "Smaller faces are by-products of cuts, no roof."));
    }

    private static ToleranceInfo length(String name, double metres, String reason) {
        return new ToleranceInfo(name, new Measure(Rounded.of(metres * 1000), "mm"), reason);
    }
}
