package runtrue.report.scene;

import runtrue.result.Direction;
import runtrue.result.Point;

/**
 * A camera in parallel projection, in world metres.
 *
 * @param eye the middle of the picture lies straight ahead of it
 * @param ahead unit vector of the line of sight
 * @param up unit vector, square to {@code ahead}
 * @param height visible height at any distance
 */
public record Camera(Point eye, Direction ahead, Direction up, double height) {
    /** Width of a picture by its height. */
    public static final double ASPECT = 4.0 / 3.0;

    /**
     * A camera that looks at a place from above.
     *
     * @param from bearing of the camera as seen from the place: east, north; any length
     * @param elevation of the camera above the horizontal at the place, radians, less than a right angle
     * @param distance from the place: beyond all that must not stand behind the camera
     */
    static Camera at(Point place, double[] from, double elevation, double distance, double height) {
        double plan = Math.hypot(from[0], from[1]);
        double east = from[0] / plan;
        double north = from[1] / plan;
        double cos = Math.cos(elevation);
        double sin = Math.sin(elevation);
        Direction ahead = new Direction(-east * cos, -north * cos, -sin);
        Direction up = new Direction(-east * sin, -north * sin, cos);
        Point eye = new Point(
                place.xMetres() - ahead.x() * distance,
                place.yMetres() - ahead.y() * distance,
                place.zMetres() - ahead.z() * distance);
        return new Camera(eye, ahead, up, height);
    }

    /** Metres to the right of the picture's middle, above it, and ahead of the eye. */
    Point seen(Point point) {
        Direction from = new Direction(
                point.xMetres() - eye.xMetres(), point.yMetres() - eye.yMetres(), point.zMetres() - eye.zMetres());
        return new Point(dot(from, right()), dot(from, up), dot(from, ahead));
    }

    /** Unit vector to the right of the picture. */
    Direction right() {
        return new Direction(
                ahead.y() * up.z() - ahead.z() * up.y(),
                ahead.z() * up.x() - ahead.x() * up.z(),
                ahead.x() * up.y() - ahead.y() * up.x());
    }

    private static double dot(Direction a, Direction b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }
}
