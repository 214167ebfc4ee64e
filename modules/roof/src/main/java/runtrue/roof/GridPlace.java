package runtrue.roof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.GridAxis;

/** Says where a point is by the nearest grid lines. */
public final class GridPlace {
    /** Nearer than this, people say "on" the line. */
    private static final double ON_LINE = RoofTolerance.GRID_NEAR.si();

    /** Axes within this of each other's direction are one family of lines. */
    private static final double SAME_WAY = Math.cos(RoofTolerance.GRID_FAMILY.si());

    private GridPlace() {}

    /**
     * For example {@code between B and C, 3 and 4}; empty when there is no grid.
     *
     * @param axes in world metres
     * @param point in world metres
     */
    public static String of(List<GridAxis> axes, Vector3D point) {
        List<List<GridAxis>> families = new ArrayList<>();
        for (GridAxis axis : axes) {
            if (axis.points().size() >= 2 && way(axis).norm() > 0) {
                families.stream()
                        .filter(f ->
                                Math.abs(way(f.get(0)).normalize().dot(way(axis).normalize())) > SAME_WAY)
                        .findFirst()
                        .ifPresentOrElse(f -> f.add(axis), () -> families.add(new ArrayList<>(List.of(axis))));
            }
        }
        return families.stream().map(f -> place(f, point)).collect(Collectors.joining(", "));
    }

    private static String place(List<GridAxis> family, Vector3D point) {
        Vector3D way = way(family.get(0)).normalize();
        Vector3D across = Vector3D.of(-way.getY(), way.getX(), 0);
        record Line(String name, double offset) {}
        List<Line> lines = family.stream()
                .map(a -> new Line(a.name(), a.points().get(0).subtract(point).dot(across)))
                .sorted(Comparator.comparingDouble(Line::offset).thenComparing(Line::name))
                .toList();
        Line nearest = lines.stream()
                .min(Comparator.comparingDouble(l -> Math.abs(l.offset())))
                .orElseThrow();
        if (Math.abs(nearest.offset()) <= ON_LINE) {
            return "on " + nearest.name();
        }
        if (lines.get(0).offset() > 0) {
            return "beyond " + lines.get(0).name();
        }
        for (int i = 0; i + 1 < lines.size(); i++) {
            if (lines.get(i + 1).offset() > 0) {
                return between(lines.get(i).name(), lines.get(i + 1).name());
            }
        }
        return "beyond " + lines.get(lines.size() - 1).name();
    }

    /** In the order in which people read them. */
    private static String between(String a, String b) {
        boolean ordered = a.length() != b.length() ? a.length() < b.length() : a.compareTo(b) <= 0;
        return ordered ? "between " + a + " and " + b : "between " + b + " and " + a;
    }

    private static Vector3D way(GridAxis axis) {
        Vector3D way = axis.points()
                .get(axis.points().size() - 1)
                .subtract(axis.points().get(0));
        return Vector3D.of(way.getX(), way.getY(), 0);
    }
}
