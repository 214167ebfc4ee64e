package runtrue.shape.curve;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** An endless straight line: origin + parameter * direction, whose length scales the parameter. */
public record Line(Vector3D origin, Vector3D direction) implements Curve {
    @Override
    public Vector3D at(double parameter) {
        // The second end of a line between two points is to be that very point.
        return parameter == 0 ? origin : origin.add(direction.multiply(parameter));
    }

    @Override
    public Vector3D tangent(double parameter) {
        return direction;
    }

    @Override
    public double nearest(Vector3D place) {
        double square = direction.normSq();
        return square > 0 ? place.subtract(origin).dot(direction) / square : 0;
    }

    @Override
    public double period() {
        return 0;
    }

    @Override
    public OptionalDouble speed() {
        return OptionalDouble.of(direction.norm());
    }

    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        return new double[] {from, to};
    }
}
