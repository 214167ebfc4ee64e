package runtrue.roof.curved;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/** Says what kind of curved roof facets make that are not curved one way only, along one axis. */
public final class Surfaces {
    private static final double ALIKE = RoofTolerance.FACETS_ALONG.si();
    private static final double CIRCLE = RoofTolerance.CIRCLE.si();

    private Surfaces() {}

    /** A reason for setting the facets aside: their number, area, kind of surface and range of pitch. */
    public static String describe(List<RoofPlane> facets) {
        return String.format(
                Locale.ROOT,
                "curved roof of %d facets, together about %.1f m2, %s, falling at %.1f to %.1f degrees: it has no single"
                        + " fall and cannot be unrolled along one axis, so its sheets are not laid out; have them set out by whoever forms them",
                facets.size(),
                facets.stream().mapToDouble(RoofPlane::area).sum(),
                kind(facets),
                Math.toDegrees(
                        facets.stream().mapToDouble(RoofPlane::pitch).min().orElseThrow()),
                Math.toDegrees(
                        facets.stream().mapToDouble(RoofPlane::pitch).max().orElseThrow()));
    }

    private static String kind(List<RoofPlane> facets) {
        if (isConical(facets)) {
            return "conical";
        }
        OptionalDouble dome = domeRadius(facets);
        return dome.isPresent()
                ? String.format(Locale.ROOT, "a dome of %.2f m radius", dome.getAsDouble())
                : "curved both ways";
    }

    /** Normals of a cone make one angle with its axis: n . a = 1 for some vector a. */
    private static boolean isConical(List<RoofPlane> facets) {
        LeastSquares equations = new LeastSquares(3);
        for (RoofPlane facet : facets) {
            Vector3D n = facet.frame().normal();
            equations.add(n.getX(), n.getY(), n.getZ(), 1);
        }
        return equations
                .solve()
                .map(x -> Vector3D.of(x[0], x[1], x[2]))
                .filter(a -> {
                    double mean = Math.acos(Math.min(1, 1 / a.norm()));
                    return facets.stream()
                            .allMatch(f -> Math.abs(f.frame().normal().angle(a) - mean) < ALIKE);
                })
                .isPresent();
    }

    /** Radius of the sphere that all corners lie on, if they do: least squares of |p|2 = 2 p . c + k, near the corners' mean. */
    private static OptionalDouble domeRadius(List<RoofPlane> facets) {
        List<Vector3D> corners = facets.stream()
                .flatMap(f -> f.lift(f.outline().getExteriorRing()).stream())
                .toList();
        Vector3D sum = corners.stream().reduce(Vector3D.ZERO, Vector3D::add);
        Vector3D mean = sum.multiply(1.0 / corners.size());
        LeastSquares equations = new LeastSquares(4);
        for (Vector3D corner : corners) {
            Vector3D p = corner.subtract(mean);
            equations.add(2 * p.getX(), 2 * p.getY(), 2 * p.getZ(), 1, p.normSq());
        }
        return equations.solve().stream()
                .mapToDouble(x -> {
                    Vector3D centre = Vector3D.of(x[0], x[1], x[2]);
                    double radius = Math.sqrt(Math.max(0, x[3] + centre.normSq()));
                    boolean on = corners.stream()
                            .allMatch(p -> Math.abs(p.subtract(mean).distance(centre) - radius) < CIRCLE);
                    return on ? radius : Double.NaN;
                })
                .filter(Double::isFinite)
                .findFirst();
    }
}
