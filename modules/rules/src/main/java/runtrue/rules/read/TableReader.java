package runtrue.rules.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import runtrue.rules.Table;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads tables: what they are asked, and, where they stand here, their values. */
final class TableReader {
    private final Problems problems;

    TableReader(Problems problems) {
        this.problems = problems;
    }

    Optional<TableSpec> spec(String name, Mapping table) {
        List<TableSpec.Axis> axes = new ArrayList<>();
        Optional<Mapping> declared = table.mapping("axes");
        declared.ifPresent(all -> all.entries().forEach((axis, entry) -> axes.add(axis(axis, entry.value()))));
        Optional<Unit> unit = table.scalar("unit").flatMap(s -> Reading.unit(s, problems));
        if (axes.isEmpty() || axes.size() > 2) {
            problems.add(table.place(), "a table has one or two axes");
            return Optional.empty();
        }
        return unit.map(u -> new TableSpec(name, axes, u));
    }

    private TableSpec.Axis axis(String name, YamlValue axis) {
        Optional<Unit> unit = axis instanceof Mapping mapping
                ? mapping.scalar("unit").flatMap(s -> Reading.unit(s, problems))
                : Optional.empty();
        return new TableSpec.Axis(name, unit);
    }

    Optional<Table> table(TableSpec spec, Mapping table) {
        List<Table.Axis> axes = new ArrayList<>();
        for (TableSpec.Axis axis : spec.axes()) {
            table.mapping("axes").flatMap(all -> all.mapping(axis.name())).ifPresent(a -> axes.add(points(axis, a)));
        }
        List<Double> values = new ArrayList<>();
        List<YamlValue> rows = table.items("values");
        for (YamlValue row : rows) {
            row.items()
                    .forEach(item -> value(item)
                            .ifPresent(v -> values.add(v * spec.unit().inSi())));
        }
        int wanted = axes.stream().mapToInt(Table.Axis::size).reduce(1, (a, b) -> a * b);
        if (axes.size() != spec.axes().size() || values.size() != wanted || !regular(axes, rows)) {
            problems.add(
                    table.get("values").map(YamlValue::place).orElse(table.place()),
                    "the axes of table " + spec.name() + " make " + wanted + " values"
                            + (axes.size() == 2 ? " in " + axes.get(0).size() + " rows" : "") + ", there are "
                            + values.size());
            return Optional.empty();
        }
        Table.Between between = table.text("between points")
                .map(text -> Table.Between.valueOf(text.toUpperCase(Locale.ROOT)))
                .orElse(Table.Between.NONE);
        return Optional.of(
                new Table(spec, axes, values, between, table.text("source").orElse("")));
    }

    private static boolean regular(List<Table.Axis> axes, List<YamlValue> rows) {
        return axes.size() == 1
                || (rows.size() == axes.get(0).size()
                        && rows.stream()
                                .allMatch(
                                        row -> row.items().size() == axes.get(1).size()));
    }

    private Table.Axis points(TableSpec.Axis axis, Mapping mapping) {
        List<Double> points = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (YamlValue item : mapping.items("points")) {
            if (axis.unit().isEmpty() && item instanceof Scalar scalar) {
                words.add(scalar.text());
            } else {
                value(item)
                        .ifPresent(
                                v -> points.add(v * axis.unit().orElse(Unit.ONE).inSi()));
            }
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i) <= points.get(i - 1)) {
                problems.add(mapping.items("points").get(i).place(), "the points of an axis must rise");
            }
        }
        return new Table.Axis(points, words, holds(mapping, "below"), holds(mapping, "above"));
    }

    private static boolean holds(Mapping axis, String side) {
        return axis.text(side).filter("end value"::equals).isPresent();
    }

    private Optional<Double> value(YamlValue item) {
        if (item instanceof Scalar scalar) {
            return Reading.number(scalar, problems);
        }
        problems.add(item.place(), "expected a number");
        return Optional.empty();
    }
}
