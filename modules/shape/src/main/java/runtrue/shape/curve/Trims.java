package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/**
 * A piece of a curve between two trims. Trims by point are taken before trims by parameter, because files are known to
 * write angles in the wrong unit; where both points coincide on a conic, the parameters decide.
 */
final class Trims {
    private final IfcEntity curve;
    private final double point;

    Trims(IfcEntity curve, double point) {
        this.curve = curve;
        this.point = point;
    }

    boolean forward() {
        return !curve.enumeration("SenseAgreement").equals("F");
    }

    /** The trims of a line name its ends in its own direction; without agreement the piece runs the other way. */
    Chain of(Line line) {
        Vector3D from = lineEnd(line, "Trim1");
        Vector3D to = lineEnd(line, "Trim2");
        double unit = line.direction().norm();
        return Chain.of(Piece.straight(from, to, unit > 0 ? from.distance(to) / unit : 1));
    }

    private Vector3D lineEnd(Line line, String trim) {
        Vector3D stated = place(trim);
        return stated != null ? stated : line.at(parameter(trim));
    }

    /** The span of a conic is counted in the file's unit of angles. */
    Chain of(Conic conic) {
        double unit = curve.model().units().planeAngle();
        Vector3D from = place("Trim1");
        Vector3D to = place("Trim2");
        boolean byPoint = from != null && to != null && from.distance(to) > point;
        double start = angle("Trim1", conic, from, byPoint, unit);
        double end = angle("Trim2", conic, to, byPoint, unit);
        double finish = start + Arcs.sweep(start, end, forward());
        return Chain.of(new Piece(conic, start, finish, Math.abs(finish - start) / unit));
    }

    private double angle(String trim, Conic conic, @Nullable Vector3D stated, boolean byPoint, double unit) {
        boolean noNumber = find(trim, false) == null;
        return stated != null && (byPoint || noNumber) ? conic.nearest(stated) : parameter(trim) * unit;
    }

    /** Trims of bounded curves, which the standard does not allow but files have. */
    Chain of(Chain whole) {
        double from = chainEnd(whole, "Trim1");
        double to = chainEnd(whole, "Trim2");
        if (forward() && to <= from && whole.closed(point)) {
            List<Piece> pieces = new ArrayList<>(whole.part(from, whole.span()).pieces());
            pieces.addAll(whole.part(0, to).pieces());
            return new Chain(pieces);
        }
        return from <= to ? whole.part(from, to) : whole.part(to, from).reversed();
    }

    private double chainEnd(Chain whole, String trim) {
        Vector3D stated = place(trim);
        if (stated != null) {
            return whole.nearest(stated);
        }
        return parameter(trim) - CurveReader.firstParameter(curve.ref("BasisCurve"));
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

    private @Nullable Vector3D place(String trim) {
        return find(trim, true) instanceof StepValue.Reference reference
                ? Places.of(curve.model().entity(reference.id()))
                : null;
    }

    private @Nullable StepValue find(String trim, boolean reference) {
        if (curve.value(trim) instanceof StepValue.ListOf list) {
            for (StepValue item : list.items()) {
                if (item instanceof StepValue.Reference == reference) {
                    return item;
                }
            }
        }
        return null;
    }
}
