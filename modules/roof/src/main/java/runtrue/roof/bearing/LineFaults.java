package runtrue.roof.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.flat.Overlays;
import runtrue.roof.plane.Outlines;

/**
 * Finds where support lines stop short, have no piece, or run askew. A bay may be set out for itself, closer or wider than
 * the others: where it has lines of its own, and none of them stands farther apart around the place than is usual in the
 * bay, the others' lines are not missing there. A bay with fewer lines that are all the others' has lost some.
 */
public final class LineFaults {
    /** Less than this is left free beside a verge, hip or valley by any detail. */
    private static final double SHORT = RoofTolerance.LINE_SHORT.si();

    /** Members out of square to the fall by more than this are set out to something else. */
    private static final double ASKEW = RoofTolerance.LINE_ASKEW.si();

    /** A line over less of the plane's width is one that some bays have to themselves, not one that stops short. */
    private static final double MOST = 0.5;

    /** A wider space than this times the bay's usual one has lost a line. */
    private static final double SPACING = RoofTolerance.LINE_SPACING.si();

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private LineFaults() {}

    /** Faults by line, then across the fall. */
    public static List<LineFault> of(Polygon outline, List<SupportLine> lines) {
        List<LineFault> faults = new ArrayList<>();
        Polygon shell = Outlines.shell(outline);
        for (SupportLine line : lines) {
            for (SupportPiece piece : line.pieces()) {
                double angle = Math.atan2(piece.vTo() - piece.vFrom(), piece.uTo() - piece.uFrom());
                if (Math.abs(angle) > ASKEW) {
                    Interval u = new Interval(piece.uFrom(), piece.uTo());
                    double v = (piece.vFrom() + piece.vTo()) / 2;
                    faults.add(new LineFault(LineFault.Kind.ASKEW, line.number(), u, v, angle));
                }
            }
            for (Interval inside : inside(shell, line.v())) {
                if (covered(inside, line) > MOST * inside.length()) {
                    bare(inside, line).stream()
                            .filter(fault -> !isSetOutForItself(fault.u(), line, lines))
                            .forEach(faults::add);
                }
            }
        }
        return faults;
    }

    private static double covered(Interval inside, SupportLine line) {
        return line.extents().stream()
                .mapToDouble(e -> Math.max(0, Math.min(e.to(), inside.to()) - Math.max(e.from(), inside.from())))
                .sum();
    }

    private static List<LineFault> bare(Interval inside, SupportLine line) {
        List<LineFault> faults = new ArrayList<>();
        double at = inside.from();
        boolean begun = false;
        for (Interval extent : line.extents()) {
            if (extent.to() <= inside.from() || extent.from() >= inside.to()) {
                continue;
            }
            add(line, new Interval(at, extent.from()), begun, faults);
            at = Math.max(at, extent.to());
            begun = true;
        }
        if (begun) {
            add(line, new Interval(at, inside.to()), false, faults);
        }
        return faults;
    }

    private static void add(SupportLine line, Interval bare, boolean between, List<LineFault> faults) {
        if (bare.length() > SHORT) {
            LineFault.Kind kind = between ? LineFault.Kind.MISSING : LineFault.Kind.STOPS_SHORT;
            faults.add(new LineFault(kind, line.number(), bare, line.v(), 0));
        }
    }

    /**
     * Whether the lines in the bay that a line leaves bare are a set-out of their own with no room for it, or with room for
     * one that another line tells of.
     */
    private static boolean isSetOutForItself(Interval bay, SupportLine bare, List<SupportLine> lines) {
        List<SupportLine> within = lines.stream()
                .filter(l -> covered(bay, l) > MOST * bay.length())
                .sorted(Comparator.comparingDouble(SupportLine::v))
                .toList();
        boolean own = within.stream().anyMatch(l -> covered(bay, l) > MOST * length(l));
        if (!own || within.size() < 3) {
            return false;
        }
        List<Double> spaces = new ArrayList<>();
        for (int i = 1; i < within.size(); i++) {
            spaces.add(within.get(i).v() - within.get(i - 1).v());
        }
        spaces.sort(Comparator.naturalOrder());
        double usual = spaces.get((spaces.size() - 1) / 2);
        for (int i = 1; i < within.size(); i++) {
            Interval gap = new Interval(within.get(i - 1).v(), within.get(i).v());
            if (gap.from() < bare.v() && bare.v() < gap.to()) {
                return gap.length() <= SPACING * usual
                        || lost(gap, usual, bare(gap, within, lines)).noneMatch(bare::equals);
            }
        }
        return false;
    }

    private static List<SupportLine> bare(Interval gap, List<SupportLine> within, List<SupportLine> lines) {
        return lines.stream()
                .filter(l -> !within.contains(l) && gap.from() < l.v() && l.v() < gap.to())
                .toList();
    }

    /**
     * Of the lines that other bays have in a gap of a bay's own set-out, those that tell of what it has lost: one for each
     * line that the gap has room for, the nearest to where it would lie.
     */
    private static Stream<SupportLine> lost(Interval gap, double usual, List<SupportLine> bare) {
        long spaces = Math.max(2, Math.round(gap.length() / usual));
        return LongStream.range(1, spaces).mapToObj(i -> {
            double place = gap.from() + gap.length() * i / spaces;
            return bare.stream()
                    .min(Comparator.comparingDouble(l -> Math.abs(l.v() - place)))
                    .orElseThrow();
        });
    }

    private static double length(SupportLine line) {
        return line.extents().stream().mapToDouble(Interval::length).sum();
    }

    /** Where a line across the fall lies within the outline. */
    private static List<Interval> inside(Polygon shell, double v) {
        Envelope box = shell.getEnvelopeInternal();
        LineString cut = FACTORY.createLineString(
                new Coordinate[] {new Coordinate(box.getMinX() - 1, v), new Coordinate(box.getMaxX() + 1, v)});
        Geometry parts = Overlays.intersection(shell, cut);
        List<Interval> inside = new ArrayList<>();
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            Envelope part = parts.getGeometryN(i).getEnvelopeInternal();
            if (part.getWidth() > 0) {
                inside.add(new Interval(part.getMinX(), part.getMaxX()));
            }
        }
        inside.sort(Comparator.comparingDouble(Interval::from));
        return inside;
    }
}
