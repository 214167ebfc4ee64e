package runtrue.report.drawing.svg;

import java.util.List;
import runtrue.report.drawing.place.Vec;

/** Builds the data of a path from points in millimetres. */
public final class Path {
    private final StringBuilder data = new StringBuilder();

    /** One straight line. */
    public static Path line(Vec from, Vec to) {
        return new Path().segment(from, to);
    }

    /** A closed ring; its first point is not repeated. */
    public static Path ring(List<Vec> points) {
        return new Path().closed(points);
    }

    /** Adds a straight line. */
    public Path segment(Vec from, Vec to) {
        return point('M', from).point('L', to);
    }

    /** Adds a closed ring; its first point is not repeated. */
    public Path closed(List<Vec> points) {
        open(points);
        if (!points.isEmpty()) {
            data.append('Z');
        }
        return this;
    }

    /** Adds a run of lines. */
    public Path open(List<Vec> points) {
        for (int i = 0; i < points.size(); i++) {
            point(i == 0 ? 'M' : 'L', points.get(i));
        }
        return this;
    }

    public boolean isEmpty() {
        return data.length() == 0;
    }

    private Path point(char command, Vec point) {
        data.append(command).append(Figures.position(point.x())).append(' ').append(Figures.position(point.y()));
        return this;
    }

    @Override
    public String toString() {
        return data.toString();
    }
}
