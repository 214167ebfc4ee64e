package runtrue.shape.profile;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Station;
import runtrue.shape.curve.Track;

/** Thin-walled profiles given by their centre line and thickness. */
final class CentreLine {
    /** Corners that turn back more sharply than this cosine of half the turn run off to a spike. */
    private static final double LEAST_COSINE = 0.05;

    private CentreLine() {}

    /** The line moved half the thickness to either side, with mitred corners and square ends; closed lines are tubes. */
    static Profile thickened(String name, Chain line, double thickness, Fineness fineness) {
        if (!(thickness > 0)) {
            throw new ShapeException("The centre line profile " + name + " has no thickness.");
        }
        Track track = line.track(fineness.carrying(0.5 * thickness));
        int n = track.stations().size();
        if (n < 2) {
            throw new ShapeException("The centre line profile " + name + " has no length.");
        }
        double[] left = new double[2 * n];
        double[] right = new double[2 * n];
        for (int i = 0; i < n; i++) {
            Station station = track.stations().get(i);
            Vector3D side = side(name, station).multiply(0.5 * thickness);
            put(left, i, station.point().add(side));
            put(right, i, station.point().subtract(side));
        }
        if (!track.closed()) {
            return new Profile(name, Ring.of(around(right, left), 0), List.of());
        }
        List<Ring> rings = new ArrayList<>(List.of(Ring.of(left, 0), Ring.of(right, 0)));
        rings.sort((a, b) -> Double.compare(Math.abs(b.signedArea()), Math.abs(a.signedArea())));
        return new Profile(name, rings.get(0), rings.subList(1, 2));
    }

    private static void put(double[] xy, int i, Vector3D point) {
        xy[2 * i] = point.getX();
        xy[2 * i + 1] = point.getY();
    }

    /** One side there and the other back. */
    private static double[] around(double[] there, double[] back) {
        int n = there.length;
        double[] ring = new double[2 * n];
        for (int i = 0; i < n; i += 2) {
            ring[i] = there[i];
            ring[i + 1] = there[i + 1];
            ring[2 * n - 2 - i] = back[i];
            ring[2 * n - 1 - i] = back[i + 1];
        }
        return ring;
    }

    /** From the station to where lines a unit to its left would meet. */
    private static Vector3D side(String name, Station station) {
        Vector3D middle = Vector3D.of(
                -station.before().getY() - station.after().getY(),
                station.before().getX() + station.after().getX(),
                0);
        if (!(middle.norm() > 2 * LEAST_COSINE)) {
            throw new ShapeException("The centre line profile " + name + " turns back on itself.");
        }
        return middle.multiply(2 / middle.normSq());
    }
}
