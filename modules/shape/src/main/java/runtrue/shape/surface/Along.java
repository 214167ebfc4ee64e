package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Piece;

/** A chain as one curve over its own parameter, in other axes; a closed one goes on for ever. */
final class Along implements Curve {
    private final Chain chain;
    private final double span;
    private final double period;
    private final AffineTransformMatrix3D axes;
    private final AffineTransformMatrix3D back;

    /**
     * @param axes from the chain's to those wanted; keeps lengths
     */
    Along(Chain chain, AffineTransformMatrix3D axes, double tolerance) {
        this.chain = chain;
        this.span = chain.span();
        this.period = chain.closed(tolerance) ? span : 0;
        this.axes = axes;
        this.back = axes.inverse();
    }

    double span() {
        return span;
    }

    @Override
    public Vector3D at(double parameter) {
        double t = wrapped(parameter);
        Piece piece = chain.pieces().get(0);
        double begin = 0;
        for (Piece next : chain.pieces()) {
            piece = next;
            if (t <= begin + next.span()) {
                break;
            }
            begin += next.span();
        }
        double share = piece.span() > 0 ? Math.min(1, (t - begin) / piece.span()) : 0;
        double length = piece.end() - piece.start();
        return axes.apply(piece.curve().at(share == 1 ? piece.end() : piece.start() + share * length));
    }

    private double wrapped(double parameter) {
        if (period == 0) {
            return Math.min(Math.max(parameter, 0), span);
        }
        return parameter >= 0 && parameter <= span ? parameter : parameter - period * Math.floor(parameter / period);
    }

    @Override
    public Vector3D tangent(double parameter) {
        double h = 1e-6 * span;
        return at(parameter + h).subtract(at(parameter - h)).multiply(0.5 / h);
    }

    @Override
    public double nearest(Vector3D place) {
        return chain.nearest(back.apply(place));
    }

    @Override
    public double period() {
        return period;
    }

    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        List<Double> own = new ArrayList<>();
        double begin = 0;
        for (Piece piece : chain.pieces()) {
            double length = piece.end() - piece.start();
            for (double t : piece.curve().stations(piece.start(), piece.end(), fineness)) {
                own.add(begin + (length == 0 ? 0 : piece.span() * (t - piece.start()) / length));
            }
            begin += piece.span();
        }
        List<Double> result = new ArrayList<>();
        result.add(from);
        double least = 1e-9 * span;
        double lap = period > 0 ? period * Math.floor(from / period) : 0;
        do {
            for (double t : own) {
                double u = lap + t;
                if (u > result.get(result.size() - 1) + least && u < to - least) {
                    result.add(u);
                }
            }
            lap += period;
        } while (period > 0 && lap < to);
        result.add(to);
        return result.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
