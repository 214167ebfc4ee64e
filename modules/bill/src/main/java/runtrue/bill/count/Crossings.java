package runtrue.bill.count;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;

/** Where ribs cross supports within a plane: a clip each (common practice, no source). */
final class Crossings {
    /** The outer ribs are looked at this far inside the plane's edge, so that rounding does not put them outside. */
    private static final double INSIDE = 1e-4;

    private Crossings() {}

    /**
     * One crossing.
     *
     * @param rib number from the least u, from 0
     * @param atEdge whether it is the first or the last rib
     */
    record Crossing(SupportLine line, int rib, double u, double v, boolean atEdge) {}

    /** Real crossings: a support that ends before a rib does not count there, nor does one under a penetration. */
    static List<Crossing> of(Polygon outline, List<Double> ribs, List<SupportLine> lines) {
        IndexedPointInAreaLocator area = new IndexedPointInAreaLocator(outline);
        List<Crossing> crossings = new ArrayList<>();
        int last = ribs.size() - 1;
        for (SupportLine line : lines) {
            for (int i = 0; i <= last; i++) {
                double rib = ribs.get(i);
                double lookedAt = i == 0 ? rib + INSIDE : i == last ? rib - INSIDE : rib;
                double v = v(line, rib);
                if (line.extents().stream().anyMatch(extent -> covers(extent, rib))
                        && area.locate(new Coordinate(lookedAt, v)) != Location.EXTERIOR) {
                    crossings.add(new Crossing(line, i, lookedAt, v, i == 0 || i == last));
                }
            }
        }
        return crossings;
    }

    private static boolean covers(Interval extent, double u) {
        return extent.from() - INSIDE <= u && u <= extent.to() + INSIDE;
    }

    /** Along the nearest piece, since pieces need not lie quite square to the fall. */
    static double v(SupportLine line, double u) {
        for (SupportPiece piece : line.pieces()) {
            if (piece.uFrom() <= u && u <= piece.uTo() && piece.uTo() > piece.uFrom()) {
                double share = (u - piece.uFrom()) / (piece.uTo() - piece.uFrom());
                return piece.vFrom() + (piece.vTo() - piece.vFrom()) * share;
            }
        }
        return line.v();
    }
}
