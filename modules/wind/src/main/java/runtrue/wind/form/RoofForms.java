package runtrue.wind.form;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import runtrue.wind.plan.PlanEdge;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.plan.SlopeEdges;

/**
 * Tells the form of a roof from its planes. The standards draw simple forms; whatever is none of them, such as several
 * spans side by side, has none.
 */
public final class RoofForms {
    /** Below this every plane counts as flat, EN 1991-1-4 7.2.3, radians. */
    private static final double FLAT = Math.toRadians(5);

    /** Cosine up to which two falls are the same direction, or opposite: 15 degrees. */
    private static final double SAME = Math.cos(Math.toRadians(15));

    /** Share of the outline that has to be eaves for a hipped roof. */
    private static final double ALL_ROUND = 0.9;

    private RoofForms() {}

    /**
     * Form of a roof.
     *
     * @param outline in plan, metres
     * @return empty when it is none that the standards have zones for, or cannot be told from the planes
     */
    public static Optional<RoofForm> of(Polygon outline, List<WindSlope> slopes) {
        List<WindSlope> pitched = slopes.stream().filter(s -> s.pitch() >= FLAT).toList();
        if (pitched.isEmpty()) {
            return Optional.of(RoofForm.FLAT);
        }
        WindSlope first = pitched.get(0);
        if (pitched.stream().allMatch(s -> along(s, first) > SAME)) {
            return pitched.size() == 1 ? Optional.of(RoofForm.MONO_PITCH) : Optional.empty();
        }
        if (pitched.stream().allMatch(s -> Math.abs(along(s, first)) > SAME)) {
            return twoFalls(pitched, first);
        }
        return eavesShare(PlanOutline.of(outline), pitched) > ALL_ROUND
                ? Optional.of(RoofForm.HIPPED)
                : Optional.empty();
    }

    /** Planes of one fall all on one side of those of the other: away from them is a ridge, towards them a trough. */
    private static Optional<RoofForm> twoFalls(List<WindSlope> slopes, WindSlope first) {
        double lowestSame = Double.POSITIVE_INFINITY;
        double highestSame = Double.NEGATIVE_INFINITY;
        double lowestOther = Double.POSITIVE_INFINITY;
        double highestOther = Double.NEGATIVE_INFINITY;
        for (WindSlope slope : slopes) {
            Coordinate c = slope.plan().getCentroid().getCoordinate();
            double at = c.x * first.fallX() + c.y * first.fallY();
            if (along(slope, first) > 0) {
                lowestSame = Math.min(lowestSame, at);
                highestSame = Math.max(highestSame, at);
            } else {
                lowestOther = Math.min(lowestOther, at);
                highestOther = Math.max(highestOther, at);
            }
        }
        if (lowestSame > highestOther) {
            return Optional.of(RoofForm.DUO_PITCH);
        }
        return highestSame < lowestOther ? Optional.of(RoofForm.TROUGHED) : Optional.empty();
    }

    private static double eavesShare(PlanOutline outline, List<WindSlope> slopes) {
        SlopeEdges edges = new SlopeEdges(outline);
        double eaves = slopes.stream()
                .flatMap(s -> edges.outer(s).stream().filter(e -> -e.facing(s.fallX(), s.fallY()) > SAME))
                .distinct()
                .mapToDouble(PlanEdge::length)
                .sum();
        return eaves / outline.polygon().getExteriorRing().getLength();
    }

    private static double along(WindSlope a, WindSlope b) {
        return a.fallX() * b.fallX() + a.fallY() * b.fallY();
    }
}
