package runtrue.report.drawing.plan;

import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.PlaneResult.Penetration;

/** Holes with crossed lines, as openings are drawn, and their size. */
final class PenetrationLayer {
    private static final Pen EDGE = Pen.of(Ink.BLACK, 0.35);
    private static final Pen CROSS = Pen.of(Ink.BLACK, 0.13);

    private final Canvas canvas;

    PenetrationLayer(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(List<Patch> patches) {
        canvas.svg().group("penetrations");
        for (Patch patch : patches) {
            for (Penetration hole : patch.plane().penetrations()) {
                List<Vec> ring = ring(hole);
                if (ring.isEmpty()) {
                    continue;
                }
                canvas.svg().shape("penetration", hole.id(), Path.ring(ring), Ink.WHITE, EDGE);
                if (ring.size() == 4) {
                    canvas.svg().line(Path.line(ring.get(0), ring.get(2)).segment(ring.get(1), ring.get(3)), CROSS);
                }
                Box bounds = Box.around(ring);
                canvas.board().take(Tilted.level(bounds.centre(), bounds.width(), bounds.height()));
                canvas.used(Sign.PENETRATION);
            }
        }
        canvas.svg().end();
    }

    void label(List<Patch> patches) {
        for (Patch patch : patches) {
            for (Penetration hole : patch.plane().penetrations()) {
                if (hole.outline().isEmpty()) {
                    continue;
                }
                Box bounds = Box.around(ring(hole));
                Vec middle = bounds.centre();
                double below = bounds.height() / 2 + 2;
                double beside = bounds.width() / 2 + 7;
                canvas.label(
                        List.of(
                                Tilted.level(middle.plus(new Vec(0, below)), 0, 0),
                                Tilted.level(middle.plus(new Vec(0, -below)), 0, 0),
                                Tilted.level(middle.plus(new Vec(beside, 0)), 0, 0),
                                Tilted.level(middle.plus(new Vec(-beside, 0)), 0, 0)),
                        Type.SMALL,
                        Figures.metres(hole.widthMetres()) + " × " + Figures.metres(hole.lengthMetres()));
            }
        }
    }

    private List<Vec> ring(Penetration hole) {
        return hole.outline().stream().map(canvas.view()::at).toList();
    }
}
