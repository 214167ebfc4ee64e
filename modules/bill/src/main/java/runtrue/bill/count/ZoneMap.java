package runtrue.bill.count;

import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import runtrue.roof.Zone;

/** The zones of one plane, asked point by point. */
final class ZoneMap {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final List<Zone> zones;

    ZoneMap(List<Zone> all, String plane) {
        zones = all.stream()
                .filter(z -> z.plane().equals(plane) && !z.region().isEmpty())
                .sorted(Comparator.comparing(Zone::kind))
                .toList();
    }

    /** {@code corner}, {@code edge} or {@code interior}; empty where no zones were formed. On a border the graver zone. */
    String at(double u, double v) {
        Point point = GEOMETRY.createPoint(new Coordinate(u, v));
        String nearest = "";
        double least = Double.MAX_VALUE;
        for (Zone zone : zones) {
            double distance = zone.region().distance(point);
            if (distance < least - 1e-6) {
                least = distance;
                nearest = zone.kind().label();
            }
        }
        return nearest;
    }
}
