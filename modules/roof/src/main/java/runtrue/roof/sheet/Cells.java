package runtrue.roof.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.Stretch.Ends;

/**
 * A polygon in u, v cut into trapezoids along the fall: each cell lies between two neighbouring positions u at which the
 * outline has a corner, so that its low and high edges are straight. Chords along the fall, areas and strips then need
 * no further intersections and lose no digits.
 */
public final class Cells {
    /** Corners closer than this in u are taken as one; a tenth of the finest length an exporter writes. */
    private static final double SAME = 1e-6;

    private Cells() {}

    /** One trapezoid; v at both ends of {@code u}. */
    public record Cell(Interval u, Ends low, Ends high) {
        /** The part between two positions; the caller sees to it that they lie within the cell. */
        public Cell between(double from, double to) {
            return new Cell(
                    new Interval(from, to),
                    new Ends(at(low, from), at(low, to)),
                    new Ends(at(high, from), at(high, to)));
        }

        public double area() {
            return u.length() * (high.atFrom() - low.atFrom() + high.atTo() - low.atTo()) / 2;
        }

        private double at(Ends ends, double position) {
            double share = u.length() == 0 ? 0 : (position - u.from()) / u.length();
            return ends.atFrom() + share * (ends.atTo() - ends.atFrom());
        }
    }

    /** Cells of a polygon with its holes, by u, then from low to high. */
    public static List<Cell> of(Polygon polygon) {
        return cells(edges(polygon, true));
    }

    /** Cells of a polygon as if it had no holes. */
    public static List<Cell> ofShell(Polygon polygon) {
        return cells(edges(polygon, false));
    }

    /** Length within the cells of a line along the fall at u, between two positions v; metres. */
    public static double lengthInsideAlong(List<Cell> cells, double u, double from, double to) {
        double length = 0;
        for (Cell cell : cells) {
            if (cell.u().from() <= u && u < cell.u().to()) {
                double low = Math.max(from, cell.at(cell.low(), u));
                double high = Math.min(to, cell.at(cell.high(), u));
                length += Math.max(0, high - low);
            }
        }
        return length;
    }

    /**
     * Length within the cells of a straight line across the fall, {@code v = offset + slope u}, between two positions u;
     * metres along the line.
     */
    public static double lengthInsideAcross(List<Cell> cells, double from, double to, double offset, double slope) {
        double width = 0;
        for (Cell cell : cells) {
            double start = Math.max(from, cell.u().from());
            double end = Math.min(to, cell.u().to());
            if (end > start) {
                Interval above = positive(start, end, u -> offset + slope * u - cell.at(cell.low(), u));
                Interval below = positive(start, end, u -> cell.at(cell.high(), u) - offset - slope * u);
                width += Math.max(0, Math.min(above.to(), below.to()) - Math.max(above.from(), below.from()));
            }
        }
        return width * Math.hypot(1, slope);
    }

    /** The part of a stretch in which a linear function is not negative; of length 0 where it is nowhere. */
    private static Interval positive(double from, double to, DoubleUnaryOperator linear) {
        double a = linear.applyAsDouble(from);
        double b = linear.applyAsDouble(to);
        if (a >= 0 && b >= 0) {
            return new Interval(from, to);
        }
        if (a < 0 && b < 0) {
            return new Interval(from, from);
        }
        double root = from + (to - from) * a / (a - b);
        return a >= 0 ? new Interval(from, root) : new Interval(root, to);
    }

    private static List<double[]> edges(Polygon polygon, boolean holes) {
        List<double[]> edges = new ArrayList<>();
        addEdges(edges, polygon.getExteriorRing().getCoordinates());
        for (int i = 0; holes && i < polygon.getNumInteriorRing(); i++) {
            addEdges(edges, polygon.getInteriorRingN(i).getCoordinates());
        }
        return edges;
    }

    /** Edges as u, v, u, v with rising u; edges along the fall bound no cell from above or below and are left out. */
    private static void addEdges(List<double[]> edges, Coordinate[] ring) {
        for (int i = 0; i + 1 < ring.length; i++) {
            Coordinate a = ring[i].x <= ring[i + 1].x ? ring[i] : ring[i + 1];
            Coordinate b = ring[i].x <= ring[i + 1].x ? ring[i + 1] : ring[i];
            if (b.x - a.x > SAME) {
                edges.add(new double[] {a.x, a.y, b.x, b.y});
            }
        }
    }

    private static List<Cell> cells(List<double[]> edges) {
        double[] stops = stops(edges);
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i + 1 < stops.length; i++) {
            double from = stops[i];
            double to = stops[i + 1];
            double middle = (from + to) / 2;
            List<double[]> crossing = edges.stream()
                    .filter(e -> e[0] <= middle && middle <= e[2])
                    .sorted(Comparator.comparingDouble(e -> v(e, middle)))
                    .toList();
            for (int k = 0; k + 1 < crossing.size(); k += 2) {
                cells.add(new Cell(
                        new Interval(from, to),
                        new Ends(v(crossing.get(k), from), v(crossing.get(k), to)),
                        new Ends(v(crossing.get(k + 1), from), v(crossing.get(k + 1), to))));
            }
        }
        return cells;
    }

    private static double[] stops(List<double[]> edges) {
        double[] all = edges.stream()
                .flatMapToDouble(e -> Arrays.stream(new double[] {e[0], e[2]}))
                .sorted()
                .toArray();
        return IntStream.range(0, all.length)
                .filter(i -> i == 0 || all[i] - all[i - 1] > SAME)
                .mapToDouble(i -> all[i])
                .toArray();
    }

    private static double v(double[] edge, double u) {
        return edge[1] + (edge[3] - edge[1]) * (u - edge[0]) / (edge[2] - edge[0]);
    }
}
