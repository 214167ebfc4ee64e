package runtrue.roof.support;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Face;

/**
 * A straight member: its axis and the corners of its body, metres, moved by the drop origin.
 *
 * @param axis unit length, along the member
 */
public record Member(ReadElement element, Vector3D axis, List<Vector3D> corners, Vector3D low, Vector3D high) {
    /** How many times longer than wide a swept body must be for its sweep to be the axis: stubs and plates are not. */
    private static final double LEAST_SLENDERNESS = RoofTolerance.MEMBER_SLENDER.si();

    /** Edges within about a degree of each other run the same way. */
    private static final double SAME_WAY = Math.cos(RoofTolerance.MEMBER_EDGES.si());

    public Member {
        corners = List.copyOf(corners);
    }

    /** Empty when the body has no length to speak of. */
    public static Optional<Member> of(ReadElement element) {
        Set<Vector3D> corners = new LinkedHashSet<>();
        for (Face face : element.body().faces()) {
            corners.addAll(face.outline());
        }
        if (corners.size() < 4) {
            return Optional.empty();
        }
        List<Vector3D> points = new ArrayList<>(corners);
        return axis(element, points).map(a -> new Member(element, a, points, bound(points, -1), bound(points, 1)));
    }

    /** Middle of the box around it. */
    Vector3D middle() {
        return low.add(high).multiply(0.5);
    }

    private static Optional<Vector3D> axis(ReadElement element, List<Vector3D> corners) {
        Optional<Vector3D> swept = element.body()
                .sweep()
                .map(s -> s.path())
                .filter(p -> p.norm() > 0 && p.norm() > LEAST_SLENDERNESS * widthAround(corners, p.normalize()))
                .map(p -> (Vector3D) p.normalize());
        return swept.isPresent() ? swept : longestEdgeDirection(element.body().faces());
    }

    /** Greatest extent of the corners square to an axis, roughly: over two directions square to it and each other. */
    private static double widthAround(List<Vector3D> corners, Vector3D axis) {
        Vector3D a = axis.orthogonal();
        return Math.max(extent(corners, a), extent(corners, axis.cross(a)));
    }

    /** Greatest distance between two corners along a direction of unit length, metres. */
    public double extent(Vector3D direction) {
        return extent(corners, direction);
    }

    private static double extent(List<Vector3D> corners, Vector3D direction) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vector3D p : corners) {
            double d = p.dot(direction);
            low = Math.min(low, d);
            high = Math.max(high, d);
        }
        return high - low;
    }

    /** The direction in which most length of edge runs: the axis of any prism, whatever its section and end cuts. */
    private static Optional<Vector3D> longestEdgeDirection(List<Face> faces) {
        List<Vector3D> directions = new ArrayList<>();
        List<Double> lengths = new ArrayList<>();
        for (Face face : faces) {
            List<Vector3D> ring = face.outline();
            for (int i = 0; i < ring.size(); i++) {
                Vector3D edge = ring.get((i + 1) % ring.size()).subtract(ring.get(i));
                if (edge.norm() > 1e-6) {
                    add(directions, lengths, edge);
                }
            }
        }
        int best = -1;
        for (int i = 0; i < lengths.size(); i++) {
            // Later ones must be longer by more than rounding, so that the choice does not hang on it.
            if (best < 0 || lengths.get(i) > lengths.get(best) * 1.000001) {
                best = i;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(directions.get(best));
    }

    private static void add(List<Vector3D> directions, List<Double> lengths, Vector3D edge) {
        Vector3D way = edge.normalize();
        for (int i = 0; i < directions.size(); i++) {
            if (Math.abs(directions.get(i).dot(way)) > SAME_WAY) {
                lengths.set(i, lengths.get(i) + edge.norm());
                return;
            }
        }
        directions.add(way);
        lengths.add(edge.norm());
    }

    private static Vector3D bound(List<Vector3D> points, int side) {
        double x = points.stream().mapToDouble(p -> side * p.getX()).max().orElseThrow();
        double y = points.stream().mapToDouble(p -> side * p.getY()).max().orElseThrow();
        double z = points.stream().mapToDouble(p -> side * p.getZ()).max().orElseThrow();
        return Vector3D.of(side * x, side * y, side * z);
    }
}
