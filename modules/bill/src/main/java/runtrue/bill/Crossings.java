package runtrue.bill;

import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;

/**
 * How often ribs cross supports within a plane: one clip each (common practice, no source).
 *
 * @param firstVerge at the outer rib of least u
 * @param interior at the ribs between
 * @param lastVerge at the outer rib of greatest u
 */
record Crossings(int firstVerge, int interior, int lastVerge) {
    /** The outer ribs are looked at this far inside the plane's edge, so that rounding does not put them outside. */
    private static final double INSIDE = 1e-4;

    int total() {
        return firstVerge + interior + lastVerge;
    }

    /** Counts real crossings: a support that ends before a rib does not count there, nor does one under a penetration. */
    static Crossings count(Polygon outline, List<Double> ribs, List<SupportLine> lines) {
        IndexedPointInAreaLocator area = new IndexedPointInAreaLocator(outline);
        int last = ribs.size() - 1;
        int first = at(area, ribs.get(0), ribs.get(0) + INSIDE, lines);
        int between = 0;
        for (int i = 1; i < last; i++) {
            between += at(area, ribs.get(i), ribs.get(i), lines);
        }
        return new Crossings(first, between, at(area, ribs.get(last), ribs.get(last) - INSIDE, lines));
    }

    private static int at(IndexedPointInAreaLocator area, double rib, double lookedAt, List<SupportLine> lines) {
        int count = 0;
        for (SupportLine line : lines) {
            boolean covered = line.extents().stream().anyMatch(extent -> covers(extent, rib));
            if (covered && area.locate(new Coordinate(lookedAt, v(line, rib))) != Location.EXTERIOR) {
                count++;
            }
        }
        return count;
    }

    private static boolean covers(Interval extent, double u) {
        return extent.from() - INSIDE <= u && u <= extent.to() + INSIDE;
    }

    /** Along the nearest piece, since pieces need not lie quite square to the fall. */
    private static double v(SupportLine line, double u) {
        for (SupportPiece piece : line.pieces()) {
            if (piece.uFrom() <= u && u <= piece.uTo() && piece.uTo() > piece.uFrom()) {
                double share = (u - piece.uFrom()) / (piece.uTo() - piece.uFrom());
                return piece.vFrom() + (piece.vTo() - piece.vFrom()) * share;
            }
        }
        return line.v();
    }
}
