package runtrue.report.drawing.page;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.plan.Canvas;
import runtrue.report.drawing.plan.EdgeLook;
import runtrue.report.drawing.plan.Sign;
import runtrue.report.drawing.plan.Signs;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;

/** What the signs mean: those that appear, no others. Edges left, the rest right. */
record Legend(List<String> edges, List<Sign> signs, String hatch) {
    private static final double ROW = 5;
    private static final double SAMPLE = 11;

    static Legend of(Canvas canvas) {
        return new Legend(new ArrayList<>(canvas.edgeKinds()), new ArrayList<>(canvas.signs()), canvas.hatch());
    }

    double height() {
        return Math.max(edges.size(), signs.size()) * ROW;
    }

    void draw(Svg svg, Box box) {
        double wide = 32;
        for (int i = 0; i < edges.size(); i++) {
            Vec left = new Vec(box.left(), box.top() + (i + 0.5) * ROW);
            EdgeLook.of(edges.get(i)).draw(svg, left, left.plus(new Vec(SAMPLE, 0)), new Vec(0, -1));
            words(svg, left, box.left() + wide, edges.get(i));
        }
        for (int i = 0; i < signs.size(); i++) {
            Vec left = new Vec(box.left() + wide, box.top() + (i + 0.5) * ROW);
            Signs.draw(svg, signs.get(i), left, SAMPLE, hatch);
            words(svg, left, box.right(), signs.get(i).words());
        }
    }

    private static void words(Svg svg, Vec left, double end, String words) {
        Vec at = left.plus(new Vec(SAMPLE + 1.8, Type.SMALL.drop()));
        svg.text(at, Anchor.START, Type.SMALL, Svg.cut(words, end - at.x(), Type.SMALL));
    }
}
