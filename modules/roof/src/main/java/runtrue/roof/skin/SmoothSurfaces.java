package runtrue.roof.skin;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Tolerances;

/**
 * Upward faces, and into which others each goes on by a slight fold, as the facets of a curved roof do. A facet by itself
 * may be narrower than its slab is thick; the surface that it is a part of is wider than any cut edge.
 */
final class SmoothSurfaces {
    private static final double SHARED = RoofTolerance.FACET_JOINT.si();
    private static final double SLIGHT = Math.cos(RoofTolerance.FOLD_OF_CURVE.si());

    /** Part of the shorter of two edges that they must have in common. */
    private static final double COMMON = 0.5;

    private final STRtree inPlan = new STRtree();
    private final double bent;

    SmoothSurfaces(List<SkinFace> faces, Tolerances tolerances) {
        bent = Math.cos(tolerances.angle());
        faces.forEach(f -> inPlan.insert(extent(f), f));
        inPlan.build();
    }

    private static Envelope extent(SkinFace face) {
        Envelope extent = new Envelope();
        face.outline().forEach(p -> extent.expandToInclude(p.getX(), p.getY()));
        extent.expandBy(SHARED);
        return extent;
    }

    /** Area of the surface that a face is a part of, square metres; counted no further than to what is enough. */
    double area(SkinFace face, double enough) {
        Set<SkinFace> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<SkinFace> open = new ArrayDeque<>(List.of(face));
        seen.add(face);
        double area = 0;
        while (!open.isEmpty() && area < enough) {
            SkinFace next = open.remove();
            area += PlanarArea.vector(next.outline()).norm();
            beside(next).stream().filter(seen::add).forEach(open::add);
        }
        return Math.min(area, enough);
    }

    private List<SkinFace> beside(SkinFace face) {
        List<SkinFace> beside = new ArrayList<>();
        for (Object near : inPlan.query(extent(face))) {
            SkinFace other = (SkinFace) near;
            double cosine = face.normal().dot(other.normal());
            if (cosine < bent && cosine > SLIGHT && adjoin(face.outline(), other.outline())) {
                beside.add(other);
            }
        }
        return beside;
    }

    private static boolean adjoin(List<Vector3D> ring, List<Vector3D> other) {
        for (int i = 0; i < ring.size(); i++) {
            for (int k = 0; k < other.size(); k++) {
                Vector3D to = ring.get((i + 1) % ring.size());
                if (coincide(ring.get(i), to, other.get(k), other.get((k + 1) % other.size()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether two edges run along each other the opposite way, as rings do that lie on either side of an edge. */
    private static boolean coincide(Vector3D from, Vector3D to, Vector3D otherFrom, Vector3D otherTo) {
        Vector3D along = to.subtract(from);
        double length = along.norm();
        double least = COMMON * Math.min(length, otherFrom.distance(otherTo));
        if (least < SHARED) {
            return false;
        }
        Vector3D way = along.normalize();
        double start = Math.max(0, otherTo.subtract(from).dot(way));
        double end = Math.min(length, otherFrom.subtract(from).dot(way));
        return end - start > least
                && otherFrom.subtract(from).cross(way).norm() < SHARED
                && otherTo.subtract(from).cross(way).norm() < SHARED;
    }
}
