package runtrue.shape.profile;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;

/** Curves in a plane as lines of corners, in file units: start with {@link #ring}. A third coordinate is ignored. */
public final class OutlineReader {
    private final Fineness fineness;
    private final CurveReader curves;

    public OutlineReader(Fineness fineness) {
        this.fineness = fineness;
        this.curves = new CurveReader(fineness);
    }

    /** A closed curve; throws {@link ShapeException} when it encloses nothing or its kind is not read. */
    public Ring ring(IfcEntity curve) {
        Ring ring = Ring.of(flat(curves.read(curve).points(fineness)), fineness.point());
        if (ring.size() < 3 || ring.signedArea() == 0) {
            throw new ShapeException("The curve " + curve.label() + " encloses no area.");
        }
        return ring;
    }

    Chain chain(IfcEntity curve) {
        return curves.read(curve);
    }

    private static double[] flat(List<Vector3D> points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getX();
            xy[2 * i + 1] = points.get(i).getY();
        }
        return xy;
    }
}
