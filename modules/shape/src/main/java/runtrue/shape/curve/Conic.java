package runtrue.shape.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A circle or ellipse: centre + first * cos(t) + second * sin(t), the parameter t in radians.
 *
 * @param first from the centre to the curve at parameter 0
 * @param second from the centre to the curve after a quarter turn, square to the first
 */
public record Conic(Vector3D centre, Vector3D first, Vector3D second) implements Curve {
    static final double TURN = 2 * Math.PI;

    /** Three points whose circle would be this much wider than they are apart lie on a line. */
    private static final double STRAIGHT = 1e-12;

    /** The circle that starts at one point and turns over the second to the third; empty when they lie on a line. */
    static Optional<Conic> through(Vector3D a, Vector3D b, Vector3D c) {
        Vector3D ab = b.subtract(a);
        Vector3D ac = c.subtract(a);
        Vector3D normal = ab.cross(ac);
        double square = normal.normSq();
        double spread = ab.normSq() + ac.normSq();
        if (!(Math.sqrt(square) > STRAIGHT * spread)) {
            return Optional.empty();
        }
        Vector3D toCentre = normal.cross(ab)
                .multiply(ac.normSq())
                .add(ac.cross(normal).multiply(ab.normSq()))
                .multiply(0.5 / square);
        Vector3D first = toCentre.negate();
        Vector3D second = normal.multiply(1 / Math.sqrt(square)).cross(first);
        return Optional.of(new Conic(a.add(toCentre), first, second));
    }

    @Override
    public Vector3D at(double parameter) {
        return Vector3D.Sum.of(centre)
                .addScaled(Math.cos(parameter), first)
                .addScaled(Math.sin(parameter), second)
                .get();
    }

    @Override
    public Vector3D tangent(double parameter) {
        return first.multiply(-Math.sin(parameter)).add(second.multiply(Math.cos(parameter)));
    }

    @Override
    public double nearest(Vector3D place) {
        Vector3D out = place.subtract(centre);
        return Math.atan2(out.dot(second) / second.normSq(), out.dot(first) / first.normSq());
    }

    @Override
    public double period() {
        return TURN;
    }

    @Override
    public OptionalDouble speed() {
        double radius = first.norm();
        boolean circle = Math.abs(radius - second.norm()) <= 1e-9 * radius;
        return circle ? OptionalDouble.of(radius) : OptionalDouble.empty();
    }

    /** Equal steps: an ellipse is a circle of its greater radius drawn together, and so are its chords. */
    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        double greater = Math.max(first.norm(), second.norm());
        double lesser = Math.min(first.norm(), second.norm());
        // At its pointed end an ellipse turns faster than its parameter, and what is carried along swings with it.
        double turning = greater / lesser;
        Fineness swinging = fineness.carrying(fineness.reach() * turning * turning);
        double angle = to - from;
        boolean whole = Math.abs(Math.abs(angle) - TURN) < 1e-9;
        int n = whole ? 4 * swinging.chords(greater, TURN / 4) : swinging.chords(greater, angle);
        double[] result = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            result[i] = from + angle * i / n;
        }
        result[n] = to;
        return result;
    }
}
