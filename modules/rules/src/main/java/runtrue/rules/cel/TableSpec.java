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
