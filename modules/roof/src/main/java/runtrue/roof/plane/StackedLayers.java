package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofTolerance;
import runtrue.roof.flat.Overlays;
import runtrue.shape.Tolerances;

/**
 * Layers stacked on each other (sheet, insulation, deck; a roof with a body of its own and parts with theirs) are one
 * plane, the outermost: what lies under another, parallel or nearly so (tapered insulation), and nearer than a build-up is deep, is no roof of its own.
 */
final class StackedLayers {
    /** Deeper than any build-up of this trade; two roofs one above the other stand farther apart. */
    private static final double DEEPEST_BUILD_UP = RoofTolerance.DEEPEST_BUILD_UP.si();

    /** Layers of tapered insulation lie no steeper to each other than this. */
    private static final double GREATEST_TAPER = RoofTolerance.TAPER.si();

    /** A lower layer that is covered this far is a layer; what sticks out of it narrowly is its edge. */
    private static final double MOSTLY = RoofTolerance.COVERED.si();

    /** Half the width in metres below which what sticks out is an edge; wider, it is roof of its own. */
    private static final double HALF_RIM = RoofTolerance.LAYER_RIM.si() / 2;

    /** An opening that takes no more than this share of a part has only rounded it. */
    private static final double ROUNDING = 1e-4;

    private final Tolerances tolerances;

    StackedLayers(Tolerances tolerances) {
        this.tolerances = tolerances;
    }

    /** The planes that remain; those left out are told to {@code hidden}. */
    List<JoinedPlane> outermost(List<JoinedPlane> planes, Consumer<JoinedPlane> hidden) {
        List<JoinedPlane> kept = new ArrayList<>();
        for (JoinedPlane plane : planes) {
            Geometry left = plane.outline();
            for (JoinedPlane upper : planes) {
                // A plane is not above itself: the distance would have to be more than nothing.
                if (isAbove(upper, plane)) {
                    left = Overlays.difference(left, moved(upper, plane.frame()));
                } else if (isTilted(upper, plane)) {
                    left = withoutTilted(left, upper, plane);
                }
            }
            if (left.getArea() > (1 - 1e-6) * plane.outline().getArea()) {
                kept.add(plane);
                continue;
            }
            boolean layer = left.getArea() < (1 - MOSTLY) * plane.outline().getArea();
            List<Polygon> parts = layer ? withoutRims(left) : Outlines.polygons(left);
            parts.removeIf(part -> part.getArea() <= tolerances.sliver());
            if (layer && parts.isEmpty()) {
                hidden.accept(plane);
            }
            parts.forEach(part -> kept.add(new JoinedPlane(plane.frame(), part, plane.faces())));
        }
        return kept;
    }

    /** What is left of a layer where it is wide enough to be roof; a part that loses nothing keeps its corners as they are. */
    private static List<Polygon> withoutRims(Geometry left) {
        List<Polygon> wide = new ArrayList<>();
        for (Polygon part : Outlines.polygons(left)) {
            List<Polygon> opened = Outlines.opened(part, HALF_RIM);
            double area = opened.stream().mapToDouble(Polygon::getArea).sum();
            if (area > (1 - ROUNDING) * part.getArea()) {
                wide.add(part);
            } else {
                wide.addAll(opened);
            }
        }
        return wide;
    }

    /** Whether two planes differ by no more than the layers of tapered insulation do, but by more than rounding. */
    private boolean isTilted(JoinedPlane upper, JoinedPlane lower) {
        double angle = upper.frame().normal().angle(lower.frame().normal());
        return angle > 2 * tolerances.angle() && angle < GREATEST_TAPER;
    }

    /** What is left beside a tilted layer, if that lies above all that it covers, within a build-up's depth. */
    private Geometry withoutTilted(Geometry left, JoinedPlane upper, JoinedPlane lower) {
        Geometry over = moved(upper, lower.frame());
        if (!over.getEnvelopeInternal().intersects(left.getEnvelopeInternal())) {
            return left;
        }
        Geometry common = Overlays.intersection(left, over);
        if (common.getArea() <= tolerances.sliver()) {
            return left;
        }
        boolean above = height(upper, lower, common.getInteriorPoint().getCoordinate()) > tolerances.plane();
        for (Coordinate corner : common.getCoordinates()) {
            double height = height(upper, lower, corner);
            above &= height > -tolerances.plane() && height < DEEPEST_BUILD_UP;
        }
        return above ? Overlays.difference(left, over) : left;
    }

    private static double height(JoinedPlane upper, JoinedPlane lower, Coordinate at) {
        return -upper.frame().w(lower.frame().at(at.x, at.y));
    }

    private boolean isAbove(JoinedPlane upper, JoinedPlane lower) {
        if (upper.frame().normal().dot(lower.frame().normal()) < Math.cos(2 * tolerances.angle())) {
            return false;
        }
        Coordinate middle = lower.outline().getEnvelopeInternal().centre();
        double distance = -upper.frame().w(lower.frame().at(middle.x, middle.y));
        return distance > tolerances.plane() && distance < DEEPEST_BUILD_UP;
    }

    private static Geometry moved(JoinedPlane plane, PlaneFrame into) {
        Geometry copy = plane.outline().copy();
        PlaneFrame own = plane.frame();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int i) {
                var p = own.at(points.getX(i), points.getY(i));
                points.setOrdinate(i, CoordinateSequence.X, into.u(p));
                points.setOrdinate(i, CoordinateSequence.Y, into.v(p));
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return copy;
    }
}
