package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Station;
import runtrue.shape.curve.Track;

/** Seats along a track, by the two ways of turning a profile with it. */
final class Seats {
    /** Directions nearer to each other than this sine give no axis square to one of them. */
    private static final double LEAST_SINE = 1e-6;

    private Seats() {}

    /**
     * The profile's x axis keeps to a direction, as far as the way lets it.
     *
     * @param reference the direction at a place
     */
    static List<Seat> referenced(Track track, UnaryOperator<Vector3D> reference, String label) {
        List<Seat> seats = new ArrayList<>(track.stations().size());
        for (Station station : track.stations()) {
            Vector3D direction = reference.apply(station.point());
            Seat.Side before = side(station.before(), direction, label);
            boolean smooth = station.before().equals(station.after());
            seats.add(seat(station, before, smooth ? before : side(station.after(), direction, label), label));
        }
        return seats;
    }

    private static Seat.Side side(Vector3D along, Vector3D reference, String label) {
        Vector3D x = reference.subtract(along.multiply(reference.dot(along)));
        if (!(x.norm() > LEAST_SINE * reference.norm())) {
            throw new ShapeException("The directrix of " + label
                    + " runs along the direction that its profile is to keep to; export it as a faceted body.");
        }
        return new Seat.Side(along, x.normalize());
    }

    /**
     * Whether the profile turns over somewhere: where the way passes near the direction that the profile is to keep to,
     * x jumps from one side to the other, and a body built so would shrink to a point there.
     */
    static boolean turnOver(List<Seat> seats) {
        Seat.Side last = seats.get(0).before();
        for (Seat seat : seats) {
            for (Seat.Side side : List.of(seat.before(), seat.after())) {
                if (!(carried(last.x(), last.along(), side.along()).dot(side.x()) > 0)) {
                    return true;
                }
                last = side;
            }
        }
        return false;
    }

    /** As {@link #unturned(Track, Vector3D, String)}, from any x axis. */
    static List<Seat> unturned(Track track, String label) {
        return unturned(track, track.stations().get(0).before().orthogonal(), label);
    }

    /**
     * The profile turns no more than the way does; along a closed way it comes back as it left.
     *
     * @param start the profile's x axis at the first station on arrival, square to the way
     */
    static List<Seat> unturned(Track track, Vector3D start, String label) {
        List<Station> stations = track.stations();
        Vector3D first = stations.get(0).before();
        double twist = track.closed() ? twist(stations, start) : 0;
        List<Seat> seats = new ArrayList<>(stations.size());
        Vector3D x = start;
        Vector3D last = first;
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            x = carried(x, last, station.before());
            Seat.Side before = turned(station.before(), x, -twist * i / stations.size());
            x = carried(x, station.before(), station.after());
            Seat.Side after = turned(station.after(), x, -twist * i / stations.size());
            seats.add(seat(station, before, after, label));
            last = station.after();
        }
        return seats;
    }

    /** By how much the x axis has turned about the way when it comes back to the start. */
    private static double twist(List<Station> stations, Vector3D start) {
        Vector3D x = start;
        Vector3D last = stations.get(0).before();
        for (Station station : stations) {
            x = carried(carried(x, last, station.before()), station.before(), station.after());
            last = station.after();
        }
        Vector3D along = stations.get(0).before();
        x = carried(x, last, along);
        return Math.atan2(x.dot(along.cross(start)), x.dot(start));
    }

    private static Seat.Side turned(Vector3D along, Vector3D x, double angle) {
        Vector3D square = x.subtract(along.multiply(x.dot(along))).normalize();
        return new Seat.Side(
                along, square.multiply(Math.cos(angle)).add(along.cross(square).multiply(Math.sin(angle))));
    }

    /** The least rotation that takes one unit direction to another, applied to a vector (Rodrigues' formula). */
    private static Vector3D carried(Vector3D v, Vector3D from, Vector3D to) {
        Vector3D axis = from.cross(to);
        double cosine = from.dot(to);
        if (!(axis.norm() > 1e-14) || cosine < -1 + 1e-9) {
            return v;
        }
        return v.multiply(cosine).add(axis.cross(v)).add(axis.multiply(axis.dot(v) / (1 + cosine)));
    }

    private static Seat seat(Station station, Seat.Side before, Seat.Side after, String label) {
        Vector3D middle = station.before().add(station.after());
        if (!(middle.norm() > 2 * Seat.LEAST_COSINE)) {
            throw new ShapeException("The directrix of " + label
                    + " turns back on itself, so that its lengths do not meet; check it, or export a faceted body.");
        }
        return new Seat(station.point(), middle.normalize(), before, after);
    }
}
