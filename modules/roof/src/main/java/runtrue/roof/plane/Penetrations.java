package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Penetration;

/** Holes of outlines, measured. */
public final class Penetrations {
    private Penetrations() {}

    /** By u, then v; without ids. */
    public static List<Penetration> of(Polygon outline) {
        List<Penetration> holes = new ArrayList<>();
        for (int i = 0; i < outline.getNumInteriorRing(); i++) {
            Polygon hole = outline.getFactory().createPolygon(outline.getInteriorRingN(i));
            Envelope extent = hole.getEnvelopeInternal();
            holes.add(new Penetration("", hole, extent.getWidth(), extent.getHeight(), hole.getArea()));
        }
        holes.sort(Comparator.comparingDouble(
                        (Penetration p) -> p.outline().getEnvelopeInternal().getMinX())
                .thenComparingDouble(p -> p.outline().getEnvelopeInternal().getMinY()));
        return holes;
    }
}
