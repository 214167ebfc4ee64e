package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Pieces end to start: every bounded curve. Its own parameter runs from 0 over the spans of its pieces. */
public record Chain(List<Piece> pieces) {
    public Chain {
        pieces = List.copyOf(pieces);
    }

    /** Straight lines through places, each with a span of 1. */
    public static Chain polyline(List<Vector3D> places) {
        List<Piece> pieces = new ArrayList<>(places.size());
        for (int i = 0; i + 1 < places.size(); i++) {
            pieces.add(Piece.straight(places.get(i), places.get(i + 1), 1));
        }
        return new Chain(pieces);
    }

    public static Chain of(Piece piece) {
        return new Chain(List.of(piece));
    }

    /** The parameter at its end. */
    public double span() {
        return pieces.stream().mapToDouble(Piece::span).sum();
    }

    public Vector3D from() {
        return pieces.get(0).from();
    }

    public Vector3D to() {
        return pieces.get(pieces.size() - 1).to();
    }

    public boolean closed(double tolerance) {
        return !pieces.isEmpty() && from().distance(to()) <= tolerance;
    }

    public Chain reversed() {
        List<Piece> result = new ArrayList<>(pieces.size());
        for (int i = pieces.size() - 1; i >= 0; i--) {
            result.add(pieces.get(i).reversed());
        }
        return new Chain(result);
    }

    /** The same chain moved; where the transform scales, the chord tolerance is scaled with it. */
    public Chain moved(AffineTransformMatrix3D transform) {
        return new Chain(pieces.stream()
                .map(p -> new Piece(new Moved(p.curve(), transform), p.start(), p.end(), p.span()))
                .toList());
    }

    /** The same chain with its parameter stretched to another span. */
    Chain stretched(double span) {
        double factor = span / span();
        return new Chain(pieces.stream()
                .map(p -> new Piece(p.curve(), p.start(), p.end(), p.span() * factor))
                .toList());
    }

    /** The same chain with its parameter counting lengths, exact for lines, arcs of circles and spirals. */
    public Chain byLength(Fineness fineness) {
        List<Piece> result = new ArrayList<>(pieces.size());
        for (Piece piece : pieces) {
            result.addAll(piece.byLength(fineness));
        }
        return new Chain(result);
    }

    /** The part between two of its parameters, the first the lesser one; they are brought within the chain. */
    public Chain part(double from, double to) {
        List<Piece> result = new ArrayList<>();
        double begin = 0;
        for (Piece piece : pieces) {
            double end = begin + piece.span();
            double a = Math.max(from, begin);
            double b = Math.min(to, end);
            if (b > a) {
                boolean whole = a == begin && b == end;
                result.add(whole ? piece : piece.part((a - begin) / piece.span(), (b - begin) / piece.span()));
            }
            begin = end;
        }
        return new Chain(result);
    }

    /** The parameter of the point nearest to a place. */
    public double nearest(Vector3D place) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        double begin = 0;
        for (Piece piece : pieces) {
            double share = share(piece, place);
            double distance = piece.part(0, share).to().distance(place);
            if (distance < least) {
                least = distance;
                best = begin + share * piece.span();
            }
            begin += piece.span();
        }
        return best;
    }

    private static double share(Piece piece, Vector3D place) {
        double length = piece.end() - piece.start();
        double period = piece.curve().period();
        double off = piece.curve().nearest(place) - piece.start();
        if (period > 0) {
            off %= period;
            off += off * length < 0 ? Math.signum(length) * period : 0;
        }
        double share = length == 0 ? 0 : off / length;
        if (share >= 0 && share <= 1) {
            return share;
        }
        return piece.from().distance(place) < piece.to().distance(place) ? 0 : 1;
    }

    /** Corners of its chords, the ends on the curve; the last one repeats the first when the chain is closed. */
    public List<Vector3D> points(Fineness fineness) {
        List<Vector3D> points = new ArrayList<>();
        for (Piece piece : pieces) {
            for (double t : piece.curve().stations(piece.start(), piece.end(), fineness)) {
                Vector3D point = piece.curve().at(t);
                if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                    points.add(point);
                }
            }
            Fineness.counted(points.size());
        }
        return points;
    }

    /** The way along it, with directions; gaps between pieces are bridged by straight lines. */
    public Track track(Fineness fineness) {
        List<Station> stations = new ArrayList<>();
        for (Piece piece : pieces) {
            add(piece, fineness, stations);
            Fineness.counted(stations.size());
        }
        int last = stations.size() - 1;
        if (last < 2 || stations.get(0).point().distance(stations.get(last).point()) > fineness.point()) {
            return new Track(stations, false);
        }
        Station first = stations.get(0);
        stations.set(0, new Station(first.point(), stations.get(last).before(), first.after()));
        return new Track(stations.subList(0, last), true);
    }

    private static void add(Piece piece, Fineness fineness, List<Station> stations) {
        double[] t = piece.curve().stations(piece.start(), piece.end(), fineness);
        List<Vector3D> points = new ArrayList<>(t.length);
        List<Vector3D> directions = new ArrayList<>(t.length);
        for (int i = 0; i < t.length; i++) {
            Vector3D point = piece.curve().at(t[i]);
            int known = points.size() - 1;
            if (known < 0 || point.distance(points.get(known)) > fineness.point()) {
                points.add(point);
                directions.add(piece.direction(t[i]));
            } else if (known > 0) {
                directions.set(known, piece.direction(t[i]));
            }
        }
        if (points.size() < 2) {
            return;
        }
        for (int i = 0; i < points.size(); i++) {
            Vector3D direction = directions.get(i).equals(Vector3D.ZERO)
                    ? points.get(Math.min(i + 1, points.size() - 1))
                            .subtract(points.get(Math.min(i, points.size() - 2)))
                            .normalize()
                    : directions.get(i);
            if (i == 0) {
                join(points.get(0), direction, fineness.point(), stations);
            } else {
                stations.add(new Station(points.get(i), direction, direction));
            }
        }
    }

    private static void join(Vector3D point, Vector3D direction, double tolerance, List<Station> stations) {
        int last = stations.size() - 1;
        if (last < 0) {
            stations.add(new Station(point, direction, direction));
            return;
        }
        Station before = stations.get(last);
        if (before.point().distance(point) <= tolerance) {
            stations.set(last, new Station(before.point(), before.before(), direction));
            return;
        }
        Vector3D bridge = point.subtract(before.point()).normalize();
        stations.set(last, new Station(before.point(), before.before(), bridge));
        stations.add(new Station(point, bridge, direction));
    }
}
