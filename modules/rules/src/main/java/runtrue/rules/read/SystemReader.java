package runtrue.rules.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Table;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads roof systems. */
public final class SystemReader {
    private SystemReader() {}

    /** A roof system, or an exception with everything that is wrong with the file. */
    public static RoofSystem read(YamlFile file) {
        Problems problems = new Problems();
        Optional<Mapping> root = file.parse(problems);
        problems.throwIfAny();
        Mapping top = root.orElseThrow();
        Bundled.validate(file, top, "systems", "roof-system", problems);
        Map<String, FactSpec> known = FactCatalogue.standard().group("system");
        Map<String, Quantity> values = new HashMap<>();
        Map<String, String> texts = new HashMap<>();
        top.mapping("values")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    FactSpec fact = known.get(name);
                    if (fact != null && entry.value() instanceof Scalar scalar) {
                        if (fact.type() == FactType.NUMBER) {
                            Reading.value(scalar, fact, problems).ifPresent(q -> values.put(name, q));
                        } else {
                            texts.put(name, scalar.text());
                        }
                    }
                }));
        Map<String, Table> tables = tables(top, problems);
        List<Double> otherCovers = otherCovers(top, known, problems);
        problems.throwIfAny();
        return new RoofSystem(
                top.text("system").orElse(""),
                top.text("title").orElse(""),
                top.text("source").orElse(""),
                file.name(),
                values,
                texts,
                tables,
                otherCovers);
    }

    private static List<Double> otherCovers(Mapping top, Map<String, FactSpec> known, Problems problems) {
        FactSpec cover = Objects.requireNonNull(known.get("cover_width"));
        List<Double> covers = new ArrayList<>();
        for (YamlValue item : top.items("other_cover_widths")) {
            if (item instanceof Scalar scalar) {
                Reading.value(scalar, cover, problems).map(Quantity::si).ifPresent(covers::add);
            }
        }
        return covers;
    }

    private static Map<String, Table> tables(Mapping top, Problems problems) {
        Map<String, Table> tables = new HashMap<>();
        TableReader reader = new TableReader(problems);
        top.mapping("tables")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    if (entry.value() instanceof Mapping mapping) {
                        reader.spec(name, mapping)
                                .flatMap(spec -> reader.table(spec, mapping))
                                .ifPresent(table -> tables.put(name, table));
                    }
                }));
        return tables;
    }
}
