package runtrue.report.drawing.plan;

import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;

/** A measured line with a short stroke across each end. */
final class BarLine {
    private BarLine() {}

    static void draw(Svg svg, Vec from, Vec to, Pen pen) {
        Vec stroke = to.minus(from).unit().turned().times(0.8);
        svg.line(
                Path.line(from, to)
                        .segment(from.minus(stroke), from.plus(stroke))
                        .segment(to.minus(stroke), to.plus(stroke)),
                pen);
    }
}
