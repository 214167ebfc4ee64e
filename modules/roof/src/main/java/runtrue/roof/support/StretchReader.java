package runtrue.roof.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Stretch;
import runtrue.roof.Stretch.Crossing;
import runtrue.roof.Stretch.Ends;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.sheet.Cells;
import runtrue.roof.sheet.Cells.Cell;

/**
 * Cuts a plane across the fall wherever the supports under a cut along the fall change: at the ends of support lines,
 * at corners of the outline and where a line leaves the plane. A purlin that is missing or stops short then shows as a
 * long span there and nowhere else. Penetrations are left out of account: the sheet beside them still spans.
 */
public final class StretchReader {
    /** Shorter differences in u are rounding. */
    private static final double SAME = 1e-6;

    /** A support within this of the low or high edge still counts as below the sheet. */
    private static final double AT_EDGE = 1e-3;

    private StretchReader() {}

    /** Stretches by u, then from low to high. */
    public static List<Stretch> of(Polygon outline, List<SupportLine> lines) {
        List<Stretch> stretches = new ArrayList<>();
        for (Cell cell : Cells.ofShell(outline)) {
            double from = cell.u().from();
            for (double to : stops(cell, lines)) {
                if (to - from > SAME) {
                    stretches.add(stretch(cell.between(from, to), lines));
                    from = to;
                }
            }
        }
        return stretches;
    }

    private static Set<Double> stops(Cell cell, List<SupportLine> lines) {
        Set<Double> stops = new TreeSet<>();
        for (SupportLine line : lines) {
            line.extents().forEach(e -> {
                stops.add(e.from());
                stops.add(e.to());
            });
            for (SupportPiece piece : line.pieces()) {
                crossing(cell, cell.low(), piece).ifPresent(stops::add);
                crossing(cell, cell.high(), piece).ifPresent(stops::add);
            }
        }
        stops.removeIf(u -> u <= cell.u().from() + SAME || u >= cell.u().to() - SAME);
        stops.add(cell.u().to());
        return stops;
    }

    /** u at which a piece's line crosses a cell's edge, if the piece reaches there. */
    private static Optional<Double> crossing(Cell cell, Ends edge, SupportPiece piece) {
        double atFrom = v(piece, cell.u().from()) - edge.atFrom();
        double atTo = v(piece, cell.u().to()) - edge.atTo();
        if (atFrom * atTo >= 0) {
            return Optional.empty();
        }
        double u = cell.u().from() + cell.u().length() * atFrom / (atFrom - atTo);
        return piece.uFrom() <= u && u <= piece.uTo() ? Optional.of(u) : Optional.empty();
    }

    private static Stretch stretch(Cell cell, List<SupportLine> lines) {
        double middle = (cell.u().from() + cell.u().to()) / 2;
        double low = (cell.low().atFrom() + cell.low().atTo()) / 2 - AT_EDGE;
        double high = (cell.high().atFrom() + cell.high().atTo()) / 2 + AT_EDGE;
        List<Crossing> crossings = new ArrayList<>();
        for (SupportLine line : lines) {
            if (line.extents().stream().anyMatch(e -> e.contains(middle))) {
                SupportPiece piece = nearest(line, middle);
                double v = v(piece, middle);
                if (low <= v && v <= high) {
                    crossings.add(new Crossing(
                            line.id(),
                            new Ends(
                                    v(piece, cell.u().from()), v(piece, cell.u().to()))));
                }
            }
        }
        crossings.sort(Comparator.comparingDouble(c -> c.v().atFrom() + c.v().atTo()));
        return new Stretch(cell.u(), cell.low(), cell.high(), crossings);
    }

    /** The longest piece at u, or the nearest one in a bridged joint. */
    private static SupportPiece nearest(SupportLine line, double u) {
        return line.pieces().stream()
                .min(Comparator.comparingDouble((SupportPiece p) -> distance(p, u))
                        .thenComparingDouble(p -> p.uFrom() - p.uTo()))
                .orElseThrow();
    }

    private static double distance(SupportPiece piece, double u) {
        return Math.max(0, Math.max(piece.uFrom() - u, u - piece.uTo()));
    }

    private static double v(SupportPiece piece, double u) {
        double length = piece.uTo() - piece.uFrom();
        return length < SAME
                ? piece.vFrom()
                : piece.vFrom() + (piece.vTo() - piece.vFrom()) * (u - piece.uFrom()) / length;
    }
}
