package runtrue.shape.curve.alignment;

import java.util.ArrayList;
import java.util.List;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Piece;

/**
 * A line in plan lifted to its gradient, IfcGradientCurve: x of the gradient is the distance along the line in plan, y the
 * height. Distances along it are those in plan, as stations of alignments are.
 */
public final class GradientCurve {
    private GradientCurve() {}

    /**
     * The curve where both are known.
     *
     * @param plan its spans count lengths
     * @param gradient in its own plane, x rising
     * @param label of the curve, for messages
     */
    public static Chain of(Chain plan, Chain gradient, String label) {
        List<Piece> pieces = new ArrayList<>();
        double begin = 0;
        for (Piece level : plan.pieces()) {
            for (Piece rise : gradient.pieces()) {
                double from = Math.max(begin, rise.from().getX());
                double to = Math.min(begin + level.span(), rise.to().getX());
                if (to - from > 1e-9 * plan.span()) {
                    pieces.add(new Piece(new Graded(level, begin, rise), from, to, to - from));
                }
            }
            begin += level.span();
        }
        if (pieces.isEmpty()) {
            throw new ShapeException("The gradient of " + label + " lies beyond its curve in plan; check both.");
        }
        return new Chain(pieces);
    }
}
