package runtrue.rules.judge.subject;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.Interval;
import runtrue.roof.RoofPlane;

/**
 * How far water runs down a line along the fall.
 *
 * @param plan metres in plan
 * @param rise metres
 */
record Slope(double plan, double rise) {
    static final Slope NONE = new Slope(0, 0);

    /** Chords along an arc: enough for a thousandth of its rise. */
    private static final int CHORDS = 32;

    /**
     * From the highest point of a line of a plane down to the end that is farther away: over a barrel, water runs to both
     * sides.
     *
     * @param v where the line begins and ends
     */
    static Slope of(RoofPlane plane, double u, Interval v) {
        int chords = plane.curve().isPresent() ? CHORDS : 1;
        Vector3D top = plane.at(u, v.from());
        for (int i = 1; i <= chords; i++) {
            Vector3D point = plane.at(u, v.from() + v.length() * i / chords);
            top = point.getZ() > top.getZ() ? point : top;
        }
        Slope down = between(top, plane.at(u, v.from()));
        Slope other = between(top, plane.at(u, v.to()));
        return down.plan() >= other.plan() ? down : other;
    }

    private static Slope between(Vector3D high, Vector3D low) {
        Vector3D way = high.subtract(low);
        return new Slope(Math.hypot(way.getX(), way.getY()), way.getZ());
    }
}
