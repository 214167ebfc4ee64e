package runtrue.shape.usage;

import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.shape.Tolerances;
import runtrue.shape.curve.Fineness;

/**
 * What a body is made with.
 *
 * @param frame from the element's axes in file units to those in metres
 * @param fineness in file units
 * @param remarks takes sentences on what was assumed
 */
record Making(AffineTransformMatrix3D frame, Tolerances tolerances, Fineness fineness, Consumer<String> remarks) {
    /** A distance of the tolerances in file units. */
    double inFileUnits(double metres) {
        return metres / Math.cbrt(Math.abs(frame.determinant()));
    }
}
