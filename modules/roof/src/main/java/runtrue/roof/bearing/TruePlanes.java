package runtrue.roof.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import runtrue.roof.Interval;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.bearing.TruePlane.Deviation;
import runtrue.roof.bearing.TruePlane.Step;

/** Measures the supports' contact faces against the plane that they should make. */
public final class TruePlanes {
    /** Supports that share less width than this do not carry one sheet. */
    private static final double SHARED = RoofTolerance.SUPPORT_INSIDE.si();

    private TruePlanes() {}

    /**
     * The contact plane of a plane's supports and how they lie to it.
     *
     * @param lines from the eave up, at least one piece among them
     * @param buildUpDepth from the skin down to the contact faces as stated, metres
     */
    public static TruePlane of(List<SupportLine> lines, OptionalDouble buildUpDepth) {
        List<SupportLine> bearing = lines.stream().map(TruePlanes::bearing).toList();
        double level = level(bearing);
        List<Deviation> deviations = new ArrayList<>();
        for (SupportLine line : bearing) {
            for (SupportPiece piece : line.pieces()) {
                deviations.add(
                        new Deviation(line.number(), piece, piece.contactFrom() - level, piece.contactTo() - level));
            }
        }
        OptionalDouble gap = buildUpDepth.isPresent()
                ? OptionalDouble.of(-level - buildUpDepth.getAsDouble())
                : OptionalDouble.empty();
        OptionalDouble tilt = lines.size() < 2 ? OptionalDouble.empty() : BestFit.of(deviations);
        return new TruePlane(level, tilt, deviations, steps(bearing), gap);
    }

    /**
     * A line without its sleeves: short pieces that lie in longer ones at both ends, below the higher of these. Sheets are
     * packed to the purlins, not to what joins them.
     */
    private static SupportLine bearing(SupportLine line) {
        List<SupportPiece> kept =
                line.pieces().stream().filter(p -> !isSleeve(p, line.pieces())).toList();
        return new SupportLine(line.id(), line.number(), line.v(), kept, line.extents());
    }

    private static boolean isSleeve(SupportPiece piece, List<SupportPiece> line) {
        OptionalDouble from = highestOver(piece, piece.uFrom(), line);
        OptionalDouble to = highestOver(piece, piece.uTo(), line);
        return from.isPresent() && to.isPresent() && piece.contact() < Math.max(from.getAsDouble(), to.getAsDouble());
    }

    /** Level at u of the longer pieces that a piece lies in there. */
    private static OptionalDouble highestOver(SupportPiece piece, double u, List<SupportPiece> line) {
        return line.stream()
                .filter(other -> length(other) > length(piece) && other.uFrom() <= u && u <= other.uTo())
                .mapToDouble(other -> other.contactAt(u))
                .max();
    }

    /** Median of the pieces' mean levels, by their lengths; between two levels of equal length the higher. */
    private static double level(List<SupportLine> lines) {
        List<SupportPiece> pieces = lines.stream()
                .flatMap(l -> l.pieces().stream())
                .sorted(Comparator.comparingDouble(TruePlanes::mean).reversed())
                .toList();
        double half = pieces.stream().mapToDouble(TruePlanes::length).sum() / 2;
        double sum = 0;
        for (SupportPiece piece : pieces) {
            sum += length(piece);
            // A hair's breadth, so that rounding does not choose between two levels of equal length.
            if (sum >= half * (1 - 1e-9)) {
                return mean(piece);
            }
        }
        throw new IllegalArgumentException("a contact plane needs at least one support");
    }

    private static double mean(SupportPiece piece) {
        return (piece.contactFrom() + piece.contactTo()) / 2;
    }

    private static double length(SupportPiece piece) {
        return piece.uTo() - piece.uFrom();
    }

    /** Each piece against the next one up the fall over every width that no line between them covers. */
    private static List<Step> steps(List<SupportLine> lines) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (SupportPiece piece : lines.get(i).pieces()) {
                List<Interval> open = List.of(new Interval(piece.uFrom(), piece.uTo()));
                for (int k = i + 1; k < lines.size() && !open.isEmpty(); k++) {
                    SupportLine upper = lines.get(k);
                    for (SupportPiece above : upper.pieces()) {
                        for (Interval u : open) {
                            step(lines.get(i), piece, upper, above, u, steps);
                        }
                    }
                    open = less(open, upper.extents());
                }
            }
        }
        return steps;
    }

    private static void step(
            SupportLine lower,
            SupportPiece piece,
            SupportLine upper,
            SupportPiece above,
            Interval open,
            List<Step> to) {
        Interval u = new Interval(Math.max(open.from(), above.uFrom()), Math.min(open.to(), above.uTo()));
        if (u.length() > SHARED) {
            to.add(new Step(
                    lower.number(),
                    upper.number(),
                    u,
                    above.contactAt(u.from()) - piece.contactAt(u.from()),
                    above.contactAt(u.to()) - piece.contactAt(u.to())));
        }
    }

    private static List<Interval> less(List<Interval> from, List<Interval> taken) {
        List<Interval> left = from;
        for (Interval t : taken) {
            List<Interval> next = new ArrayList<>();
            for (Interval f : left) {
                if (t.to() <= f.from() || t.from() >= f.to()) {
                    next.add(f);
                    continue;
                }
                if (t.from() > f.from()) {
                    next.add(new Interval(f.from(), t.from()));
                }
                if (t.to() < f.to()) {
                    next.add(new Interval(t.to(), f.to()));
                }
            }
            left = next;
        }
        return left;
    }
}
