package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A directed part of a curve.
 *
 * @param start parameter where it begins
 * @param end parameter where it ends; less than the start when it runs against the curve
 * @param span how much of the parameter of the whole that it belongs to it takes up, in the file's own measure
 */
public record Piece(Curve curve, double start, double end, double span) {
    /** The straight piece between two places. */
    public static Piece straight(Vector3D from, Vector3D to, double span) {
        return new Piece(new Line(from, to.subtract(from)), 0, 1, span);
    }

    public Vector3D from() {
        return curve.at(start);
    }

    public Vector3D to() {
        return curve.at(end);
    }

    public Piece reversed() {
        return new Piece(curve, end, start, span);
    }

    /** This piece with its length as its span; a curve of uneven speed is cut at its stations, chords taken for lengths. */
    List<Piece> byLength(Fineness fineness) {
        OptionalDouble speed = curve.speed();
        if (speed.isPresent()) {
            return List.of(new Piece(curve, start, end, speed.getAsDouble() * Math.abs(end - start)));
        }
        double[] t = curve.stations(start, end, fineness);
        List<Piece> parts = new ArrayList<>(t.length);
        for (int i = 1; i < t.length; i++) {
            parts.add(new Piece(curve, t[i - 1], t[i], curve.at(t[i - 1]).distance(curve.at(t[i]))));
        }
        return parts;
    }

    /** The part between two shares of the span, 0 to 1. */
    Piece part(double from, double to) {
        double length = end - start;
        return new Piece(curve, start + from * length, start + to * length, span * (to - from));
    }

    /** Unit direction of travel; zero where the curve stands still. */
    Vector3D direction(double parameter) {
        Vector3D tangent = curve.tangent(parameter);
        double norm = tangent.norm();
        return norm > 0 ? tangent.multiply((end < start ? -1 : 1) / norm) : Vector3D.ZERO;
    }
}
