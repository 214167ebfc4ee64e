package runtrue.roof.skin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Sweep;

/**
 * Sheets modelled with their real ribs: a folded section swept along the fall. The roof's plane is then spanned by the
 * sweep and by the line that the pans rest on, not by any one of the many narrow faces.
 */
final class RibbedSheet {
    /** A folded sheet fills little of the box around its section; a plank or slab fills most of it. */
    private static final double GREATEST_FILL = RoofTolerance.RIB_FILL.si();

    /** Ribs are low against the width of a sheet. */
    private static final double GREATEST_HEIGHT = RoofTolerance.RIB_HEIGHT.si();

    /** At least this share of the width rests on the common underside: pans do, the foot points of a vault do not. */
    private static final double LEAST_PANS = RoofTolerance.RIB_PANS.si();

    private static final double ON_LINE = 1e-3;

    private RibbedSheet() {}

    /**
     * The plane of a ribbed sheet; empty when the element is none.
     *
     * @param angle within which directions are the same, radians
     */
    static Optional<SkinFace> skin(ReadElement element, double angle) {
        Optional<Sweep> written = element.body().sweep();
        if (written.isPresent()) {
            return skin(element, written.get(), "ribbed sheet: plane through the underside of its pans");
        }
        return PrismSweep.of(element.body().faces(), angle)
                .flatMap(sweep -> skin(
                        element,
                        sweep,
                        "ribbed sheet modelled by its faces: plane through the underside of its pans, along its ribs"));
    }

    private static Optional<SkinFace> skin(ReadElement element, Sweep sweep, String remark) {
        Vector3D level = sweep.path().cross(Vector3D.Unit.PLUS_Z);
        if (level.norm() < 1e-6 * sweep.path().norm() || sweep.section().size() < 8) {
            return Optional.empty();
        }
        Vector3D across = level.normalize();
        Vector3D over = across.cross(sweep.path().normalize());
        List<Coordinate> section = new ArrayList<>();
        for (Vector3D p : sweep.section()) {
            section.add(new Coordinate(p.dot(across), p.dot(over)));
        }
        return isFolded(section)
                ? restingLine(section).map(line -> face(element, sweep, across, over, line, section, remark))
                : Optional.empty();
    }

    private static boolean isFolded(List<Coordinate> section) {
        double width = extent(section, true);
        double height = extent(section, false);
        double fill = Math.abs(area(section)) / (width * height);
        return height > 5e-3 && height < GREATEST_HEIGHT * width && fill < GREATEST_FILL;
    }

    /** The lowest edge of the section's hull, if pans lie on it. */
    private static Optional<Coordinate[]> restingLine(List<Coordinate> section) {
        Coordinate[] hull = new ConvexHull(section.toArray(Coordinate[]::new), new GeometryFactory())
                .getConvexHull()
                .getCoordinates();
        double middle = Arrays.stream(hull).mapToDouble(c -> c.y).average().orElseThrow();
        Coordinate[] longest = {};
        double length = 0;
        for (int i = 0; i + 1 < hull.length; i++) {
            Coordinate left = hull[i].x < hull[i + 1].x ? hull[i] : hull[i + 1];
            Coordinate right = hull[i].x < hull[i + 1].x ? hull[i + 1] : hull[i];
            boolean below = (left.y + right.y) / 2 < middle;
            if (below && left.distance(right) > length) {
                length = left.distance(right);
                longest = new Coordinate[] {left, right};
            }
        }
        return longest.length == 2 && pans(section, longest) >= LEAST_PANS * extent(section, true)
                ? Optional.of(longest)
                : Optional.empty();
    }

    private static double pans(List<Coordinate> section, Coordinate[] line) {
        double sum = 0;
        for (int i = 0; i < section.size(); i++) {
            Coordinate a = section.get(i);
            Coordinate b = section.get((i + 1) % section.size());
            if (distance(a, line) < ON_LINE && distance(b, line) < ON_LINE) {
                sum += a.distance(b);
            }
        }
        return sum;
    }

    private static double distance(Coordinate p, Coordinate[] line) {
        return Distance.pointToLinePerpendicular(p, line[0], line[1]);
    }

    private static SkinFace face(
            ReadElement element,
            Sweep sweep,
            Vector3D across,
            Vector3D over,
            Coordinate[] line,
            List<Coordinate> section,
            String remark) {
        double dx = (line[1].x - line[0].x) / line[0].distance(line[1]);
        double dy = (line[1].y - line[0].y) / line[0].distance(line[1]);
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Coordinate p : section) {
            double along = (p.x - line[0].x) * dx + (p.y - line[0].y) * dy;
            from = Math.min(from, along);
            to = Math.max(to, along);
        }
        Vector3D path = sweep.path();
        Vector3D start = path.normalize().multiply(sweep.section().get(0).dot(path.normalize()));
        Vector3D direction = across.multiply(dx).add(over.multiply(dy));
        Vector3D base = start.add(across.multiply(line[0].x)).add(over.multiply(line[0].y));
        Vector3D a = base.add(direction.multiply(from));
        Vector3D b = base.add(direction.multiply(to));
        List<Vector3D> ring = new ArrayList<>(List.of(a, b, b.add(path), a.add(path)));
        Vector3D normal = PlanarArea.vector(ring).normalize();
        if (normal.getZ() < 0) {
            Collections.reverse(ring);
            normal = normal.negate();
        }
        return new SkinFace(element, normal, ring, List.of(), OptionalDouble.empty(), remark);
    }

    private static double extent(List<Coordinate> section, boolean x) {
        double low = section.stream().mapToDouble(c -> x ? c.x : c.y).min().orElseThrow();
        double high = section.stream().mapToDouble(c -> x ? c.x : c.y).max().orElseThrow();
        return high - low;
    }

    private static double area(List<Coordinate> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            Coordinate a = ring.get(i);
            Coordinate b = ring.get((i + 1) % ring.size());
            sum += a.x * b.y - b.x * a.y;
        }
        return sum / 2;
    }
}
