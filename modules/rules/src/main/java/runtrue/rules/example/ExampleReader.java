package runtrue.rules.example;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.read.Reading;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;
import runtrue.rules.yaml.YamlValue.Sequence;

/** Reads the examples of one rule. */
final class ExampleReader {
    /** In place of a value: takes back what all examples of the rule state. */
    private static final String NOT_STATED = "not stated";

    private static final String TABLES = "tables.";
    private static final Set<String> OWN_KEYS = Set.of("about", "limit", "because");

    private final Rule rule;
    private final Map<String, FactSpec> facts = new LinkedHashMap<>();
    private final Map<String, TableSpec> tables = new LinkedHashMap<>();
    private final Problems problems;
    private final List<Example> examples = new ArrayList<>();
    private final List<Never> nevers = new ArrayList<>();

    ExampleReader(RuleSet rules, Rule rule, Problems problems) {
        this.rule = rule;
        this.problems = problems;
        FactCatalogue.standard().offeredTo(rule.kind()).forEach(fact -> facts.put(fact.name(), fact));
        rules.tables().stream()
                .filter(table -> !rules.ownTables().containsKey(table.name()))
                .forEach(table -> tables.put(TABLES + table.name(), table));
    }

    List<Example> examples() {
        return examples;
    }

    List<Never> nevers() {
        return nevers;
    }

    /** Takes up everything under the key {@code examples} of the rule. */
    void read(Mapping all) {
        Map<String, Entry> given = new LinkedHashMap<>();
        all.mapping("given").ifPresent(mapping -> given.putAll(mapping.entries()));
        for (Expected expected : Expected.values()) {
            Optional<YamlValue> value = all.get(expected.label());
            if (value.orElse(null) instanceof Scalar because) {
                nevers.add(new Never(rule.id(), expected, because.text(), because.place()));
            } else if (value.orElse(null) instanceof Sequence list) {
                int number = 0;
                for (YamlValue item : list.values()) {
                    if (item instanceof Mapping mapping) {
                        examples.add(example(expected, ++number, given, mapping));
                    }
                }
            }
        }
    }

    private Example example(Expected expected, int number, Map<String, Entry> given, Mapping own) {
        Map<String, Entry> stated = new LinkedHashMap<>(given);
        own.entries().forEach((name, entry) -> {
            if (!OWN_KEYS.contains(name)) {
                stated.put(name, entry);
            }
        });
        Map<String, Object> values = new LinkedHashMap<>();
        Map<String, String> texts = new LinkedHashMap<>();
        Map<String, Double> answers = new LinkedHashMap<>();
        stated.forEach((name, entry) -> {
            if (known(name, entry)
                    && entry.value() instanceof Scalar scalar
                    && !scalar.text().equals(NOT_STATED)) {
                texts.put(name, scalar.text());
                Optional.ofNullable(facts.get(name))
                        .flatMap(fact -> value(fact, scalar))
                        .ifPresent(value -> values.put(name, value));
                Optional.ofNullable(tables.get(name))
                        .flatMap(table -> number(scalar, table.unit().dimension()))
                        .ifPresent(q -> answers.put(name.substring(TABLES.length()), q.si()));
            }
        });
        return new Example(
                rule.id(),
                expected,
                number,
                own.text("about").orElse(""),
                values,
                texts,
                answers,
                own.scalar("limit").flatMap(s -> number(s, rule.unit().dimension())),
                own.text("because").orElse(""),
                own.place());
    }

    private boolean known(String name, Entry entry) {
        if (facts.containsKey(name) || tables.containsKey(name)) {
            return true;
        }
        Set<String> names = new TreeSet<>(facts.keySet());
        names.addAll(tables.keySet());
        names.addAll(OWN_KEYS);
        String start = name.contains(".") ? name.substring(0, name.indexOf('.') + 1) : name;
        List<String> alike = names.stream().filter(n -> n.startsWith(start)).toList();
        problems.add(
                entry.keyPlace(),
                "unknown fact \"" + name + "\" in an example of rule \"" + rule.id() + "\", which is for the "
                        + rule.kind().label() + NearMiss.hint(name, names)
                        + (alike.isEmpty() ? "" : " Known here: " + String.join(", ", alike)));
        return false;
    }

    private Optional<Object> value(FactSpec fact, Scalar scalar) {
        if (fact.type() == FactType.NUMBER) {
            return number(scalar, fact.dimension()).map(Quantity::si);
        } else if (fact.type() == FactType.TEXT) {
            return Optional.of(scalar.text());
        } else if (scalar.text().equals("true") || scalar.text().equals("false")) {
            return Optional.of(scalar.text().equals("true"));
        }
        problems.add(scalar.place(), fact.name() + " is true or false, not \"" + scalar.text() + "\"");
        return Optional.empty();
    }

    /** Plain numbers need no unit. */
    private Optional<Quantity> number(Scalar scalar, Dimension dimension) {
        return dimension.equals(Dimension.NONE) && Quantities.isBareNumber(scalar.text())
                ? Reading.number(scalar, problems).map(n -> new Quantity(n, Unit.ONE.symbol()))
                : Reading.quantity(scalar, dimension, problems);
    }
}
