package runtrue.roof.curved;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The line that a curved plane shows when cut square to its axis: x to the side (level), y square to it and to the axis
 * (upward), metres from the line's start. Positions on it are arc lengths from the start; outside the line it goes on.
 */
public sealed interface Section permits Arc, Folds {
    /** Arc length from start to end, metres. */
    double length();

    /** The point at an arc length. */
    Vector2D at(double v);

    /** Unit direction in which the line runs at an arc length. */
    Vector2D tangent(double v);

    /** Arc length of the point of the line nearest to a point. */
    double nearest(Vector2D point);

    /** Arc length of the point of the line at an x; ends are prolonged. */
    double atSide(double x);

    /**
     * Positions from start to end, both included, close enough for straight lines between them to stand for the line:
     * the folds of the facets that it was read from.
     */
    List<Double> stations();

    /** The stretch between two arc lengths, of which either may lie outside the line; positions count from its own start. */
    Section part(double from, double to);

    /** The same line seen from the other side of the roof: from its end to its start. */
    Section turned();
}
