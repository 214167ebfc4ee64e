package runtrue.shape.curve;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A smooth curve in space over one parameter; what part of it is meant, a {@link Piece} says. Immutable. */
public interface Curve {
    Vector3D at(double parameter);

    /** Derivative by the parameter, of any length; zero where the curve stands still. */
    Vector3D tangent(double parameter);

    /** The parameter of the point nearest to a place; for an ellipse, of the point seen towards it. */
    double nearest(Vector3D place);

    /** After so much parameter the curve starts again; 0 when it does not. */
    double period();

    /**
     * Distance along it for one unit of the parameter, where that is the same everywhere; alignments count distances in
     * plan.
     */
    default OptionalDouble speed() {
        return OptionalDouble.empty();
    }

    /** Parameters from one to another, rising or falling, both included, whose chords are as fine as asked. */
    double[] stations(double from, double to, Fineness fineness);
}
