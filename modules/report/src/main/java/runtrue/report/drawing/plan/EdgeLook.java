package runtrue.report.drawing.plan;

import java.util.List;
import java.util.Locale;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;

/**
 * How a kind of edge is drawn: told apart without colour by weight, dashes and what stands beside the line.
 *
 * @param beside what stands beside it, on the side away from the plane
 */
public record EdgeLook(Pen pen, Beside beside) {
    /** What stands beside the line. */
    enum Beside {
        NOTHING,
        /** A thin line along it: a gutter or drip edge. */
        LINE,
        /** A light core: two lines of one weight. */
        CORE,
        /** Slanting strokes, as a wall is drawn. */
        SLANTS,
        /** Square strokes. */
        TICKS
    }

    /** The look of a kind; a kind that is not known gets a dotted line and still its name. */
    public static EdgeLook of(String kind) {
        return switch (kind.toLowerCase(Locale.ROOT)) {
            case "eave" -> new EdgeLook(Pen.of(Ink.WATER, 0.7), Beside.LINE);
            case "box gutter", "internal gutter", "gutter" -> new EdgeLook(Pen.of(Ink.WATER, 1.5), Beside.CORE);
            case "valley" -> new EdgeLook(new Pen(Ink.WATER, 0.7, "4 1.4"), Beside.NOTHING);
            case "ridge" -> new EdgeLook(Pen.of(Ink.BLACK, 1), Beside.NOTHING);
            case "hip" -> new EdgeLook(new Pen(Ink.BLACK, 0.7, "7 1.2 1 1.2"), Beside.NOTHING);
            case "head" -> new EdgeLook(Pen.of(Ink.BLACK, 0.7), Beside.TICKS);
            case "pitch change" -> new EdgeLook(new Pen(Ink.BLACK, 0.5, "1 1"), Beside.NOTHING);
            case "verge" -> new EdgeLook(Pen.of(Ink.SIDE, 0.5), Beside.NOTHING);
            case "abutment" -> new EdgeLook(Pen.of(Ink.SIDE, 0.7), Beside.SLANTS);
            case "step" -> new EdgeLook(new Pen(Ink.BLACK, 0.7, "5 1 1 1 1 1"), Beside.TICKS);
            default -> new EdgeLook(new Pen(Ink.GREY, 0.5, "0.5 1"), Beside.NOTHING);
        };
    }

    /**
     * Draws it.
     *
     * @param outward unit vector square to the edge, away from the plane
     */
    public void draw(Svg svg, Vec from, Vec to, Vec outward) {
        svg.line(Path.line(from, to), pen);
        switch (beside) {
            case LINE ->
                svg.line(
                        Path.line(from.plus(outward.times(0.9)), to.plus(outward.times(0.9))),
                        Pen.of(pen.colour(), 0.18));
            case CORE -> svg.line(Path.line(from, to), Pen.of(Ink.WHITE, pen.width() / 2));
            case SLANTS ->
                svg.line(strokes(from, to, List.of(outward, to.minus(from).unit())), Pen.of(Ink.SIDE, 0.25));
            case TICKS -> svg.line(strokes(from, to, List.of(outward)), Pen.of(Ink.BLACK, 0.25));
            case NOTHING -> {}
        }
    }

    private static Path strokes(Vec from, Vec to, List<Vec> ways) {
        Vec stroke = ways.stream().reduce(new Vec(0, 0), Vec::plus).times(1.3);
        int count = (int) Math.min(400, to.minus(from).length() / 2);
        Path path = new Path();
        for (int i = 0; i < count; i++) {
            Vec foot = from.towards(to, (i + 0.5) / count);
            path.segment(foot, foot.plus(stroke));
        }
        return path;
    }
}
