package runtrue.report.drawing.page;

import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;

/** Below the plan: north, the scale as a bar that shrinks with the print, and what to know of the figures. */
final class Strip {
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    private final Svg svg;
    private final Box box;

    Strip(Svg svg, Box box) {
        this.svg = svg;
        this.box = box;
    }

    void draw(Fit fit, Fit.North north, String paper, List<String> notes) {
        north(north);
        double right = scale(fit.view().denominator(), paper);
        double y = box.top() + 2.2;
        double left = right + 8;
        for (String note : notes) {
            if (y > box.bottom()) {
                break;
            }
            int room = (int) Math.max(1, Math.floor((box.bottom() - y) / Type.QUIET.lineHeight()) + 1);
            y += svg.lines(new Vec(left, y), box.right() - left, Math.min(2, room), Type.QUIET, note);
        }
    }

    private void north(Fit.North north) {
        Vec middle = new Vec(box.left() + 7, box.top() + 7);
        Vec up = north.onPaper();
        Vec tip = middle.plus(up.times(6));
        Vec side = up.turned().times(2.2);
        Vec tail = middle.minus(up.times(4.5));
        svg.group("north");
        svg.circle(middle, 4.5, "none", Pen.of(Ink.BLACK, 0.18));
        svg.shape(Path.ring(List.of(tip, middle.plus(side), middle.minus(side))), Ink.BLACK, Pen.of(Ink.BLACK, 0.18));
        svg.line(Path.line(middle, tail), Pen.of(Ink.BLACK, 0.35));
        Vec words = new Vec(box.left() + 16, box.top() + 6);
        svg.text(words, Anchor.START, Type.SMALL_BOLD, "N");
        svg.text(
                words.plus(new Vec(0, Type.SMALL.lineHeight())),
                Anchor.START,
                Type.QUIET,
                north.stated() ? "true north" : "model +Y");
        svg.end();
    }

    /** Gives where it ends. */
    private double scale(double denominator, String paper) {
        double step = STEPS[0];
        for (double metres : STEPS) {
            if (4 * metres * 1000 / denominator <= 50) {
                step = metres;
            }
        }
        double part = step * 1000 / denominator;
        Vec left = new Vec(box.left() + 36, box.top() + 5);
        svg.group("scale");
        for (int i = 0; i < 4; i++) {
            Vec at = left.plus(new Vec(i * part, 0));
            svg.shape(
                    Path.ring(List.of(
                            at, at.plus(new Vec(part, 0)), at.plus(new Vec(part, 1.3)), at.plus(new Vec(0, 1.3)))),
                    i % 2 == 0 ? Ink.BLACK : Ink.WHITE,
                    Pen.of(Ink.BLACK, 0.18));
        }
        for (int i : new int[] {0, 1, 2, 4}) {
            String metres = Figures.fixed(i * step, step < 1 ? 1 : 0) + (i == 4 ? " m" : "");
            svg.text(left.plus(new Vec(i * part, -1.2)), Anchor.MIDDLE, Type.SMALL, metres);
        }
        svg.text(
                left.plus(new Vec(0, 5.4)),
                Anchor.START,
                Type.NAME,
                "1:" + Figures.fixed(denominator, 0) + " on " + paper);
        svg.end();
        return left.x() + Math.max(4 * part + 4, 30);
    }
}
