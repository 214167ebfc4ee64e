package runtrue.roof.skin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.RoofTolerance;
import runtrue.roof.flat.Overlays;
import runtrue.shape.Tolerances;

/** Takes away what lies under another face of the same element: inner layers, rebates, ceilings. */
final class HiddenFaces {
    private static final GeometryFactory PLAN = new GeometryFactory();

    /** Deeper than any build-up: what is farther below is roof of its own, as under the eaves of a dormer. */
    private static final double DEEPEST_BUILD_UP = RoofTolerance.DEEPEST_BUILD_UP.si();

    /** A face covered this far, however high above, is inside the roof: a ceiling, the floor of a loft. */
    private static final double MOSTLY = RoofTolerance.COVERED.si();

    private HiddenFaces() {}

    static List<SkinFace> removeFrom(List<SkinFace> faces, Tolerances tolerances) {
        if (faces.size() < 2) {
            return faces;
        }
        List<Polygon> plans = faces.stream().map(HiddenFaces::plan).toList();
        List<SkinFace> seen = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            double area = plans.get(i).getArea();
            Geometry left = uncovered(faces, plans, i, Double.POSITIVE_INFINITY, tolerances);
            if (left.getArea() < area && left.getArea() > (1 - MOSTLY) * area) {
                left = uncovered(faces, plans, i, DEEPEST_BUILD_UP, tolerances);
            }
            addWhatIsLeft(seen, faces.get(i), left.getArea() < area, left, tolerances);
        }
        return seen;
    }

    /** A face's plan without what other faces cover from less than a height above it. */
    private static Geometry uncovered(
            List<SkinFace> faces, List<Polygon> plans, int i, double height, Tolerances tolerances) {
        Geometry left = plans.get(i);
        for (int k = 0; k < faces.size() && !left.isEmpty(); k++) {
            if (k != i && covers(faces.get(k), plans.get(k), faces.get(i), left, height, tolerances)) {
                left = Overlays.difference(left, plans.get(k));
            }
        }
        return left;
    }

    private static void addWhatIsLeft(
            List<SkinFace> seen, SkinFace face, boolean touched, Geometry left, Tolerances tolerances) {
        if (!touched) {
            seen.add(face);
            return;
        }
        for (int i = 0; i < left.getNumGeometries(); i++) {
            if (left.getGeometryN(i) instanceof Polygon polygon
                    && polygon.getArea() / face.normal().getZ() > tolerances.sliver()) {
                seen.add(lifted(face, polygon));
            }
        }
    }

    private static boolean covers(
            SkinFace upper, Polygon upperPlan, SkinFace lower, Geometry left, double height, Tolerances tolerances) {
        if (!upperPlan.getEnvelopeInternal().intersects(left.getEnvelopeInternal())) {
            return false;
        }
        Geometry common = Overlays.intersection(left, upperPlan);
        if (common.getArea() < tolerances.sliver() * 0.1) {
            return false;
        }
        Coordinate inside = common.getInteriorPoint().getCoordinate();
        double above = height(upper, inside) - height(lower, inside);
        return above > tolerances.plane() && above < height;
    }

    /** z of the face's plane above a point of the plan. */
    private static double height(SkinFace face, Coordinate at) {
        Vector3D n = face.normal();
        Vector3D p = face.outline().get(0);
        return p.getZ() - (n.getX() * (at.x - p.getX()) + n.getY() * (at.y - p.getY())) / n.getZ();
    }

    private static Polygon plan(SkinFace face) {
        LinearRing[] holes = face.holes().stream().map(HiddenFaces::ring).toArray(LinearRing[]::new);
        return PLAN.createPolygon(ring(face.outline()), holes);
    }

    private static LinearRing ring(List<Vector3D> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vector3D p = points.get(i % points.size());
            ring[i] = new Coordinate(p.getX(), p.getY());
        }
        return PLAN.createLinearRing(ring);
    }

    private static SkinFace lifted(SkinFace face, Polygon plan) {
        List<List<Vector3D>> holes = new ArrayList<>();
        for (int i = 0; i < plan.getNumInteriorRing(); i++) {
            holes.add(lifted(face, plan.getInteriorRingN(i).getCoordinates(), false));
        }
        return new SkinFace(
                face.source(),
                face.normal(),
                lifted(face, plan.getExteriorRing().getCoordinates(), true),
                holes,
                face.thickness(),
                face.remark());
    }

    private static List<Vector3D> lifted(SkinFace face, Coordinate[] ring, boolean counterClockwise) {
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(Vector3D.of(ring[i].x, ring[i].y, height(face, ring[i])));
        }
        if (PlanarArea.vector(points).getZ() > 0 != counterClockwise) {
            Collections.reverse(points);
        }
        return points;
    }
}
