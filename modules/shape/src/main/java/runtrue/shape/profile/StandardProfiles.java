package runtrue.shape.profile;

import java.util.Arrays;
import java.util.List;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;

/**
 * The schema's parameterised profiles, centred on their bounding boxes. Fillets, edge radii and flange slopes are left
 * out: they change a section's area by a few percent and none of its outer dimensions.
 */
final class StandardProfiles {
    private final Fineness fineness;

    StandardProfiles(Fineness fineness) {
        this.fineness = fineness;
    }

    Profile read(IfcEntity p, String name) {
        Profile centred = centred(p, name);
        return p.has("Position") ? centred.moved(p.model().transform(p.ref("Position"))) : centred;
    }

    private Profile centred(IfcEntity p, String name) {
        return switch (p.type()) {
            case "IfcRectangleProfileDef" -> plain(name, Outlines.rectangle(size(p, "XDim"), size(p, "YDim")));
            case "IfcRoundedRectangleProfileDef" ->
                new Profile(
                        name,
                        Arcs.rounded(size(p, "XDim"), size(p, "YDim"), p.real("RoundingRadius"), fineness),
                        List.of());
            case "IfcRectangleHollowProfileDef" -> rectangleHollow(p, name);
            case "IfcCircleProfileDef" -> new Profile(name, circle(size(p, "Radius")), List.of());
            case "IfcCircleHollowProfileDef" -> circleHollow(p, name);
            case "IfcEllipseProfileDef" ->
                new Profile(name, Arcs.ellipse(size(p, "SemiAxis1"), size(p, "SemiAxis2"), fineness), List.of());
            case "IfcTrapeziumProfileDef" ->
                plain(
                        name,
                        Outlines.trapezium(
                                size(p, "BottomXDim"), size(p, "TopXDim"), size(p, "YDim"), p.real("TopXOffset")));
            default -> rolled(p, name);
        };
    }

    private Profile rolled(IfcEntity p, String name) {
        return switch (p.type()) {
            case "IfcAsymmetricIShapeProfileDef" -> asymmetric(p, name);
            case "IfcCraneRailAShapeProfileDef" ->
                craneRail(
                        p,
                        name,
                        new double[] {half(p, "BaseWidth2"), half(p, "BaseWidth4"), half(p, "WebThickness")},
                        sizes(p, "BaseDepth3", "BaseDepth2", "BaseDepth1"));
            case "IfcCraneRailFShapeProfileDef" ->
                craneRail(
                        p,
                        name,
                        new double[] {half(p, "HeadWidth"), half(p, "WebThickness")},
                        sizes(p, "BaseDepth2", "BaseDepth1"));
            default -> plain(name, thinWalled(p));
        };
    }

    private static double[] thinWalled(IfcEntity p) {
        return switch (p.type()) {
            case "IfcIShapeProfileDef" -> {
                double[] d = sizes(p, "OverallWidth", "FlangeThickness", "OverallDepth", "WebThickness");
                yield Outlines.iShape(d[0], d[1], d[0], d[1], d[2], d[3]);
            }
            case "IfcLShapeProfileDef" -> {
                double[] d = sizes(p, p.has("Width") ? "Width" : "Depth", "Depth", "Thickness");
                yield Outlines.lShape(d[0], d[1], d[2]);
            }
            case "IfcUShapeProfileDef" -> {
                double[] d = sizes(p, "FlangeWidth", "Depth", "WebThickness", "FlangeThickness");
                yield Outlines.uShape(d[0], d[1], d[2], d[3]);
            }
            case "IfcTShapeProfileDef" -> {
                double[] d = sizes(p, "FlangeWidth", "Depth", "WebThickness", "FlangeThickness");
                yield Outlines.tShape(d[0], d[1], d[2], d[3]);
            }
            case "IfcCShapeProfileDef" -> {
                double[] d = sizes(p, "Width", "Depth", "WallThickness", "Girth");
                yield Outlines.cShape(d[0], d[1], d[2], d[3]);
            }
            case "IfcZShapeProfileDef" -> {
                double[] d = sizes(p, "FlangeWidth", "Depth", "WebThickness", "FlangeThickness");
                yield Outlines.zShape(d[0], d[1], d[2], d[3]);
            }
            default ->
                throw new ShapeException("Profiles of type " + p.type() + " are not read (" + p.label()
                        + "); export this element with an arbitrary closed profile, or as a faceted body.");
        };
    }

    /** Names of dimensions as in DIN 536: the foot of type F is as wide as its head. */
    private Profile craneRail(IfcEntity p, String name, double[] footX, double[] footY) {
        return plain(
                name,
                Outlines.craneRail(
                        size(p, "OverallHeight"),
                        size(p, "HeadWidth"),
                        size(p, "HeadDepth3"),
                        size(p, "HeadDepth2"),
                        footX,
                        footY));
    }

    private static double half(IfcEntity p, String dimension) {
        return 0.5 * size(p, dimension);
    }

    private static double[] sizes(IfcEntity p, String... dimensions) {
        return Arrays.stream(dimensions).mapToDouble(d -> size(p, d)).toArray();
    }

    private static double size(IfcEntity p, String dimension) {
        double value = p.real(dimension);
        if (!(value > 0)) {
            throw new ShapeException("The " + dimension + " of " + p.label() + " is not positive.");
        }
        return value;
    }

    private Profile plain(String name, double[] xy) {
        Ring ring = Ring.of(xy, fineness.point());
        if (!(ring.signedArea() > 0)) {
            throw new ShapeException(
                    "The profile " + name + " has no area: its thicknesses are greater than its outer dimensions.");
        }
        return new Profile(name, ring, List.of());
    }

    private Ring circle(double radius) {
        return Arcs.ellipse(radius, radius, fineness);
    }

    private Profile circleHollow(IfcEntity p, String name) {
        double inner = size(p, "Radius") - size(p, "WallThickness");
        return new Profile(name, circle(size(p, "Radius")), inner > 0 ? List.of(circle(inner)) : List.of());
    }

    private Profile rectangleHollow(IfcEntity p, String name) {
        double x = size(p, "XDim");
        double y = size(p, "YDim");
        double wall = 2 * size(p, "WallThickness");
        Ring outer = Ring.of(Outlines.rectangle(x, y), fineness.point());
        boolean open = x > wall && y > wall;
        return new Profile(
                name,
                outer,
                open ? List.of(Ring.of(Outlines.rectangle(x - wall, y - wall), fineness.point())) : List.of());
    }

    /** Before IFC4 this is an I shape with a top flange of its own; since then both flanges are named. */
    private Profile asymmetric(IfcEntity p, String name) {
        boolean early = p.has("OverallWidth");
        double bottomThickness = size(p, early ? "FlangeThickness" : "BottomFlangeThickness");
        return plain(
                name,
                Outlines.iShape(
                        size(p, early ? "OverallWidth" : "BottomFlangeWidth"),
                        bottomThickness,
                        size(p, "TopFlangeWidth"),
                        p.has("TopFlangeThickness") ? size(p, "TopFlangeThickness") : bottomThickness,
                        size(p, "OverallDepth"),
                        size(p, "WebThickness")));
    }
}
