package runtrue.shape.curve.alignment;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Line;
import runtrue.shape.curve.Piece;

/**
 * One piece in plan with one piece of its gradient; the parameter is the distance in plan from where the whole begins.
 *
 * @param level in plan, its span its length
 * @param begin distance at which it begins
 * @param rise x the distance, y the height, from lesser to greater x
 */
record Graded(Piece level, double begin, Piece rise) implements Curve {
    private static final int HALVINGS = 60;

    @Override
    public Vector3D at(double distance) {
        return level.curve()
                .at(inPlan(distance))
                .add(Vector3D.of(0, 0, rise.curve().at(inRise(distance)).getY()));
    }

    @Override
    public Vector3D tangent(double distance) {
        Vector3D along = level.curve().tangent(inPlan(distance)).multiply(Math.signum(level.end() - level.start()));
        Vector3D up = rise.curve().tangent(inRise(distance));
        return along.normalize().add(Vector3D.of(0, 0, up.getY() / up.getX()));
    }

    private double inPlan(double distance) {
        return level.start() + (distance - begin) / level.span() * (level.end() - level.start());
    }

    private double inRise(double distance) {
        if (rise.curve() instanceof Line) {
            double from = rise.from().getX();
            return rise.start() + (distance - from) / (rise.to().getX() - from) * (rise.end() - rise.start());
        }
        double low = rise.start();
        double high = rise.end();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (rise.curve().at(middle).getX() < distance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    @Override
    public double nearest(Vector3D place) {
        double parameter = level.curve().nearest(place);
        return begin + (parameter - level.start()) / (level.end() - level.start()) * level.span();
    }

    @Override
    public double period() {
        return 0;
    }

    /** Distances of alignments are those in plan. */
    @Override
    public OptionalDouble speed() {
        return OptionalDouble.of(1);
    }

    /** Those of both pieces, each with half the tolerance. */
    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        Fineness half = new Fineness(0.5 * fineness.chord(), fineness.point(), fineness.reach(), fineness.step());
        DoubleStream plan = Arrays.stream(level.curve().stations(inPlan(from), inPlan(to), half))
                .map(t -> begin + (t - level.start()) / (level.end() - level.start()) * level.span());
        DoubleStream heights = Arrays.stream(rise.curve().stations(inRise(from), inRise(to), half))
                .map(t -> rise.curve().at(t).getX());
        double least = Math.min(from, to);
        double greatest = Math.max(from, to);
        double same = 1e-9 * level.span();
        double[] inner = DoubleStream.concat(plan, heights)
                .filter(d -> d > least + same && d < greatest - same)
                .sorted()
                .toArray();
        double[] result = DoubleStream.concat(
                        DoubleStream.of(least), DoubleStream.concat(Arrays.stream(inner), DoubleStream.of(greatest)))
                .toArray();
        if (from > to) {
            for (int i = 0; i < result.length / 2; i++) {
                double swapped = result[i];
                result[i] = result[result.length - 1 - i];
                result[result.length - 1 - i] = swapped;
            }
        }
        return result;
    }
}
