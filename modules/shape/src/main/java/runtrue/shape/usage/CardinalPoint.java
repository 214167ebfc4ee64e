package runtrue.shape.usage;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/**
 * The point of a section that lies on the member's axis, by the numbers of IfcCardinalPointReference (ISO 16739, since
 * IFC4): 1 to 9 on the box around the section, 10 to 14 by its centroid, 15 to 19 by its shear centre. One looks along the
 * axis, so that left is towards the profile's +x, and top towards its +y.
 */
enum CardinalPoint {
    BOTTOM_LEFT(1),
    BOTTOM_CENTRE(2),
    BOTTOM_RIGHT(3),
    MID_DEPTH_LEFT(4),
    MID_DEPTH_CENTRE(5),
    MID_DEPTH_RIGHT(6),
    TOP_LEFT(7),
    TOP_CENTRE(8),
    TOP_RIGHT(9),
    CENTROID(10),
    BOTTOM_BELOW_CENTROID(11),
    LEFT_OF_CENTROID(12),
    RIGHT_OF_CENTROID(13),
    TOP_ABOVE_CENTROID(14),
    SHEAR_CENTRE(15),
    BOTTOM_BELOW_SHEAR_CENTRE(16),
    LEFT_OF_SHEAR_CENTRE(17),
    RIGHT_OF_SHEAR_CENTRE(18),
    TOP_ABOVE_SHEAR_CENTRE(19);

    /** Sections with two axes of symmetry: their shear centre is their centroid. */
    private static final Set<String> DOUBLY_SYMMETRIC = Set.of(
            "IfcCircleHollowProfileDef",
            "IfcCircleProfileDef",
            "IfcEllipseProfileDef",
            "IfcIShapeProfileDef",
            "IfcRectangleHollowProfileDef",
            "IfcRectangleProfileDef",
            "IfcRoundedRectangleProfileDef");

    private final int number;

    CardinalPoint(int number) {
        this.number = number;
    }

    /** By its number; what other numbers mean is not laid down. */
    static CardinalPoint of(double number, IfcEntity usage) {
        return Arrays.stream(values())
                .filter(point -> point.number == number)
                .findFirst()
                .orElseThrow(() -> new ShapeException(String.format(
                        java.util.Locale.ROOT,
                        "its cardinal point %.0f (%s) is none of 1 to 19, so that it is not known how the profile lies",
                        number,
                        usage.label())));
    }

    /** For example {@code top centre}. */
    String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    /**
     * Where it is on a section.
     *
     * @param profiles parts of the section in its own axes; the place is in their units
     * @param section the profile that they were read from
     */
    Vector2D on(List<Profile> profiles, IfcEntity section) {
        boolean shear = number >= SHEAR_CENTRE.number;
        if (shear && !DOUBLY_SYMMETRIC.contains(section.type())) {
            throw new ShapeException("its profile " + section.label()
                    + " is set out by its shear centre, which is not worked out for this kind of profile");
        }
        Box box = Box.around(profiles);
        Vector2D middle = number > 9 ? centroid(profiles) : box.centre();
        return switch (this) {
            case BOTTOM_LEFT, MID_DEPTH_LEFT, TOP_LEFT -> Vector2D.of(box.right(), box.level(number));
            case BOTTOM_CENTRE, MID_DEPTH_CENTRE, TOP_CENTRE -> Vector2D.of(middle.getX(), box.level(number));
            case BOTTOM_RIGHT, MID_DEPTH_RIGHT, TOP_RIGHT -> Vector2D.of(box.left(), box.level(number));
            case CENTROID, SHEAR_CENTRE -> middle;
            case BOTTOM_BELOW_CENTROID, BOTTOM_BELOW_SHEAR_CENTRE -> Vector2D.of(middle.getX(), box.bottom());
            case TOP_ABOVE_CENTROID, TOP_ABOVE_SHEAR_CENTRE -> Vector2D.of(middle.getX(), box.top());
            case LEFT_OF_CENTROID, LEFT_OF_SHEAR_CENTRE -> Vector2D.of(box.right(), middle.getY());
            case RIGHT_OF_CENTROID, RIGHT_OF_SHEAR_CENTRE -> Vector2D.of(box.left(), middle.getY());
        };
    }

    /** Sides by the profile's axes: right is the greatest x. */
    private record Box(double left, double bottom, double right, double top) {
        static Box around(List<Profile> profiles) {
            double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
            double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
            for (Profile profile : profiles) {
                Ring ring = profile.outer();
                for (int i = 0; i < ring.size(); i++) {
                    low[0] = Math.min(low[0], ring.x(i));
                    low[1] = Math.min(low[1], ring.y(i));
                    high[0] = Math.max(high[0], ring.x(i));
                    high[1] = Math.max(high[1], ring.y(i));
                }
            }
            return new Box(low[0], low[1], high[0], high[1]);
        }

        Vector2D centre() {
            return Vector2D.of(0.5 * (left + right), 0.5 * (bottom + top));
        }

        /** The first three numbers are at the bottom, the next at half the depth, then at the top. */
        double level(int number) {
            int row = (number - 1) / 3;
            return bottom + 0.5 * row * (top - bottom);
        }
    }

    /** Of the polygons together, holes taken off (Green's formula). */
    private static Vector2D centroid(List<Profile> profiles) {
        double[] sums = new double[3];
        for (Profile profile : profiles) {
            add(profile.outer(), sums);
            profile.voids().forEach(ring -> add(ring, sums));
        }
        return Vector2D.of(sums[1] / (3 * sums[0]), sums[2] / (3 * sums[0]));
    }

    private static void add(Ring ring, double[] sums) {
        for (int i = 0; i < ring.size(); i++) {
            int k = (i + 1) % ring.size();
            double cross = ring.x(i) * ring.y(k) - ring.x(k) * ring.y(i);
            sums[0] += cross;
            sums[1] += cross * (ring.x(i) + ring.x(k));
            sums[2] += cross * (ring.y(i) + ring.y(k));
        }
    }
}
