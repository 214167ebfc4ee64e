package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Table;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/** A table's values as lines of text, a line for each point of the first axis. */
final class TableLines {
    private TableLines() {}

    static List<String> of(TableSpec spec, @Nullable Table table, RoofSystem system) {
        List<String> axes = spec.axes().stream().map(TableSpec.Axis::name).toList();
        List<String> lines = new ArrayList<>();
        lines.add("tables." + spec.name() + ", " + spec.unit().symbol() + " by " + String.join(" and ", axes));
        if (table == null) {
            lines.add("  Roof system " + system.name() + " has no such table.");
            return lines;
        }
        int columns = table.axes().size() == 1 ? 1 : table.axes().get(1).size();
        for (int row = 0; row < table.axes().get(0).size(); row++) {
            List<String> values = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                double si = table.values().get(row * columns + column);
                String at = columns == 1 ? "" : point(table, 1, column) + ": ";
                values.add(at + Quantities.text(new Quantity(si, spec.unit().symbol())));
            }
            lines.add("  " + axes.get(0) + " " + point(table, 0, row) + ": " + String.join(", ", values));
        }
        lines.add(
                "  Between points: " + table.between().name().toLowerCase(Locale.ROOT) + ". Source: " + table.source());
        return lines;
    }

    private static String point(Table table, int axis, int index) {
        Table.Axis points = table.axes().get(axis);
        Optional<Unit> unit = table.spec().axes().get(axis).unit();
        return points.words().isEmpty()
                ? Quantities.text(new Quantity(
                        points.points().get(index), unit.orElse(Unit.ONE).symbol()))
                : points.words().get(index);
    }
}
