package runtrue.roof.edge;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Stretch;
import runtrue.roof.Stretch.Ends;

/** The length of sheet that a support carries: half of the spans on either side, the whole of an overhang. */
final class Tributary {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Tributary() {}

    /** Greatest within a region of the plane (u, v), looked at every {@code step} metres across the fall; 0 without supports. */
    static double greatest(PlaneLayout layout, PreparedGeometry region, double step) {
        double greatest = 0;
        for (Stretch stretch : layout.stretches()) {
            int parts = Math.max(1, (int) Math.ceil(stretch.u().length() / step));
            for (int i = 0; i <= parts; i++) {
                // A hair inside at both ends: at the very end the next stretch's supports count as well.
                double share = Math.min(1 - 1e-6, Math.max(1e-6, (double) i / parts));
                greatest = Math.max(greatest, at(stretch, share, region));
            }
        }
        return greatest;
    }

    private static double at(Stretch stretch, double share, PreparedGeometry region) {
        double u = stretch.u().from() + share * stretch.u().length();
        List<Stretch.Crossing> crossings = stretch.crossings();
        double greatest = 0;
        for (int i = 0; i < crossings.size(); i++) {
            double v = v(crossings.get(i).v(), share);
            if (region.intersects(FACTORY.createPoint(new Coordinate(u, v)))) {
                double below = i == 0
                        ? v - v(stretch.low(), share)
                        : (v - v(crossings.get(i - 1).v(), share)) / 2;
                double above = i + 1 == crossings.size()
                        ? v(stretch.high(), share) - v
                        : (v(crossings.get(i + 1).v(), share) - v) / 2;
                greatest = Math.max(greatest, below + above);
            }
        }
        return greatest;
    }

    private static double v(Ends ends, double share) {
        return ends.atFrom() + share * (ends.atTo() - ends.atFrom());
    }
}
