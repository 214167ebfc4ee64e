package runtrue.roof.support;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.flat.Overlays;
import runtrue.shape.Face;

/** Recognises a deck: upward faces parallel to a plane and near below it that lie under most of it. */
final class Decks {
    private static final double MOSTLY = RoofTolerance.COVERED.si();
    private static final double PARALLEL = Math.cos(RoofTolerance.SUPPORT_PARALLEL.si());
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Decks() {}

    /** Whether layers of the roof or slabs carry the plane; its own elements do not count. */
    static boolean lies(RoofPlane plane, List<ReadElement> layers, List<ReadElement> slabs, RoofSettings settings) {
        List<Polygon> covers = new ArrayList<>();
        layers.forEach(l -> addTops(l, plane.frame(), settings, covers));
        slabs.forEach(s -> addTops(s, plane.frame(), settings, covers));
        if (covers.isEmpty()) {
            return false;
        }
        double covered =
                Overlays.intersection(plane.outline(), Overlays.union(covers)).getArea();
        return covered > MOSTLY * plane.outline().getArea();
    }

    private static void addTops(ReadElement e, PlaneFrame frame, RoofSettings settings, List<Polygon> to) {
        double touching = settings.tolerances().plane();
        for (Face face : e.body().faces()) {
            double w = frame.w(face.outline().get(0));
            if (face.normal().dot(frame.normal()) > PARALLEL && w < -touching && w > -settings.reach()) {
                to.add(polygon(face.outline(), frame));
            }
        }
    }

    private static Polygon polygon(List<Vector3D> outline, PlaneFrame frame) {
        Coordinate[] ring = new Coordinate[outline.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vector3D p = outline.get(i % outline.size());
            ring[i] = new Coordinate(frame.u(p), frame.v(p));
        }
        return FACTORY.createPolygon(ring);
    }
}
