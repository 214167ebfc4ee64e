package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.Units;
import runtrue.step.StepValue;

/** Curves of grid axes as points in file units, in the plane of the grid. */
final class GridCurves {
    /** An IfcLine has no ends: it is drawn this many metres to either side of its point. */
    private static final double HALF_LINE_METRES = 500;
    /** Arcs are cut into steps of at most this angle, which leaves 0.4 % of the radius between arc and chord. */
    private static final double STEP = Math.toRadians(10);

    private final Units units;

    GridCurves(Units units) {
        this.units = units;
    }

    List<Vector3D> points(IfcEntity curve) {
        return switch (curve.type()) {
            case "IfcPolyline" -> polyline(curve);
            case "IfcIndexedPolyCurve" -> indexed(curve);
            case "IfcLine" -> line(curve, -HALF_LINE_METRES / units.length(), HALF_LINE_METRES / units.length());
            case "IfcTrimmedCurve" -> trimmed(curve);
            case "IfcCircle" -> arc(curve, 0, 2 * Math.PI);
            default -> throw problem(curve, "is a curve that grid axes are not read from");
        };
    }

    private static List<Vector3D> polyline(IfcEntity curve) {
        List<Vector3D> points = new ArrayList<>();
        for (IfcEntity point : curve.refs("Points")) {
            points.add(Axes.coordinates(point));
        }
        return points;
    }

    /** All points of the list in order: exact for straight segments, end and middle points for arcs. */
    private static List<Vector3D> indexed(IfcEntity curve) {
        IfcEntity list = curve.ref("Points");
        int dimension = list.isA("IfcCartesianPointList3D") ? 3 : 2;
        double[] at = list.reals("CoordList");
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i + dimension <= at.length; i += dimension) {
            points.add(Vector3D.of(at[i], at[i + 1], dimension == 3 ? at[i + 2] : 0));
        }
        return points;
    }

    /** From and to in file length units along the line. */
    private static List<Vector3D> line(IfcEntity line, double from, double to) {
        Vector3D start = Axes.coordinates(line.ref("Pnt"));
        Vector3D along = Axes.unit(line.ref("Dir").ref("Orientation"));
        return List.of(start.add(along.multiply(from)), start.add(along.multiply(to)));
    }

    private List<Vector3D> trimmed(IfcEntity curve) {
        IfcEntity basis = curve.ref("BasisCurve");
        boolean forward = !curve.enumeration("SenseAgreement").equals("F");
        if (basis.isA("IfcLine")) {
            double magnitude = basis.ref("Dir").real("Magnitude");
            Vector3D start = Axes.coordinates(basis.ref("Pnt"));
            Vector3D step = Axes.unit(basis.ref("Dir").ref("Orientation")).multiply(magnitude);
            return List.of(
                    end(curve, "Trim1", parameter -> start.add(step.multiply(parameter))),
                    end(curve, "Trim2", parameter -> start.add(step.multiply(parameter))));
        }
        if (basis.isA("IfcCircle")) {
            double from = angle(curve, "Trim1", basis);
            double to = angle(curve, "Trim2", basis);
            double turn = forward ? to - from : from - to;
            double sweep = turn <= 0 ? turn + 2 * Math.PI : turn;
            return arc(basis, from, forward ? sweep : -sweep);
        }
        throw problem(basis, "is a trimmed curve that grid axes are not read from");
    }

    private interface ByParameter {
        Vector3D at(double parameter);
    }

    private static Vector3D end(IfcEntity curve, String trim, ByParameter byParameter) {
        List<IfcEntity> points = curve.refs(trim);
        if (!points.isEmpty()) {
            return Axes.coordinates(points.get(0));
        }
        return byParameter.at(parameter(curve, trim));
    }

    private static double parameter(IfcEntity curve, String trim) {
        if (curve.value(trim) instanceof StepValue.ListOf list) {
            for (StepValue item : list.items()) {
                if (Values.number(item).isPresent()) {
                    return Values.number(item).getAsDouble();
                }
            }
        }
        throw problem(curve, "has neither a point nor a parameter as " + trim);
    }

    private double angle(IfcEntity curve, String trim, IfcEntity circle) {
        List<IfcEntity> points = curve.refs(trim);
        if (points.isEmpty()) {
            return parameter(curve, trim) * units.planeAngle();
        }
        Vector3D local = Axes.of(circle.ref("Position")).inverse().apply(Axes.coordinates(points.get(0)));
        return Math.atan2(local.getY(), local.getX());
    }

    private static List<Vector3D> arc(IfcEntity circle, double from, double sweep) {
        AffineTransformMatrix3D position = Axes.of(circle.ref("Position"));
        double radius = circle.real("Radius");
        int steps = Math.max(1, (int) Math.ceil(Math.abs(sweep) / STEP));
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double angle = from + sweep * i / steps;
            points.add(position.apply(Vector3D.of(radius * Math.cos(angle), radius * Math.sin(angle), 0)));
        }
        return points;
    }

    private static IfcException problem(IfcEntity entity, String what) {
        return new IfcException(entity.label() + " " + what);
    }
}
