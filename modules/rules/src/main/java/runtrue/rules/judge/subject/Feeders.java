package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;
import runtrue.roof.plane.Outlines;
import runtrue.rules.judge.subject.Drainage.Feeder;

/** The roofs whose low edges lie over a plane, of all planes of a drop. */
public final class Feeders {
    /** Water leaves a roof's edge and falls about this far from it. */
    private static final double BEYOND = 0.1;

    /** A roof that ends less above another is one with it, as far as water goes. */
    private static final double LEAST_DROP = 0.1;

    private static final Set<EdgeKind> LOW = Set.of(EdgeKind.EAVE, EdgeKind.STEP);

    private final List<Below> planes;
    private final Map<String, List<Feeder>> found = new HashMap<>();

    /** A plane with its outline, penetrations left out. */
    private record Below(PlaneLayout layout, Polygon shell) {
        /** z of the plane under a point; empty where it does not reach there. */
        Optional<Double> height(Vector3D point) {
            return under(layout.plane(), point)
                    .filter(c -> shell.getEnvelopeInternal().contains(c)
                            && shell.contains(shell.getFactory().createPoint(c)))
                    .map(c -> layout.plane().at(c.x, c.y).getZ());
        }
    }

    public Feeders(Roof roof) {
        planes = roof.planes().stream()
                .map(l -> new Below(l, Outlines.shell(l.plane().outline())))
                .toList();
        for (RoofEdge edge : roof.edges()) {
            if (LOW.contains(edge.kind())) {
                planes.stream()
                        .filter(p -> edge.planes().contains(p.layout().plane().id()))
                        .forEach(p -> feed(p, edge));
            }
        }
    }

    List<Feeder> of(String plane) {
        return found.getOrDefault(plane, List.of());
    }

    private void feed(Below upper, RoofEdge edge) {
        RoofPlane plane = upper.layout().plane();
        Vector3D middle = edge.from().add(edge.to()).multiply(0.5);
        PlaneFrame frame = plane.frameNear(middle);
        Vector3D fall = frame.up().getZ() < 0 ? frame.up() : frame.up().negate();
        Vector3D beyond = middle.add(Drainage.level(fall).multiply(BEYOND));
        // At a head water runs away from the edge, and beside a verge along it: a little down the fall is the plane
        // itself.
        Point there = upper.shell().getFactory().createPoint(new Coordinate(plane.u(beyond), plane.v(beyond)));
        if (upper.shell().distance(there) > BEYOND / 3) {
            highestBelow(beyond, plane).ifPresent(lower -> add(upper.layout(), edge, lower, beyond));
        }
    }

    private void add(PlaneLayout upper, RoofEdge edge, PlaneLayout lower, Vector3D beyond) {
        Optional<Coordinate> from = under(lower.plane(), edge.from());
        Optional<Coordinate> to = under(lower.plane(), edge.to());
        if (from.isPresent() && to.isPresent()) {
            found.computeIfAbsent(lower.plane().id(), id -> new ArrayList<>())
                    .add(new Feeder(
                            upper,
                            Drainage.between(from.get().x, to.get().x),
                            under(lower.plane(), beyond).map(c -> c.y).orElse(0.0),
                            longest(upper)));
        }
    }

    /** The plane that what falls there falls on. */
    private Optional<PlaneLayout> highestBelow(Vector3D point, RoofPlane from) {
        PlaneLayout highest = null;
        double level = Double.NEGATIVE_INFINITY;
        for (Below below : planes) {
            double z = below.layout().plane().id().equals(from.id())
                    ? Double.NEGATIVE_INFINITY
                    : below.height(point).orElse(Double.NEGATIVE_INFINITY);
            if (z > level && z < point.getZ() - LEAST_DROP) {
                highest = below.layout();
                level = z;
            }
        }
        return Optional.ofNullable(highest);
    }

    /** u, v of the plane or its extension plumb under or over a point; empty of upright planes. */
    private static Optional<Coordinate> under(RoofPlane plane, Vector3D point) {
        if (plane.curve().isPresent()) {
            return Optional.of(plane.curve().get().below(point.getX(), point.getY()));
        }
        PlaneFrame frame = plane.frame();
        if (frame.normal().getZ() <= 0) {
            return Optional.empty();
        }
        Vector3D there =
                point.subtract(Vector3D.of(0, 0, frame.w(point) / frame.normal().getZ()));
        return Optional.of(new Coordinate(frame.u(there), frame.v(there)));
    }

    private static Slope longest(PlaneLayout upper) {
        return upper.sheets().stream()
                .max(Comparator.comparingDouble(Sheet::length))
                .map(s -> Slope.of(
                        upper.plane(),
                        (s.u().from() + s.u().to()) / 2,
                        new Interval(s.v().from(), s.v().from() + s.length())))
                .orElse(Slope.NONE);
    }
}
