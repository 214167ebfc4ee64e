package runtrue.rules;

import java.util.ArrayList;
import java.util.List;
import runtrue.rules.cel.Evaluator.NoAnswerException;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.units.Quantities;

/**
 * Values over one or two axes.
 *
 * @param axes in the order of {@code spec.axes()}
 * @param values in SI, row by row: the last axis runs fastest
 * @param between what holds between two points of a numeric axis
 * @param source who published the values
 */
public record Table(TableSpec spec, List<Axis> axes, List<Double> values, Between between, String source) {
    public Table {
        axes = List.copyOf(axes);
        values = List.copyOf(values);
    }

    /** Relative; a thickness of 0.6 mm is on the point 0.60 whatever its last bits. */
    private static final double SAME = 1e-9;

    /** What holds between two points. */
    public enum Between {
        /** Straight line between the neighbours. */
        LINEAR,
        /** The lesser neighbour: on the safe side for what must not be exceeded. */
        LESSER,
        /** The greater neighbour: on the safe side for what must be reached. */
        GREATER,
        /** Nothing: only the points themselves have a value. */
        NONE
    }

    /**
     * Points of an axis.
     *
     * @param points in SI, rising; empty for words
     * @param words empty for numbers
     * @param holdsBelow whether the first value holds below the first point; otherwise nothing does
     * @param holdsAbove whether the last value holds beyond the last point; otherwise nothing does
     */
    public record Axis(List<Double> points, List<String> words, boolean holdsBelow, boolean holdsAbove) {
        public Axis {
            points = List.copyOf(points);
            words = List.copyOf(words);
        }

        public int size() {
            return Math.max(points.size(), words.size());
        }
    }

    /** Neighbours on an axis, and how far (0 to 1) the argument is from the first to the second. */
    private record Position(int first, int second, double share) {}

    /**
     * The value in SI.
     *
     * @param arguments Doubles in SI or Strings, one for each axis
     * @throws NoAnswerException outside the axes or between points without a rule for it
     */
    public double at(Object... arguments) {
        List<Position> positions = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            positions.add(position(i, arguments[i]));
        }
        return value(positions, 0, 0);
    }

    private double value(List<Position> positions, int axis, int index) {
        if (axis == axes.size()) {
            return values.get(index);
        }
        Position at = positions.get(axis);
        int size = axes.get(axis).size();
        double first = value(positions, axis + 1, index * size + at.first());
        if (at.first() == at.second()) {
            return first;
        }
        double second = value(positions, axis + 1, index * size + at.second());
        return switch (between) {
            case LINEAR -> first + (second - first) * at.share();
            case LESSER -> Math.min(first, second);
            case GREATER -> Math.max(first, second);
            case NONE -> throw new NoAnswerException("table " + spec.name() + " has no value between its points");
        };
    }

    private Position position(int index, Object argument) {
        Axis axis = axes.get(index);
        if (argument instanceof String word) {
            int found = axis.words().indexOf(word);
            if (found < 0) {
                throw new NoAnswerException("table " + spec.name() + " has no " + name(index) + " \"" + word + "\"");
            }
            return new Position(found, found, 0);
        }
        return position(index, axis, (Double) argument);
    }

    private Position position(int index, Axis axis, double argument) {
        List<Double> points = axis.points();
        int last = points.size() - 1;
        for (int i = 0; i <= last; i++) {
            double point = points.get(i);
            if (Math.abs(point - argument) <= SAME * Math.abs(point)) {
                return new Position(i, i, 0);
            }
            if (point > argument && i > 0 && points.get(i - 1) < argument) {
                double before = points.get(i - 1);
                return new Position(i - 1, i, (argument - before) / (point - before));
            }
        }
        boolean below = argument < points.get(0);
        if (below ? axis.holdsBelow() : axis.holdsAbove()) {
            return new Position(below ? 0 : last, below ? 0 : last, 0);
        }
        throw new NoAnswerException(
                "table " + spec.name() + " has no value for " + name(index) + " " + text(index, argument) + " ("
                        + text(index, points.get(0)) + " to " + text(index, points.get(last)) + ")");
    }

    private String name(int axis) {
        return spec.axes().get(axis).name();
    }

    private String text(int axis, double si) {
        String unit = spec.axes().get(axis).unit().map(u -> u.symbol()).orElse("1");
        return Quantities.text(new Quantity(si, unit));
    }
}
