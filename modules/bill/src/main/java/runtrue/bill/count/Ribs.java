package runtrue.bill.count;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.SetOut;

/**
 * Ribs of one plane.
 *
 * @param all by u, those at both edges of the plane included
 */
record Ribs(RoofPlane plane, List<Double> all) {
    private static final double MILLIMETRE = 1e-3;

    static Ribs of(RoofPlane plane, double coverWidth, double spacing, SetOut setOut) {
        return new Ribs(plane, RibLines.of(plane.outline().getEnvelopeInternal(), coverWidth, spacing, setOut));
    }

    /** How many end on an edge; none where it runs along them, nor where the plane has come to a point. */
    int endingOn(RoofEdge edge) {
        double a = plane.u(edge.from());
        double b = plane.u(edge.to());
        double from = Math.min(a, b);
        double to = Math.max(a, b);
        if (to - from < MILLIMETRE) {
            return 0;
        }
        int count = 0;
        for (int i = 0; i < all.size(); i++) {
            double rib = all.get(i);
            boolean last = i == all.size() - 1;
            // Where one edge follows another the rib between them ends on the second.
            boolean on = rib >= from - MILLIMETRE && (rib < to - MILLIMETRE || (last && rib <= to + MILLIMETRE));
            if (on && ((i > 0 && !last) || reaches(rib, i == 0 ? MILLIMETRE : -MILLIMETRE))) {
                count++;
            }
        }
        return count;
    }

    /** Whether there is metal beside an outer rib: a hipped end comes to a point there. */
    private boolean reaches(double rib, double inward) {
        Polygon outline = plane.outline();
        Envelope box = outline.getEnvelopeInternal();
        double u = rib + inward;
        return outline.getFactory()
                        .createLineString(new Coordinate[] {
                            new Coordinate(u, box.getMinY() - 1), new Coordinate(u, box.getMaxY() + 1)
                        })
                        .intersection(outline)
                        .getLength()
                > 10 * MILLIMETRE;
    }
}
