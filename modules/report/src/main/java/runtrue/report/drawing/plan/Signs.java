package runtrue.report.drawing.plan;

import java.util.List;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.result.Outcome;

/** Samples of the signs for a legend. */
public final class Signs {
    private Signs() {}

    /**
     * Draws a sample.
     *
     * @param left middle of its left side
     * @param length of the sample, millimetres
     * @param hatch what to fill long spans with
     */
    public static void draw(Svg svg, Sign sign, Vec left, double length, String hatch) {
        Vec right = left.plus(new Vec(length, 0));
        Vec middle = left.towards(right, 0.5);
        switch (sign) {
            case FALL -> PlaneLabels.draw(svg, left.plus(new Vec(1, 0)), right);
            case SHEETS -> sheets(svg, left, right);
            case SUPPORT -> svg.line(Path.line(left, right), SupportLayer.PEN);
            case SPAN ->
                BarLine.draw(svg, left.plus(new Vec(1, 0)), right.minus(new Vec(1, 0)), Pen.of(Ink.GREY, 0.18));
            case LONG_SPAN -> svg.shape(box(middle, length, 3), hatch, Pen.of(Ink.ACCENT, 0.3));
            case ZONE -> {
                svg.shape(box(left.towards(right, 0.25), length / 2, 3), ZoneLayer.CORNER, ZoneLayer.PEN);
                svg.shape(box(left.towards(right, 0.75), length / 2, 3), ZoneLayer.EDGE, ZoneLayer.PEN);
            }
            case PENETRATION -> penetration(svg, middle);
            case GRID -> svg.line(Path.line(left, right), GridLayer.PEN);
            case NON_CONFORMING -> MarkLayer.draw(svg, middle, Outcome.DOES_NOT_CONFORM, "1");
            case CONCEDED -> MarkLayer.draw(svg, middle, Outcome.CONCEDED, "1");
            case NOT_ASSESSED -> MarkLayer.draw(svg, middle, Outcome.NOT_ASSESSED, "?");
        }
    }

    private static void sheets(Svg svg, Vec left, Vec right) {
        Path strips = new Path();
        for (int i = 0; i <= 4; i++) {
            Vec at = left.towards(right, 0.1 + 0.2 * i);
            strips.segment(at.minus(new Vec(0, 1.6)), at.plus(new Vec(0, 1.6)));
        }
        svg.line(strips, Pen.of(Ink.PALE, 0.13));
        BarLine.draw(svg, left.towards(right, 0.1), left.towards(right, 0.9), Pen.of(Ink.GREY, 0.18));
    }

    private static void penetration(Svg svg, Vec middle) {
        svg.shape(box(middle, 4, 3), Ink.WHITE, Pen.of(Ink.BLACK, 0.35));
        svg.line(
                Path.line(middle.minus(new Vec(2, 1.5)), middle.plus(new Vec(2, 1.5)))
                        .segment(middle.plus(new Vec(-2, 1.5)), middle.plus(new Vec(2, -1.5))),
                Pen.of(Ink.BLACK, 0.13));
    }

    private static Path box(Vec middle, double width, double height) {
        Vec half = new Vec(width / 2, height / 2);
        return Path.ring(List.of(
                middle.minus(half),
                middle.plus(new Vec(half.x(), -half.y())),
                middle.plus(half),
                middle.plus(new Vec(-half.x(), half.y()))));
    }
}
