package runtrue.samples.ifc;

import java.util.ArrayList;
import java.util.List;

/** Sections and outlines. Lengths in metres; y is up in a section's own axes, the origin its bounding box's middle. */
public final class Profiles {
    private final IfcFile file;

    Profiles(IfcFile file) {
        this.file = file;
    }

    /** A rectangle between two corners. */
    public StepRef rectangle(double x0, double y0, double x1, double y1) {
        StepRef middle = axes((x0 + x1) / 2, (y0 + y1) / 2);
        return profile("IFCRECTANGLEPROFILEDEF", Step.UNSET, middle, length(x1 - x0), length(y1 - y0));
    }

    /**
     * An outline by its corners, counter-clockwise, not repeating the first.
     *
     * @param corners x and y in turn
     */
    public StepRef outline(double... corners) {
        List<StepRef> points = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            points.add(point(corners[i], corners[i + 1]));
        }
        points.add(points.get(0));
        return profile("IFCARBITRARYCLOSEDPROFILEDEF", Step.UNSET, polyline(points));
    }

    public StepRef zed(double depth, double flange, double thickness) {
        double t = length(thickness);
        return profile(
                "IFCZSHAPEPROFILEDEF", "Z", axes(0, 0), length(depth), length(flange), t, t, Step.UNSET, Step.UNSET);
    }

    /** A lipped channel open towards +x. */
    public StepRef channel(double depth, double width, double thickness, double lip) {
        List<Object> values = new ArrayList<>(
                List.of("C", axes(0, 0), length(depth), length(width), length(thickness), length(lip), Step.UNSET));
        if (!file.schema().isFromIfc4()) {
            values.add(Step.UNSET);
        }
        return profile("IFCCSHAPEPROFILEDEF", values.toArray());
    }

    public StepRef eye(double depth, double width, double web, double flange) {
        List<Object> values = new ArrayList<>(
                List.of("I", axes(0, 0), length(width), length(depth), length(web), length(flange), Step.UNSET));
        if (file.schema().isFromIfc4()) {
            values.addAll(List.of(Step.UNSET, Step.UNSET));
        }
        return profile("IFCISHAPEPROFILEDEF", values.toArray());
    }

    public StepRef hollow(double depth, double width, double wall) {
        return profile(
                "IFCRECTANGLEHOLLOWPROFILEDEF",
                "RHS",
                axes(0, 0),
                length(width),
                length(depth),
                length(wall),
                Step.UNSET,
                Step.UNSET);
    }

    StepRef polyline(List<StepRef> points) {
        return file.step().shared("IFCPOLYLINE", points);
    }

    StepRef point(double x, double y) {
        return file.step().shared("IFCCARTESIANPOINT", List.of(length(x), length(y)));
    }

    private StepRef axes(double x, double y) {
        return file.step().shared("IFCAXIS2PLACEMENT2D", point(x, y), Step.UNSET);
    }

    private double length(double metres) {
        return file.length(metres);
    }

    private StepRef profile(String entity, Object... values) {
        List<Object> attributes = new ArrayList<>(List.of(Step.enumeration("AREA")));
        attributes.addAll(List.of(values));
        return file.step().shared(entity, attributes.toArray());
    }
}
