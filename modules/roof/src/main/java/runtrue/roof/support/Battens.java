package runtrue.roof.support;

import java.util.List;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;

/** Tells battens from purlins by what they are to a roofer: slight, and closer together than purlins ever are. */
final class Battens {
    private static final double DEEPEST = RoofTolerance.BATTEN_DEPTH.si();
    private static final double WIDEST = RoofTolerance.BATTEN_SPACING.si();

    private Battens() {}

    /** Whether the lines are battens: at least three, by their mean spacing and the depth of most of them. */
    static boolean are(List<SupportLine> lines) {
        if (lines.size() < 3) {
            return false;
        }
        double spacing = (lines.get(lines.size() - 1).v() - lines.get(0).v()) / (lines.size() - 1);
        List<SupportPiece> pieces =
                lines.stream().flatMap(l -> l.pieces().stream()).toList();
        long slight = pieces.stream().filter(p -> p.depth() <= DEEPEST).count();
        return spacing <= WIDEST && slight * 2 > pieces.size();
    }
}
