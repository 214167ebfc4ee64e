package runtrue.shape.curve.alignment;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Conic;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Line;
import runtrue.shape.curve.Moved;
import runtrue.shape.curve.Piece;
import runtrue.step.StepValue;

/**
 * Segments of alignments, IfcCurveSegment: a part of a parent curve, moved so that it begins where its placement lies and
 * runs along the placement's x axis there. A negative length runs against the parent curve, as a bend to the right does
 * along a circle. Spans are lengths.
 */
public final class CurveSegments {
    private final Function<IfcEntity, Chain> bounded;
    private final Fineness fineness;

    /** @param bounded reads parent curves that have an end */
    public CurveSegments(Function<IfcEntity, Chain> bounded, Fineness fineness) {
        this.bounded = bounded;
        this.fineness = fineness;
    }

    /** The segment in the axes of its curve; a chain without pieces for one without length, which marks an end. */
    public Chain of(IfcEntity segment) {
        double length = segment.real("SegmentLength");
        if (length == 0) {
            return new Chain(List.of());
        }
        Chain part = part(segment, segment.ref("ParentCurve"), segment.real("SegmentStart"), length);
        if (part.pieces().isEmpty()) {
            throw new ShapeException("The segment " + segment.label() + " lies beyond its parent curve; check it.");
        }
        Piece first = part.pieces().get(0);
        Vector3D along = first.curve().tangent(first.start()).multiply(Math.signum(first.end() - first.start()));
        if (!(Math.hypot(along.getX(), along.getY()) > 0) || Math.abs(along.getZ()) > 1e-9 * along.norm()) {
            throw new ShapeException("The parent curve of " + segment.label() + " does not lie in a plane; export the"
                    + " element as a faceted body.");
        }
        Vector3D x = along.normalize();
        AffineTransformMatrix3D start = AffineTransformMatrix3D.fromColumnVectors(
                x, Vector3D.Unit.PLUS_Z.cross(x), Vector3D.Unit.PLUS_Z, part.from());
        return part.moved(segment.model().transform(segment.ref("Placement")).multiply(start.inverse()));
    }

    private Chain part(IfcEntity segment, IfcEntity parent, double start, double length) {
        boolean startIsParameter = isParameter(segment, "SegmentStart");
        boolean lengthIsParameter = isParameter(segment, "SegmentLength");
        if (startIsParameter != lengthIsParameter) {
            throw new ShapeException(
                    "The segment " + segment.label() + " starts by a parameter and is long by a length,"
                            + " or the other way; export the element as a faceted body.");
        }
        return switch (parent.type()) {
            case "IfcLine" -> {
                Line line = CurveReader.line(parent);
                double unit = line.direction().norm();
                yield even(line, start, length, startIsParameter ? 1 : 1 / unit, startIsParameter ? unit : 1);
            }
            case "IfcCircle" -> {
                Conic circle = CurveReader.conic(parent);
                double radius = circle.first().norm();
                double angle = segment.model().units().planeAngle();
                yield even(
                        circle,
                        start,
                        length,
                        startIsParameter ? angle : 1 / radius,
                        startIsParameter ? angle * radius : 1);
            }
            case "IfcPolynomialCurve" -> polynomial(parent, start, length, startIsParameter);
            default ->
                Spiral.isOne(parent)
                        ? spiral(segment, parent, start, length, startIsParameter)
                        : ofBounded(parent, start, length, startIsParameter);
        };
    }

    /** @param parameter of the curve, and {@code distance} along it, for one unit of what the file states */
    private static Chain even(Curve curve, double start, double length, double parameter, double distance) {
        return Chain.of(new Piece(curve, start * parameter, (start + length) * parameter, Math.abs(length) * distance));
    }

    private static Chain spiral(IfcEntity segment, IfcEntity parent, double start, double length, boolean parameter) {
        if (parameter) {
            throw new ShapeException(
                    "The segment " + segment.label() + " counts along a spiral by its parameter, not by"
                            + " lengths; export the element as a faceted body.");
        }
        double end = start + length;
        Spiral spiral = Spiral.of(parent, Math.min(start, end), Math.max(start, end));
        return even(new Moved(spiral, position(parent)), start, length, 1, 1);
    }

    private static Chain polynomial(IfcEntity parent, double start, double length, boolean parameter) {
        Polynomial polynomial = Polynomial.of(parent);
        double from = parameter ? start : polynomial.atLength(start);
        double to = parameter ? start + length : polynomial.atLength(start + length);
        double span = Math.abs(polynomial.length(to) - polynomial.length(from));
        return Chain.of(new Piece(new Moved(polynomial.between(from, to), position(parent)), 0, 1, span));
    }

    private static AffineTransformMatrix3D position(IfcEntity parent) {
        return parent.model().transform(parent.ref("Position"));
    }

    private Chain ofBounded(IfcEntity parent, double start, double length, boolean parameter) {
        Chain whole = bounded.apply(parent);
        Chain counted = parameter ? whole : whole.byLength(fineness);
        Chain part = counted.part(Math.min(start, start + length), Math.max(start, start + length));
        return (length < 0 ? part.reversed() : part).byLength(fineness);
    }

    private static boolean isParameter(IfcEntity segment, String attribute) {
        return segment.value(attribute) instanceof StepValue.Typed typed
                && typed.keyword().toUpperCase(Locale.ROOT).equals("IFCPARAMETERVALUE");
    }
}
