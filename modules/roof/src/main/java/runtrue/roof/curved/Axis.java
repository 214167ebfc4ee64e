package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/**
 * The direction in which facets are not curved: that in which most length of their edges runs, or, where more of their
 * area lies along it, the one that is nearest to square to their normals (meshes of triangles have few edges along it).
 */
final class Axis {
    private static final double SAME_WAY = Math.cos(RoofTolerance.FACETS_ALONG.si());
    private static final double OUT_OF_WAY = Math.sin(RoofTolerance.FACETS_ALONG.si());

    private Axis() {}

    /** Unit length. */
    static Vector3D of(List<RoofPlane> facets) {
        Vector3D byEdges = ofEdges(facets);
        return ofNormals(facets, byEdges)
                .filter(a -> areaAlong(a, facets) > areaAlong(byEdges, facets) * 1.000001)
                .orElse(byEdges);
    }

    /** Area of the facets that run along an axis, square metres. */
    static double areaAlong(Vector3D axis, List<RoofPlane> facets) {
        return facets.stream()
                .filter(f -> runsAlong(axis, f))
                .mapToDouble(RoofPlane::area)
                .sum();
    }

    /** Near another direction; least squares of the facets' areas times the sine of their skew. */
    private static Optional<Vector3D> ofNormals(List<RoofPlane> facets, Vector3D near) {
        Vector3D a = near.orthogonal();
        Vector3D b = near.cross(a);
        LeastSquares equations = new LeastSquares(2);
        for (RoofPlane facet : facets) {
            Vector3D n = facet.frame().normal().multiply(Math.sqrt(facet.area()));
            equations.add(n.dot(a), n.dot(b), -n.dot(near));
        }
        return equations
                .solve()
                .map(x -> near.add(a.multiply(x[0])).add(b.multiply(x[1])).normalize());
    }

    private static Vector3D ofEdges(List<RoofPlane> facets) {
        List<Vector3D> sums = new ArrayList<>();
        for (RoofPlane facet : facets) {
            Coordinate[] ring = facet.outline().getExteriorRing().getCoordinates();
            for (int i = 0; i + 1 < ring.length; i++) {
                add(sums, facet.at(ring[i + 1].x, ring[i + 1].y).subtract(facet.at(ring[i].x, ring[i].y)));
            }
        }
        Vector3D longest = sums.get(0);
        for (Vector3D sum : sums) {
            // Later ones must be longer by more than rounding, so that the choice does not hang on it.
            longest = sum.norm() > longest.norm() * 1.000001 ? sum : longest;
        }
        return longest.normalize();
    }

    private static void add(List<Vector3D> sums, Vector3D edge) {
        for (int i = 0; i < sums.size(); i++) {
            double cosine = sums.get(i).normalize().dot(edge) / edge.norm();
            if (Math.abs(cosine) > SAME_WAY) {
                sums.set(i, sums.get(i).add(edge.multiply(Math.signum(cosine))));
                return;
            }
        }
        sums.add(edge);
    }

    /** Whether a facet runs along the axis: its normal is square to it. */
    static boolean runsAlong(Vector3D axis, RoofPlane facet) {
        return Math.abs(facet.frame().normal().dot(axis)) < OUT_OF_WAY;
    }
}
