package runtrue.roof.above;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Surround;
import runtrue.roof.Surround.Role;
import runtrue.roof.plane.Outlines;
import runtrue.shape.Face;

/** Finds what stands on planes: bodies that begin a little above the skin, with their middle over the plane. */
public final class FixtureFinder {
    /** Clamps and rails lift a device off the skin by less than this. */
    private static final double OFF_THE_SKIN = RoofTolerance.FIXTURE_FOOT.si();

    /** Models are drawn roughly: feet stand this much in the sheet. */
    private static final double IN_THE_SKIN = RoofTolerance.SUPPORT_ABOVE.si();

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private FixtureFinder() {}

    /** In the order of the planes, then of the elements. */
    public static List<Fixture> find(List<RoofPlane> planes, Surround surround) {
        List<Fixture> found = new ArrayList<>();
        for (RoofPlane plane : planes) {
            Polygon shell = Outlines.shell(plane.outline());
            surround.within(Role.FIXTURE, where(plane, shell))
                    .forEach(thing -> on(plane, shell, thing).ifPresent(found::add));
        }
        return found;
    }

    /**
     * The box around the plane and what may stand on it; where the plane is flat, nothing that lies wholly below it either:
     * of a furnished building that is nearly all, and its bodies need not be read.
     */
    private static Surround.Where where(RoofPlane plane, Polygon shell) {
        Vector3D low = Vector3D.of(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        Vector3D high = low.negate();
        for (Vector3D p : plane.lift(shell.getExteriorRing())) {
            low = Vector3D.of(
                    Math.min(low.getX(), p.getX()), Math.min(low.getY(), p.getY()), Math.min(low.getZ(), p.getZ()));
            high = Vector3D.of(
                    Math.max(high.getX(), p.getX()), Math.max(high.getY(), p.getY()), Math.max(high.getZ(), p.getZ()));
        }
        Surround.Box around = new Surround.Box(low, high.add(Vector3D.of(0, 0, OFF_THE_SKIN)));
        if (plane.curve().isPresent()) {
            return around::overlaps;
        }
        Vector3D normal = plane.frame().normal();
        Vector3D origin = plane.frame().origin();
        return box -> around.overlaps(box) && box.along(normal, origin).to() >= -IN_THE_SKIN;
    }

    private static Optional<Fixture> on(RoofPlane plane, Polygon shell, ReadElement thing) {
        List<Vector3D> corners = thing.body().faces().stream()
                .map(Face::outline)
                .flatMap(List::stream)
                .toList();
        if (corners.isEmpty()) {
            return Optional.empty();
        }
        Envelope box = new Envelope();
        PlaneFrame frame = plane.frameNear(middle(corners));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vector3D p : corners) {
            box.expandToInclude(plane.u(p), plane.v(p));
            low = Math.min(low, frame.w(p));
            high = Math.max(high, frame.w(p));
        }
        Coordinate middle = box.centre();
        boolean above = low >= -IN_THE_SKIN && low <= OFF_THE_SKIN;
        return above && shell.contains(FACTORY.createPoint(middle))
                ? Optional.of(new Fixture(
                        plane.id(),
                        thing.element(),
                        new Interval(box.getMinX(), box.getMaxX()),
                        new Interval(box.getMinY(), box.getMaxY()),
                        new Interval(low, high)))
                : Optional.empty();
    }

    private static Vector3D middle(List<Vector3D> points) {
        Vector3D sum = Vector3D.ZERO;
        for (Vector3D p : points) {
            sum = sum.add(p);
        }
        return sum.multiply(1.0 / points.size());
    }
}
