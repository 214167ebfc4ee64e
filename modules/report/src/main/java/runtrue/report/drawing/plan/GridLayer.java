package runtrue.report.drawing.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;
import runtrue.result.GridLine;

/** Grid lines as far as they cross the roof, with their names in bubbles beside it. */
public final class GridLayer {
    /** From the roof to the bubbles; room for lengths of edges lies between. */
    public static final double BEYOND = 8;

    public static final Pen PEN = new Pen(Ink.GREY, 0.13, "6 1 0.6 1");
    private static final double RADIUS = 2.7;

    private final Canvas canvas;
    private final Box area;
    private final Set<String> drawn = new HashSet<>();

    /**
     * A layer for one roof.
     *
     * @param roof its extent on paper
     */
    GridLayer(Canvas canvas, Box roof) {
        this.canvas = canvas;
        this.area = roof.grown(BEYOND);
    }

    void draw(List<GridLine> lines) {
        canvas.svg().group("grid");
        lines.forEach(this::draw);
        canvas.svg().end();
    }

    private void draw(GridLine line) {
        List<Vec> points = line.points().stream().map(canvas.view()::at).toList();
        boolean straight = points.size() == 2;
        boolean named = line.name().isBlank();
        for (int i = 0; i + 1 < points.size(); i++) {
            Optional<Vec[]> within = within(points.get(i), points.get(i + 1), area);
            if (within.isEmpty()) {
                continue;
            }
            // A straight axis is meant to go on; many are drawn a little shorter than the roof.
            Vec[] ends = straight
                    ? within(far(points.get(0), points.get(1)), far(points.get(1), points.get(0)), area)
                            .orElse(within.get())
                    : within.get();
            if (!drawn.add(line.name() + Figures.fixed(ends[0].x(), 0) + " " + Figures.fixed(ends[0].y(), 0))) {
                continue;
            }
            canvas.svg().line(Path.line(ends[0], ends[1]), PEN);
            canvas.used(Sign.GRID);
            named = named || bubble(line.name(), ends);
        }
    }

    /** A place far out on the line beyond {@code from}, seen from {@code other}. */
    private static Vec far(Vec from, Vec other) {
        return from.plus(from.minus(other).unit().times(5000));
    }

    /** At the left or upper end, or else at the other. */
    private boolean bubble(String name, Vec[] ends) {
        Vec way = ends[1].minus(ends[0]);
        boolean turn = way.x() < -1e-6 || (way.x() <= 1e-6 && way.y() < 0);
        Vec first = turn ? ends[1] : ends[0];
        Vec last = turn ? ends[0] : ends[1];
        return bubble(name, first, first.minus(last).unit())
                || bubble(name, last, last.minus(first).unit());
    }

    private boolean bubble(String name, Vec end, Vec outward) {
        Vec centre = end.plus(outward.times(RADIUS));
        Tilted room = Tilted.level(centre, 2 * RADIUS, 2 * RADIUS);
        if (!canvas.board().free(room)) {
            return false;
        }
        canvas.board().take(room);
        draw(canvas.svg(), centre, name);
        return true;
    }

    /** A bubble with a name, made smaller until it fits. */
    public static void draw(Svg svg, Vec centre, String name) {
        svg.circle(centre, RADIUS, Ink.WHITE, Pen.of(Ink.GREY, 0.25));
        Type type = new Type(
                Math.max(1.2, Math.min(2.5, 2 * RADIUS * 0.85 / Math.max(0.1, Type.SMALL.width(name)) * 2.1)),
                false,
                Ink.BLACK);
        svg.text(centre.plus(new Vec(0, type.drop())), Anchor.MIDDLE, type, Svg.cut(name, 2.2 * RADIUS, type));
    }

    /** The part of a line within a rectangle: parameters are cut side by side (Liang and Barsky, 1984). */
    static Optional<Vec[]> within(Vec from, Vec to, Box area) {
        Vec way = to.minus(from);
        double[] move = {-way.x(), way.x(), -way.y(), way.y()};
        double[] room = {
            from.x() - area.left(), area.right() - from.x(), from.y() - area.top(), area.bottom() - from.y()
        };
        double start = 0;
        double end = 1;
        for (int side = 0; side < 4; side++) {
            if (Math.abs(move[side]) < 1e-12) {
                if (room[side] < 0) {
                    return Optional.empty();
                }
            } else if (move[side] < 0) {
                start = Math.max(start, room[side] / move[side]);
            } else {
                end = Math.min(end, room[side] / move[side]);
            }
        }
        return start < end ? Optional.of(new Vec[] {from.towards(to, start), from.towards(to, end)}) : Optional.empty();
    }
}
