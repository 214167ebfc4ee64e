package runtrue.shape.profile;

import java.util.List;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/**
 * The schema's parameterised profiles, centred on their bounding boxes. Fillets, edge radii and flange slopes are left
 * out: they change a section's area by a few percent and none of its outer dimensions.
 */
final class StandardProfiles {
    private final double chord;
    private final double point;

    StandardProfiles(double chord, double point) {
        this.chord = chord;
        this.point = point;
    }

    Profile read(IfcEntity p, String name) {
        Profile centred = centred(p, name);
        if (!(centred.area() > 0)) {
            throw new ShapeException("The profile " + p.label() + " has no area: check its dimensions.");
        }
        return p.has("Position") ? centred.moved(p.model().transform(p.ref("Position"))) : centred;
    }

    private Profile centred(IfcEntity p, String name) {
        return switch (p.type()) {
            case "IfcRectangleProfileDef" -> plain(name, Outlines.rectangle(p.real("XDim"), p.real("YDim")));
            case "IfcRoundedRectangleProfileDef" ->
                new Profile(name, rounded(p.real("XDim"), p.real("YDim"), p.real("RoundingRadius")), List.of());
            case "IfcRectangleHollowProfileDef" -> rectangleHollow(p, name);
            case "IfcCircleProfileDef" -> new Profile(name, circle(p.real("Radius")), List.of());
            case "IfcCircleHollowProfileDef" -> circleHollow(p, name);
            case "IfcEllipseProfileDef" ->
                new Profile(name, Arcs.ellipse(p.real("SemiAxis1"), p.real("SemiAxis2"), chord), List.of());
            case "IfcTrapeziumProfileDef" ->
                plain(
                        name,
                        Outlines.trapezium(
                                p.real("BottomXDim"), p.real("TopXDim"), p.real("YDim"), p.real("TopXOffset")));
            default -> rolled(p, name);
        };
    }

    private Profile rolled(IfcEntity p, String name) {
        return switch (p.type()) {
            case "IfcIShapeProfileDef" ->
                plain(
                        name,
                        Outlines.iShape(
                                p.real("OverallWidth"),
                                p.real("FlangeThickness"),
                                p.real("OverallWidth"),
                                p.real("FlangeThickness"),
                                p.real("OverallDepth"),
                                p.real("WebThickness")));
            case "IfcAsymmetricIShapeProfileDef" -> asymmetric(p, name);
            case "IfcLShapeProfileDef" ->
                plain(
                        name,
                        Outlines.lShape(
                                p.optionalReal("Width").orElseGet(() -> p.real("Depth")),
                                p.real("Depth"),
                                p.real("Thickness")));
            case "IfcUShapeProfileDef" ->
                plain(
                        name,
                        Outlines.uShape(
                                p.real("FlangeWidth"),
                                p.real("Depth"),
                                p.real("WebThickness"),
                                p.real("FlangeThickness")));
            case "IfcTShapeProfileDef" ->
                plain(
                        name,
                        Outlines.tShape(
                                p.real("FlangeWidth"),
                                p.real("Depth"),
                                p.real("WebThickness"),
                                p.real("FlangeThickness")));
            case "IfcCShapeProfileDef" ->
                plain(
                        name,
                        Outlines.cShape(p.real("Width"), p.real("Depth"), p.real("WallThickness"), p.real("Girth")));
            case "IfcZShapeProfileDef" ->
                plain(
                        name,
                        Outlines.zShape(
                                p.real("FlangeWidth"),
                                p.real("Depth"),
                                p.real("WebThickness"),
                                p.real("FlangeThickness")));
            default -> throw new ShapeException("Profiles of type " + p.type() + " are not read (" + p.label() + ").");
        };
    }

    private Profile plain(String name, double[] xy) {
        return new Profile(name, Ring.of(xy, point), List.of());
    }

    private Ring circle(double radius) {
        return Arcs.ellipse(radius, radius, chord);
    }

    private Profile circleHollow(IfcEntity p, String name) {
        double inner = p.real("Radius") - p.real("WallThickness");
        return new Profile(name, circle(p.real("Radius")), inner > 0 ? List.of(circle(inner)) : List.of());
    }

    private Profile rectangleHollow(IfcEntity p, String name) {
        double x = p.real("XDim");
        double y = p.real("YDim");
        double wall = 2 * p.real("WallThickness");
        Ring outer = Ring.of(Outlines.rectangle(x, y), point);
        boolean open = x > wall && y > wall;
        return new Profile(
                name, outer, open ? List.of(Ring.of(Outlines.rectangle(x - wall, y - wall), point)) : List.of());
    }

    /** Before IFC4 this is an I shape with a top flange of its own; since then both flanges are named. */
    private Profile asymmetric(IfcEntity p, String name) {
        boolean early = p.has("OverallWidth");
        double bottomThickness = p.real(early ? "FlangeThickness" : "BottomFlangeThickness");
        return plain(
                name,
                Outlines.iShape(
                        p.real(early ? "OverallWidth" : "BottomFlangeWidth"),
                        bottomThickness,
                        p.real("TopFlangeWidth"),
                        p.optionalReal("TopFlangeThickness").orElse(bottomThickness),
                        p.real("OverallDepth"),
                        p.real("WebThickness")));
    }

    private Ring rounded(double xDim, double yDim, double radius) {
        double r = Math.min(radius, 0.5 * Math.min(xDim, yDim));
        if (!(r > 0)) {
            return Ring.of(Outlines.rectangle(xDim, yDim), point);
        }
        Path path = new Path();
        int chords = Arcs.chords(r, Math.PI / 2, chord);
        for (int corner = 0; corner < 4; corner++) {
            double sx = corner == 0 || corner == 3 ? 1 : -1;
            double sy = corner < 2 ? 1 : -1;
            for (int i = 0; i <= chords; i++) {
                double angle = Math.PI / 2 * (corner + (double) i / chords);
                path.add(sx * (0.5 * xDim - r) + r * Math.cos(angle), sy * (0.5 * yDim - r) + r * Math.sin(angle));
            }
        }
        return Ring.of(path.toArray(), point);
    }
}
