package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How water runs along the arc of a curved plane. Metres and radians. A fall along the axis counts for nothing: sheets
 * and their ribs run along the arc.
 */
public final class CurveFall {
    private final Section section;

    /** What a rise in the section's own axes is in plumb height, where the axis is not level. */
    private final double plumb;

    private CurveFall(Section section, double plumb) {
        this.section = section;
        this.plumb = plumb;
    }

    public static CurveFall of(Curve curve) {
        return new CurveFall(curve.section(), curve.axis().cross(curve.side()).getZ());
    }

    /** Pitch where water leaves the sheets; at two eaves the lesser. Empty where it leaves at neither end. */
    public OptionalDouble eavePitch() {
        double start = rise(0);
        double end = -rise(section.length());
        List<Double> out = new ArrayList<>();
        if (start > 0) {
            out.add(Math.asin(Math.min(1, start)));
        }
        if (end > 0) {
            out.add(Math.asin(Math.min(1, end)));
        }
        return out.stream().mapToDouble(Double::doubleValue).min();
    }

    /** Depth of the water that stands in the deepest hollow between the ends; 0 where everything runs off. */
    public double sag() {
        if (section instanceof Arc arc) {
            boolean hollow = !arc.convex() && arc.crown() > 0 && arc.crown() < arc.length();
            return hollow ? Math.min(height(0), height(arc.length())) - height(arc.crown()) : 0;
        }
        List<Double> heights = section.stations().stream().map(this::height).toList();
        double deepest = 0;
        for (int i = 1; i + 1 < heights.size(); i++) {
            double left = greatest(heights.subList(0, i));
            double right = greatest(heights.subList(i + 1, heights.size()));
            deepest = Math.max(deepest, Math.min(left, right) - heights.get(i));
        }
        return deepest;
    }

    /** Length of the longest stretch of the arc that is flatter than a pitch. */
    public double flatterThan(double pitch) {
        if (section instanceof Arc arc) {
            // The tangent's rise is plumb x sin(angle from the crown).
            double half = plumb <= Math.sin(pitch)
                    ? Double.POSITIVE_INFINITY
                    : arc.radius() * Math.asin(Math.sin(pitch) / plumb);
            return Math.max(0, Math.min(arc.length(), arc.crown() + half) - Math.max(0, arc.crown() - half));
        }
        double longest = 0;
        double here = 0;
        List<Double> stations = section.stations();
        for (int i = 0; i + 1 < stations.size(); i++) {
            double middle = (stations.get(i) + stations.get(i + 1)) / 2;
            boolean flat = Math.abs(rise(middle)) < Math.sin(pitch);
            here = flat ? here + stations.get(i + 1) - stations.get(i) : 0;
            longest = Math.max(longest, here);
        }
        return longest;
    }

    private static double greatest(List<Double> heights) {
        return heights.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    private double height(double v) {
        return section.at(v).getY() * plumb;
    }

    private double rise(double v) {
        Vector2D tangent = section.tangent(v);
        return tangent.getY() * plumb;
    }
}
