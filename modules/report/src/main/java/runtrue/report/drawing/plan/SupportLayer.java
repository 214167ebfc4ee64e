package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.PlaneResult.Piece;
import runtrue.result.PlaneResult.SupportLine;

/** Support lines, member by member, so that one that stops short shows as such. */
final class SupportLayer {
    /** Support lines nearer than this on paper, millimetres, have every fifth number only. */
    private static final double CLOSE = 6;

    static final Pen PEN = new Pen(Ink.GREY, 0.3, "2.6 0.7");

    private final Canvas canvas;

    SupportLayer(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(List<Patch> patches) {
        canvas.svg().group("supports", PEN);
        for (Patch patch : patches) {
            for (SupportLine line : patch.plane().supports()) {
                Path path = new Path();
                for (Piece piece : line.pieces()) {
                    path.segment(canvas.view().at(piece.from()), canvas.view().at(piece.to()));
                }
                canvas.svg().path("support", line.id(), path);
                canvas.used(Sign.SUPPORT);
            }
        }
        canvas.svg().end();
    }

    /** Numbers near the ends of the lines, first on one side and then on the other. */
    void label(List<Patch> patches) {
        for (Patch patch : patches) {
            int last = patch.plane().supports().size();
            boolean close = spacing(patch) < CLOSE;
            for (SupportLine line : patch.plane().supports()) {
                boolean passed = close && line.number() != 1 && line.number() != last && line.number() % 5 != 0;
                if (passed || line.extents().isEmpty()) {
                    continue;
                }
                double from = line.extents().get(0).fromMetres();
                double to = line.extents().get(line.extents().size() - 1).toMetres();
                double inset = Math.min(3.2 / Math.max(0.1, patch.across().length()), (to - from) / 2);
                List<Tilted> places = new ArrayList<>();
                for (double u : new double[] {from + inset, to - inset, from + 2 * inset, to - 2 * inset}) {
                    places.add(new Tilted(patch.at(u, line.vMetres()), new Vec(1, 0), 0, 0));
                }
                places.removeIf(p -> !patch.contains(p.centre()));
                canvas.label(places, Type.QUIET, "S" + line.number());
            }
        }
    }

    /** Mean distance on paper. */
    private static double spacing(Patch patch) {
        List<SupportLine> lines = patch.plane().supports();
        if (lines.size() < 2) {
            return Double.MAX_VALUE;
        }
        double whole =
                Math.abs(lines.get(lines.size() - 1).vMetres() - lines.get(0).vMetres());
        return whole * patch.up().length() / (lines.size() - 1);
    }
}
