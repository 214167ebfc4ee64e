package runtrue.rules.cel;

import java.util.List;
import java.util.Optional;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Unit;

/**
 * What a table is asked and what it answers; the values may come from elsewhere.
 *
 * @param axes in the order of the arguments, one or two
 * @param unit of the values
 */
public record TableSpec(String name, List<Axis> axes, Unit unit) {
    public TableSpec {
        axes = List.copyOf(axes);
    }

    /** Whether a table of this kind answers what the other one is asked: like axes in the same order, like values. */
    public boolean answers(TableSpec asked) {
        return unit.dimension().equals(asked.unit.dimension())
                && axes.stream()
                        .map(Axis::name)
                        .toList()
                        .equals(asked.axes.stream().map(Axis::name).toList())
                && axes.stream()
                        .map(Axis::dimension)
                        .toList()
                        .equals(asked.axes.stream().map(Axis::dimension).toList());
    }

    /**
     * One argument.
     *
     * @param unit of the axis; empty for an axis of words
     */
    public record Axis(String name, Optional<Unit> unit) {
        Optional<Dimension> dimension() {
            return unit.map(Unit::dimension);
        }
    }
}
