package runtrue.rules.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Table;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.extend.Layered;
import runtrue.rules.extend.Layers;
import runtrue.rules.extend.RuleFile;
import runtrue.rules.extend.RuleSources;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads rule sets: tables and definitions first, since rules are compiled against them. */
public final class RuleSetReader {
    private final Problems problems;
    private final FactCatalogue catalogue = FactCatalogue.standard();
    private final List<TableSpec> tables = new ArrayList<>();
    private final Map<String, Table> ownTables = new LinkedHashMap<>();
    private final Map<String, Expression> definitions = new LinkedHashMap<>();
    private final Map<String, FactSpec> definitionFacts = new LinkedHashMap<>();
    private final Map<SubjectKind, ExpressionCompiler> compilers = new EnumMap<>(SubjectKind.class);
    private final Mapping top;
    private final ExpressionCompiler compiler;

    private RuleSetReader(Mapping top, Problems problems) {
        this.top = top;
        this.problems = problems;
        tables();
        declareDefinitions();
        List<FactSpec> everything = new ArrayList<>(catalogue.all());
        everything.addAll(definitionFacts.values());
        compiler = new ExpressionCompiler(everything, tables, problems);
    }

    /** A rule set, or an exception with everything that is wrong with its files. */
    public static RuleSet read(RuleFile file) {
        return read(Layers.read(file));
    }

    /** The same of files that were put together before. */
    public static RuleSet read(Layered layered) {
        return new RuleSetReader(layered.top(), new Problems()).ruleSet(layered);
    }

    private RuleSet ruleSet(Layered layered) {
        definitions();
        Optional<Mapping> edgeZone = top.mapping("edge_zone");
        Optional<Expression> width = edgeZone.flatMap(zone -> zone.scalar("width"))
                .flatMap(scalar -> number(compiler(SubjectKind.BUILDING), scalar, Dimension.LENGTH));
        List<Rule> rules = rules();
        problems.throwIfAny();
        return new RuleSet(
                layered.last().name(),
                layered.version(),
                top.text("title").orElse(""),
                layered.last().file().yaml().name(),
                layered.hash(),
                width,
                edgeZone.flatMap(zone -> zone.text("source")).orElse(""),
                definitions,
                tables,
                ownTables,
                rules,
                RuleSources.of(layered));
    }

    private void tables() {
        TableReader reader = new TableReader(problems);
        top.mapping("tables")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    if (entry.value() instanceof Mapping mapping) {
                        reader.spec(name, mapping).ifPresent(spec -> {
                            tables.add(spec);
                            if (mapping.text("from").isEmpty()) {
                                reader.table(spec, mapping).ifPresent(table -> ownTables.put(name, table));
                            }
                        });
                    }
                }));
    }

    private void declareDefinitions() {
        top.mapping("definitions")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    if (entry.value() instanceof Mapping mapping) {
                        Optional<Unit> unit = mapping.scalar("unit").flatMap(s -> Reading.unit(s, problems));
                        String full = ExpressionCompiler.DEFINED + name;
                        definitionFacts.put(
                                full,
                                new FactSpec(
                                        full,
                                        FactType.NUMBER,
                                        unit.orElse(Unit.ONE).dimension(),
                                        ""));
                    }
                }));
    }

    /** A definition may use those above it, and so never itself. */
    private void definitions() {
        List<FactSpec> known = new ArrayList<>(catalogue.all());
        top.mapping("definitions")
                .ifPresent(all -> all.entries().forEach((name, entry) -> {
                    FactSpec fact = definitionFacts.get(ExpressionCompiler.DEFINED + name);
                    if (fact != null && entry.value() instanceof Mapping mapping) {
                        mapping.scalar("value")
                                .flatMap(s -> number(compiler.offering(known), s, fact.dimension()))
                                .ifPresent(expression -> definitions.put(name, expression));
                        known.add(fact);
                    }
                }));
    }

    private Optional<Expression> number(ExpressionCompiler compiler, Scalar scalar, Dimension wanted) {
        Optional<Expression> expression = compiler.compile(scalar, FactType.NUMBER);
        expression
                .flatMap(Expression::dimension)
                .filter(got -> !got.equals(wanted))
                .ifPresent(got -> problems.add(
                        scalar.place(), "gives a " + got.label() + "; the unit stated is of a " + wanted.label()));
        return expression;
    }

    private List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (YamlValue item : top.items("rules")) {
            if (item instanceof Mapping mapping) {
                mapping.scalar("id")
                        .filter(id -> !ids.add(id.text()))
                        .ifPresent(id -> problems.add(id.place(), "there is a rule \"" + id.text() + "\" already"));
                mapping.text("for")
                        .flatMap(SubjectKind::find)
                        .flatMap(kind -> new RuleReader(kind, compiler(kind), offered(kind), problems).read(mapping))
                        .ifPresent(rule -> {
                            tellers(mapping, rules);
                            rules.add(rule);
                        });
            }
        }
        return rules;
    }

    /** What tells of a cause comes first, and is of the plane or the drop, so that it holds for all within. */
    private void tellers(Mapping rule, List<Rule> above) {
        Set<String> tellers = new TreeSet<>();
        above.stream()
                .filter(r -> r.kind() == SubjectKind.DROP || r.kind() == SubjectKind.PLANE)
                .forEach(r -> tellers.add(r.id()));
        for (YamlValue item : rule.items("not assessed when")) {
            if (item instanceof Mapping condition) {
                condition
                        .scalar("told by")
                        .filter(id -> !tellers.contains(id.text()))
                        .ifPresent(id -> problems.add(
                                id.place(),
                                "there is no rule \"" + id.text()
                                        + "\" above this one that is for the drop or the plane"
                                        + NearMiss.hint(id.text(), tellers)));
            }
        }
    }

    private ExpressionCompiler compiler(SubjectKind kind) {
        return compilers.computeIfAbsent(kind, k -> compiler.offering(offered(k)));
    }

    /** Facts of the kind, and the definitions whose facts are all among them. */
    private List<FactSpec> offered(SubjectKind kind) {
        List<FactSpec> facts = new ArrayList<>(catalogue.offeredTo(kind));
        Set<String> names = new HashSet<>();
        facts.forEach(fact -> names.add(fact.name()));
        definitions.forEach((name, expression) -> {
            if (names.containsAll(expression.names())) {
                FactSpec fact = definitionFacts.get(ExpressionCompiler.DEFINED + name);
                if (fact != null) {
                    facts.add(fact);
                    names.add(fact.name());
                }
            }
        });
        return facts;
    }
}
