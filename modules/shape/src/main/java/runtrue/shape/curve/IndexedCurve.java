package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/** IfcIndexedPolyCurve: lines and three-point arcs over a list of points; each line and each arc has a span of 1. */
final class IndexedCurve {
    private final IfcEntity curve;
    private final double[] coordinates;
    private final int dimensions;

    IndexedCurve(IfcEntity curve) {
        this.curve = curve;
        IfcEntity list = curve.ref("Points");
        this.coordinates = list.reals("CoordList");
        this.dimensions = list.isA("IfcCartesianPointList3D") ? 3 : 2;
    }

    Chain chain() {
        List<Piece> pieces = new ArrayList<>();
        if (curve.value("Segments") instanceof StepValue.ListOf segments) {
            for (StepValue segment : segments.items()) {
                add(segment, pieces);
            }
        } else {
            for (int i = 1; i < coordinates.length / dimensions; i++) {
                pieces.add(Piece.straight(at(i), at(i + 1), 1));
            }
        }
        return new Chain(pieces);
    }

    private void add(StepValue segment, List<Piece> pieces) {
        if (!(segment instanceof StepValue.Typed typed && typed.value() instanceof StepValue.ListOf list)) {
            throw new ShapeException("A segment of " + curve.label() + " is neither a line nor an arc.");
        }
        int[] indices = list.items().stream().mapToInt(IndexedCurve::index).toArray();
        if (typed.keyword().equals("IFCARCINDEX")) {
            if (indices.length != 3) {
                throw new ShapeException("An arc of " + curve.label() + " does not have three points.");
            }
            arc(at(indices[0]), at(indices[1]), at(indices[2]), pieces);
            return;
        }
        for (int i = 1; i < indices.length; i++) {
            pieces.add(Piece.straight(at(indices[i - 1]), at(indices[i]), 1));
        }
    }

    /** Three points on a line are a polyline, as the standard says. */
    private static void arc(Vector3D a, Vector3D b, Vector3D c, List<Piece> pieces) {
        Conic circle = Conic.through(a, b, c).orElse(null);
        if (circle == null) {
            pieces.add(Piece.straight(a, b, 0.5));
            pieces.add(Piece.straight(b, c, 0.5));
            return;
        }
        double angle = circle.nearest(c);
        pieces.add(new Piece(circle, 0, angle > 0 ? angle : angle + Conic.TURN, 1));
    }

    private static int index(StepValue value) {
        return value instanceof StepValue.Whole whole ? Math.toIntExact(whole.value()) : 0;
    }

    private Vector3D at(int index) {
        int i = dimensions * (index - 1);
        if (index < 1 || i + dimensions > coordinates.length) {
            throw new ShapeException(
                    "The curve " + curve.label() + " names point " + index + ", which is not in its list.");
        }
        return Vector3D.of(coordinates[i], coordinates[i + 1], dimensions > 2 ? coordinates[i + 2] : 0);
    }
}
