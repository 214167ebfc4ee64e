package runtrue.rules.judge.subject;

import java.util.List;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.rules.cel.Facts;

/** What is told of supports piece by piece, and counted for a drop. */
public final class SupportPieces {
    /** Pieces that are drawn end to end share this much. */
    private static final double END_TO_END = 0.005;

    private SupportPieces() {}

    /** Of all planes. */
    public static List<SupportPiece> of(List<PlaneLayout> layouts) {
        return layouts.stream()
                .flatMap(l -> l.supports().stream())
                .flatMap(l -> l.pieces().stream())
                .toList();
    }

    /** How many lie alongside the next one on their line. */
    public static long lapped(List<PlaneLayout> layouts) {
        return layouts.stream()
                .flatMap(l -> l.supports().stream())
                .flatMapToDouble(line -> line.pieces().stream().mapToDouble(p -> lap(p, line)))
                .filter(lap -> lap > 0)
                .count();
    }

    /** How many have a surface that neither their material nor the settings tell. */
    public static long ofUnknownMetal(List<PlaneLayout> layouts, Facts facts) {
        return of(layouts).stream()
                .filter(p -> Metals.of(p.element().layers(), facts, "settings.support_metal")
                        .equals(Metals.UNKNOWN))
                .count();
    }

    /** The least length over which a piece lies alongside another of its line at an end, metres; 0 where it does nowhere. */
    static double lap(SupportPiece piece, SupportLine line) {
        return line.pieces().stream()
                .filter(other -> !other.equals(piece))
                .mapToDouble(other -> Drainage.overlap(extent(piece), extent(other)))
                .filter(shared -> shared > END_TO_END)
                .min()
                .orElse(0);
    }

    private static Interval extent(SupportPiece piece) {
        return new Interval(piece.uFrom(), piece.uTo());
    }
}
