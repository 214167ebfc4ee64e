package runtrue.report.drawing.page;

import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Anchor;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;

/** A column that is filled from both ends: parts are cut off its top or its bottom. */
final class Side {
    private static final double HEADING = 5.4;

    private final Svg svg;
    private Box left;

    Side(Svg svg, Box box) {
        this.svg = svg;
        left = box;
    }

    Svg svg() {
        return svg;
    }

    /** What is not filled yet. */
    Box left() {
        return left;
    }

    Box top(double height) {
        Box part = new Box(left.left(), left.top(), left.right(), left.top() + height);
        left = new Box(left.left(), left.top() + height, left.right(), left.bottom());
        return part;
    }

    Box bottom(double height) {
        Box part = new Box(left.left(), left.bottom() - height, left.right(), left.bottom());
        left = new Box(left.left(), left.top(), left.right(), left.bottom() - height);
        return part;
    }

    /** The same with a rule and a heading over it. */
    Box top(String heading, double height) {
        return headed(top(height + HEADING), heading);
    }

    Box bottom(String heading, double height) {
        return headed(bottom(height + HEADING), heading);
    }

    private Box headed(Box part, String heading) {
        svg.line(
                Path.line(new Vec(part.left(), part.top()), new Vec(part.right(), part.top())),
                Pen.of(Ink.BLACK, 0.25));
        svg.text(new Vec(part.left(), part.top() + 3.6), Anchor.START, Type.HEADING, heading);
        return new Box(part.left(), part.top() + HEADING, part.right(), part.bottom());
    }

    /** Pairs of what and value, each on one line. */
    void pairs(Box box, List<List<String>> pairs) {
        double y = box.top() + Type.SMALL.size();
        for (List<String> pair : pairs) {
            svg.text(new Vec(box.left(), y), Anchor.START, Type.QUIET, pair.get(0));
            svg.text(
                    new Vec(box.left() + 19, y),
                    Anchor.START,
                    Type.SMALL,
                    Svg.cut(pair.get(1), box.width() - 19, Type.SMALL));
            y += pairHeight();
        }
    }

    static double pairHeight() {
        return 1.42 * Type.SMALL.size();
    }
}
