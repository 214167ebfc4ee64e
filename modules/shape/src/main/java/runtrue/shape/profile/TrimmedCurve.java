package runtrue.shape.profile;

import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/**
 * A piece of a line, circle or ellipse between two trims. Trims by point are taken before trims by parameter, because
 * files are known to write angles in the wrong unit; where both points coincide on a conic, the parameters decide.
 */
final class TrimmedCurve {
    private final IfcEntity curve;
    private final double chord;
    private final double point;

    TrimmedCurve(IfcEntity curve, double chord, double point) {
        this.curve = curve;
        this.chord = chord;
        this.point = point;
    }

    double[] line() {
        IfcEntity basis = curve.ref("BasisCurve");
        return switch (basis.type()) {
            case "IfcLine" -> straight(basis);
            case "IfcCircle", "IfcEllipse" -> arc(basis);
            default ->
                throw new ShapeException("Trimmed curves of type " + basis.type() + " are not read (" + basis.label()
                        + "); export the profile with lines and arcs.");
        };
    }

    /** The trims of a line name its ends in its own direction; without agreement the piece runs the other way. */
    private double[] straight(IfcEntity line) {
        double[] from = lineEnd(line, "Trim1");
        double[] to = lineEnd(line, "Trim2");
        return new double[] {from[0], from[1], to[0], to[1]};
    }

    private double[] lineEnd(IfcEntity line, String trim) {
        double[] stated = trimPoint(trim);
        if (stated != null) {
            return stated;
        }
        double t = parameter(trim);
        double[] p = CurveReader.coordinates(line.ref("Pnt"));
        IfcEntity vector = line.ref("Dir");
        double[] d = vector.ref("Orientation").reals("DirectionRatios");
        if (d.length < 2) {
            throw new ShapeException("The direction of " + line.label() + " has fewer than two ratios.");
        }
        double length = Math.hypot(d[0], d[1]);
        double scale = vector.real("Magnitude") / (length > 0 ? length : 1);
        return new double[] {p[0] + t * scale * d[0], p[1] + t * scale * d[1]};
    }

    private double[] arc(IfcEntity basis) {
        Conic conic = Conic.of(basis);
        double[] p1 = trimPoint("Trim1");
        double[] p2 = trimPoint("Trim2");
        boolean byPoint = p1 != null && p2 != null && Math.hypot(p1[0] - p2[0], p1[1] - p2[1]) > point;
        double start = byPoint && p1 != null ? conic.angleTo(p1[0], p1[1]) : angle("Trim1", conic, p1);
        double end = byPoint && p2 != null ? conic.angleTo(p2[0], p2[1]) : angle("Trim2", conic, p2);
        double turn = 2 * Math.PI;
        double sweep = (end - start) % turn;
        boolean forward = !curve.enumeration("SenseAgreement").equals("F");
        if (forward && sweep <= 1e-12) {
            sweep += turn;
        } else if (!forward && sweep >= -1e-12) {
            sweep -= turn;
        }
        return conic.arc(start, sweep, chord);
    }

    private double angle(String trim, Conic conic, double @Nullable [] stated) {
        StepValue parameter = find(trim, false);
        if (parameter == null && stated != null) {
            return conic.angleTo(stated[0], stated[1]);
        }
        return parameter(trim) * curve.model().units().planeAngle();
    }

    private double parameter(String trim) {
        StepValue value = find(trim, false);
        if (value instanceof StepValue.Typed typed) {
            value = typed.value();
        }
        if (value instanceof StepValue.Real real) {
            return real.value();
        }
        if (value instanceof StepValue.Whole whole) {
            return whole.value();
        }
        throw new ShapeException("The trim " + trim + " of " + curve.label() + " gives neither a point nor a number.");
    }

    private double @Nullable [] trimPoint(String trim) {
        return find(trim, true) instanceof StepValue.Reference reference
                ? CurveReader.coordinates(curve.model().entity(reference.id()))
                : null;
    }

    private @Nullable StepValue find(String trim, boolean point) {
        if (curve.value(trim) instanceof StepValue.ListOf list) {
            for (StepValue item : list.items()) {
                if (item instanceof StepValue.Reference == point) {
                    return item;
                }
            }
        }
        return null;
    }
}
