package runtrue.wind;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;

/** Roofs on rectangles with the ridge along x, from the origin; heights in metres, pitch in degrees. */
public final class TestRoofs {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private TestRoofs() {}

    public static Polygon polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length / 2; i++) {
            ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        ring[ring.length - 1] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    public static Polygon rectangle(double length, double width) {
        return polygon(0, 0, length, 0, length, width, 0, width);
    }

    public static WindRoof flat(Polygon outline, double height, EavesDetail eaves) {
        WindSlope slope = new WindSlope("A", outline, 0, 0, 0);
        return new WindRoof("R", outline, RoofForm.FLAT, List.of(slope), height, height, eaves);
    }

    /** Low eaves at y = 0. */
    public static WindRoof mono(double length, double width, double height, double pitch) {
        Polygon outline = rectangle(length, width);
        WindSlope slope = new WindSlope("A", outline, 0, -1, Math.toRadians(pitch));
        return new WindRoof("R", outline, RoofForm.MONO_PITCH, List.of(slope), height, height, EavesDetail.sharp());
    }

    /** Plane A falls to y = 0, plane B to the other side. */
    public static WindRoof duo(double length, double width, double eaves, double ridge, double pitch) {
        return duo(length, width, eaves, ridge, pitch, -1, RoofForm.DUO_PITCH);
    }

    /** Plane A from y = 0 falls to the middle. */
    public static WindRoof troughed(double length, double width, double height, double pitch) {
        return duo(length, width, height, height, pitch, 1, RoofForm.TROUGHED);
    }

    private static WindRoof duo(
            double length, double width, double eaves, double ridge, double pitch, double fall, RoofForm form) {
        double middle = width / 2;
        WindSlope a =
                new WindSlope("A", polygon(0, 0, length, 0, length, middle, 0, middle), 0, fall, Math.toRadians(pitch));
        WindSlope b = new WindSlope(
                "B", polygon(0, middle, length, middle, length, width, 0, width), 0, -fall, Math.toRadians(pitch));
        return new WindRoof("R", rectangle(length, width), form, List.of(a, b), eaves, ridge, EavesDetail.sharp());
    }

    /** Long planes A (falls to y = 0) and B, hip ends C (falls to x = 0) and D; hips at 45 degrees in plan. */
    public static WindRoof hipped(double length, double width, double eaves, double ridge, double pitch) {
        double m = width / 2;
        double l = length;
        double w = width;
        double p = Math.toRadians(pitch);
        List<WindSlope> slopes = List.of(
                new WindSlope("A", polygon(0, 0, l, 0, l - m, m, m, m), 0, -1, p),
                new WindSlope("B", polygon(l, w, 0, w, m, m, l - m, m), 0, 1, p),
                new WindSlope("C", polygon(0, w, 0, 0, m, m), -1, 0, p),
                new WindSlope("D", polygon(l, 0, l, w, l - m, m), 1, 0, p));
        return new WindRoof("R", rectangle(l, w), RoofForm.HIPPED, slopes, eaves, ridge, EavesDetail.sharp());
    }

    /** Plan area of a zone over all planes, square metres. */
    public static double area(WindResult result, String wind, String name) {
        return result.zones().stream()
                .filter(z -> z.zone().wind().equals(wind) && z.zone().name().equals(name))
                .mapToDouble(z -> z.zone().planArea())
                .sum();
    }
}
