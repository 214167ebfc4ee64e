package runtrue.rules.buildup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.Quantity;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.read.Bundled;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads build-ups: the values first, since the items' expressions are compiled against them. */
final class BuildUpReader {
    private final Problems problems;
    private final LayoutFacts facts = LayoutFacts.standard();
    private final Map<String, Quantity> values = new LinkedHashMap<>();
    private final List<FactSpec> valueFacts = new ArrayList<>();
    private final Map<CountedOn, ExpressionCompiler> compilers = new EnumMap<>(CountedOn.class);
    private final Map<CountedOn, Map<String, Expression>> compiled = new EnumMap<>(CountedOn.class);
    private final Mapping top;
    private final ExpressionCompiler compiler;

    private BuildUpReader(YamlFile file, Mapping top, Problems problems) {
        this.top = top;
        this.problems = problems;
        Bundled.validate(file, top, "build-ups", "build-up", problems);
        values();
        List<FactSpec> everything = new ArrayList<>(facts.ofLayout());
        everything.addAll(facts.stated());
        everything.addAll(valueFacts);
        compiler = new ExpressionCompiler(everything, List.of(), problems);
    }

    /** A build-up, or an exception with everything that is wrong with the file. */
    static BuildUp read(YamlFile file) {
        Problems problems = new Problems();
        Optional<Mapping> root = file.parse(problems);
        problems.throwIfAny();
        return new BuildUpReader(file, root.orElseThrow(), problems).buildUp(file);
    }

    private BuildUp buildUp(YamlFile file) {
        List<BuildUpItem> items = items();
        problems.throwIfAny();
        return new BuildUp(
                top.text("build_up").orElse(""),
                top.text("title").orElse(""),
                top.text("source").orElse(""),
                file.name(),
                values,
                items);
    }

    private void values() {
        top.mapping("values")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    if (entry.value() instanceof Scalar scalar) {
                        value(name, scalar);
                    }
                }));
    }

    private void value(String name, Scalar scalar) {
        try {
            Quantity quantity = Quantities.parse(scalar.text());
            values.put(name, quantity);
            valueFacts.add(new FactSpec(
                    LayoutFacts.BUILD_UP + name,
                    FactType.NUMBER,
                    Unit.of(quantity.unit()).dimension(),
                    ""));
        } catch (IllegalArgumentException e) {
            problems.add(scalar.place(), String.valueOf(e.getMessage()));
        }
    }

    private List<BuildUpItem> items() {
        List<BuildUpItem> items = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (YamlValue value : top.items("items")) {
            if (value instanceof Mapping mapping) {
                mapping.scalar("id")
                        .filter(id -> !ids.add(id.text()))
                        .ifPresent(id -> problems.add(id.place(), "there is an item \"" + id.text() + "\" already"));
                mapping.text("for")
                        .flatMap(CountedOn::find)
                        .flatMap(on -> new ItemReader(on, compiler(on), compiled(on), problems).read(mapping))
                        .ifPresent(items::add);
            }
        }
        return items;
    }

    private Map<String, Expression> compiled(CountedOn on) {
        return compiled.computeIfAbsent(on, kind -> new HashMap<>());
    }

    private ExpressionCompiler compiler(CountedOn on) {
        return compilers.computeIfAbsent(on, kind -> {
            List<FactSpec> offered = new ArrayList<>(facts.offeredTo(kind));
            offered.addAll(valueFacts);
            return compiler.offering(offered);
        });
    }
}
