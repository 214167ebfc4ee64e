package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/**
 * IfcOffsetCurve2D and 3D: a curve moved sideways by a distance, at corners to where both sides meet. The side is that of
 * the reference direction times the direction of travel: in a plane, the left.
 */
final class Offsets {
    /** Corners that turn back more sharply than this cosine of half the turn run off to a spike. */
    private static final double LEAST_COSINE = 0.05;

    private Offsets() {}

    /** The offset chain as straight pieces; its own chord tolerance is the fineness at the distance. */
    static Chain of(IfcEntity curve, Chain basis, Fineness fineness) {
        double distance = curve.real("Distance");
        Vector3D reference =
                curve.has("RefDirection") ? Places.direction(curve.ref("RefDirection")) : Vector3D.Unit.PLUS_Z;
        Track track = basis.track(fineness.carrying(Math.abs(distance)));
        List<Vector3D> moved = new ArrayList<>(track.stations().size() + 1);
        for (Station station : track.stations()) {
            moved.add(station.point().add(side(curve, station, reference).multiply(distance)));
        }
        if (track.closed()) {
            moved.add(moved.get(0));
        }
        return Chain.polyline(moved);
    }

    private static Vector3D side(IfcEntity curve, Station station, Vector3D reference) {
        Vector3D before = across(curve, reference, station.before());
        Vector3D after = across(curve, reference, station.after());
        Vector3D middle = before.add(after);
        double square = middle.normSq();
        if (!(Math.sqrt(square) > 2 * LEAST_COSINE)) {
            throw new ShapeException("The basis of the offset curve " + curve.label() + " turns back on itself.");
        }
        return middle.multiply(2 / square);
    }

    private static Vector3D across(IfcEntity curve, Vector3D reference, Vector3D direction) {
        Vector3D side = reference.cross(direction);
        if (!(side.norm() > LEAST_COSINE)) {
            throw new ShapeException("The offset curve " + curve.label() + " runs along its reference direction.");
        }
        return side.normalize();
    }
}
