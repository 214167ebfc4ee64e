package runtrue.result;

import java.util.List;

/**
 * A grid axis of a model.
 *
 * @param grid name of the grid it belongs to; empty when it has none
 * @param name for example {@code B} or {@code 4}; empty when it has none
 * @param points in world coordinates, two or more along the axis
 */
public record GridLine(String grid, String name, List<Point> points) {
    public GridLine {
        points = List.copyOf(points);
    }
}
