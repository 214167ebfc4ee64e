package runtrue.shape.usage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/** The areas that closed curves bound in the element's xy plane, or one parallel to it. */
final class FootPrint {
    /** Ends of curves are rounded each by itself: they meet within so many points' tolerances. */
    private static final double SAME_POINTS = 100;

    private FootPrint() {}

    /**
     * An outline with its holes.
     *
     * @param z of its plane, file units
     */
    record Area(Profile profile, double z) {}

    private record Bound(Ring ring, double z) {}

    /** Curves within another one are holes of it, curves within holes areas again; open curves bound nothing. */
    static List<Area> areas(ReferenceCurves curves, Making making) {
        List<Bound> bounds = new ArrayList<>();
        for (ReferenceCurves.Placed placed : curves.curves()) {
            if (placed.chain().closed(SAME_POINTS * making.fineness().point())) {
                bounds.add(bound(placed, making));
            }
        }
        if (bounds.isEmpty()) {
            throw new ShapeException("none of its curves (" + curves.label() + ") closes, so that they bound no area");
        }
        bounds.sort(Comparator.comparingDouble(b -> -Math.abs(b.ring().signedArea())));
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < bounds.size(); i++) {
            if (around(bounds, i).size() % 2 == 0) {
                areas.add(new Area(
                        new Profile(curves.label(), bounds.get(i).ring(), holes(bounds, i)),
                        bounds.get(i).z()));
            }
        }
        return areas;
    }

    private static List<Ring> holes(List<Bound> bounds, int outer) {
        int depth = around(bounds, outer).size();
        List<Ring> holes = new ArrayList<>();
        for (int i = outer + 1; i < bounds.size(); i++) {
            List<Integer> around = around(bounds, i);
            if (around.size() == depth + 1 && around.contains(outer)) {
                holes.add(bounds.get(i).ring());
            }
        }
        return holes;
    }

    /** Numbers of the greater curves that lie around one. */
    private static List<Integer> around(List<Bound> bounds, int inner) {
        Ring ring = bounds.get(inner).ring();
        List<Integer> around = new ArrayList<>();
        for (int i = 0; i < inner; i++) {
            if (bounds.get(i).ring().within(ring.x(0), ring.y(0))) {
                around.add(i);
            }
        }
        return around;
    }

    private static Bound bound(ReferenceCurves.Placed placed, Making making) {
        List<Vector3D> points = placed.chain().points(making.fineness());
        double low = points.stream().mapToDouble(Vector3D::getZ).min().orElse(0);
        double high = points.stream().mapToDouble(Vector3D::getZ).max().orElse(0);
        if (high - low > making.inFileUnits(making.tolerances().plane())) {
            throw new ShapeException("its curve " + placed.curve().label()
                    + " does not lie parallel to the element's xy plane, square to which layers are stacked");
        }
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getX();
            xy[2 * i + 1] = points.get(i).getY();
        }
        Ring ring = Ring.of(xy, making.fineness().point());
        if (ring.size() < 3 || ring.signedArea() == 0) {
            throw new ShapeException("its curve " + placed.curve().label() + " encloses no area");
        }
        return new Bound(ring, 0.5 * (low + high));
    }
}
