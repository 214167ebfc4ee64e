package runtrue.shape.profile;

import java.util.List;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/** Curves in a plane as lines of corners, in file units: start with {@link #ring}. A third coordinate is ignored. */
public final class CurveReader {
    private static final int DEEPEST = 50;

    private final double chord;
    private final double point;

    /**
     * @param chord greatest distance between a curve and its chords, in file units
     * @param point corners this near to each other are one, in file units
     */
    public CurveReader(double chord, double point) {
        this.chord = chord;
        this.point = point;
    }

    /** A closed curve; throws {@link ShapeException} when it encloses nothing or its kind is not read. */
    public Ring ring(IfcEntity curve) {
        Ring ring = Ring.of(line(curve, 0), point);
        if (ring.size() < 3 || ring.signedArea() == 0) {
            throw new ShapeException("The curve " + curve.label() + " encloses no area.");
        }
        return ring;
    }

    /** The corners of an open or closed curve. */
    double[] line(IfcEntity curve, int depth) {
        if (depth > DEEPEST) {
            throw new ShapeException("The curve " + curve.label() + " refers to itself.");
        }
        return switch (curve.type()) {
            case "IfcPolyline" -> polyline(curve);
            case "IfcIndexedPolyCurve" -> new IndexedCurve(curve, chord).line();
            case "IfcCompositeCurve", "Ifc2DCompositeCurve", "IfcCompositeCurveOnSurface", "IfcBoundaryCurve" ->
                composite(curve, depth);
            case "IfcTrimmedCurve" -> new TrimmedCurve(curve, chord, point).line();
            case "IfcCircle", "IfcEllipse" -> Conic.of(curve).whole(chord);
            default ->
                throw new ShapeException("Curves of type " + curve.type() + " are not read (" + curve.label()
                        + "); export the profile with lines and arcs.");
        };
    }

    private static double[] polyline(IfcEntity curve) {
        List<IfcEntity> points = curve.refs("Points");
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            double[] c = coordinates(points.get(i));
            xy[2 * i] = c[0];
            xy[2 * i + 1] = c[1];
        }
        return xy;
    }

    static double[] coordinates(IfcEntity point) {
        double[] c = point.reals("Coordinates");
        if (c.length < 2) {
            throw new ShapeException("The point " + point.label() + " has fewer than two coordinates.");
        }
        return c;
    }

    /** Segments end to start; one whose sense contradicts its neighbours is turned round. */
    private double[] composite(IfcEntity curve, int depth) {
        Path path = new Path();
        for (IfcEntity segment : curve.refs("Segments")) {
            if (segment.value("ParentCurve") instanceof StepValue.Omitted) {
                throw new ShapeException(
                        "Curve segments of type " + segment.type() + " are not read (" + segment.label() + ").");
            }
            double[] line = line(segment.ref("ParentCurve"), depth + 1);
            if (segment.enumeration("SameSense").equals("F")) {
                line = Path.reversed(line);
            }
            if (!path.empty() && startsFartherThanEnds(path, line)) {
                line = Path.reversed(line);
            }
            path.addAll(line);
        }
        return path.toArray();
    }

    private boolean startsFartherThanEnds(Path path, double[] line) {
        int n = line.length;
        if (n < 4) {
            return false;
        }
        double start = Math.hypot(line[0] - path.lastX(), line[1] - path.lastY());
        double end = Math.hypot(line[n - 2] - path.lastX(), line[n - 1] - path.lastY());
        return start > 100 * point && end <= 100 * point;
    }
}
