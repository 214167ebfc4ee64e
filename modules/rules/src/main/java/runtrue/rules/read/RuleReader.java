package runtrue.rules.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.Rule.Comparison;
import runtrue.rules.Rule.Limit;
import runtrue.rules.Severity;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.Template;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads one rule. */
final class RuleReader {
    private final SubjectKind kind;
    private final ExpressionCompiler compiler;
    private final Set<String> placeholders = new TreeSet<>(Template.NAMES);
    private final Problems problems;

    RuleReader(SubjectKind kind, ExpressionCompiler compiler, List<FactSpec> offered, Problems problems) {
        this.kind = kind;
        this.compiler = compiler;
        this.problems = problems;
        offered.forEach(fact -> placeholders.add(fact.name()));
    }

    /** The rule; empty when the schema's errors leave too little to read. */
    Optional<Rule> read(Mapping rule) {
        Optional<Expression> when = rule.scalar("when").flatMap(s -> compiler.compile(s, FactType.TRUTH));
        Optional<Expression> require = rule.scalar("require").flatMap(s -> compiler.compile(s, FactType.TRUTH));
        Optional<Expression> measure = rule.scalar("measure").flatMap(s -> compiler.compile(s, FactType.NUMBER));
        Optional<Unit> unit = rule.scalar("unit").flatMap(s -> Reading.unit(s, problems));
        measure.flatMap(Expression::dimension)
                .ifPresent(got -> unit.filter(u -> !u.dimension().equals(got))
                        .ifPresent(u -> problems.add(
                                rule.scalar("unit").map(Scalar::place).orElse(rule.place()),
                                "the measure is a " + got.label() + ", \"" + u.symbol() + "\" is of a "
                                        + u.dimension().label())));
        Comparison comparison = rule.get("at most").isPresent() ? Comparison.AT_MOST : Comparison.AT_LEAST;
        List<Limit> limits = new ArrayList<>();
        rule.items(comparison.label())
                .forEach(item -> limit(item, unit.orElse(Unit.ONE)).ifPresent(limits::add));
        rule.scalar("message").ifPresent(this::template);
        rule.scalar("cure").ifPresent(this::template);
        Optional<Severity> severity = rule.text("severity").flatMap(RuleReader::severity);
        if (severity.isEmpty() || rule.text("id").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Rule(
                rule.text("id").orElse(""),
                rule.text("title").orElse(""),
                severity.get(),
                kind,
                when,
                unassessable(rule),
                require,
                measure,
                unit.orElse(Unit.ONE),
                comparison,
                limits,
                rule.text("source").orElse(""),
                rule.text("message").orElse(""),
                rule.text("cure").orElse(""),
                rule.items("cautions").stream().map(RuleReader::text).toList()));
    }

    private static Optional<Severity> severity(String text) {
        for (Severity severity : Severity.values()) {
            if (severity.label().equals(text)) {
                return Optional.of(severity);
            }
        }
        return Optional.empty();
    }

    private static String text(YamlValue value) {
        return value instanceof Scalar scalar ? scalar.text() : "";
    }

    private List<Rule.Unassessable> unassessable(Mapping rule) {
        List<Rule.Unassessable> all = new ArrayList<>();
        for (YamlValue item : rule.items("not assessed when")) {
            if (item instanceof Mapping mapping) {
                mapping.scalar("because").ifPresent(this::template);
                mapping.scalar("condition")
                        .flatMap(s -> compiler.compile(s, FactType.TRUTH))
                        .ifPresent(e -> all.add(new Rule.Unassessable(
                                e,
                                mapping.text("because").orElse(""),
                                spoils(mapping),
                                mapping.text("told by").orElse(""))));
            }
        }
        return all;
    }

    private static Rule.Spoils spoils(Mapping condition) {
        boolean off =
                condition.text("only off the limit").filter("true"::equals).isPresent();
        boolean within =
                condition.text("only within the limit").filter("true"::equals).isPresent();
        return off == within ? Rule.Spoils.ANY : off ? Rule.Spoils.BREACH : Rule.Spoils.CONFORMANCE;
    }

    private Optional<Limit> limit(YamlValue value, Unit unit) {
        if (value instanceof Mapping mapping) {
            return mapping.scalar("limit")
                    .flatMap(s -> limit(s, unit, mapping.text("source").orElse("")));
        }
        return value instanceof Scalar scalar ? limit(scalar, unit, "") : Optional.empty();
    }

    private Optional<Limit> limit(Scalar scalar, Unit unit, String source) {
        String text = scalar.text();
        if (Quantities.isBareNumber(text) || Quantities.looksLikeLiteral(text)) {
            Optional<Quantity> quantity = Reading.quantity(scalar, unit.dimension(), problems);
            return quantity.map(
                    q -> new Limit(Optional.of(new Quantity(q.si(), unit.symbol())), Optional.empty(), source));
        }
        Optional<Expression> expression = compiler.compile(scalar, FactType.NUMBER);
        expression
                .flatMap(Expression::dimension)
                .filter(got -> !got.equals(unit.dimension()))
                .ifPresent(got -> problems.add(
                        scalar.place(),
                        String.format(
                                Locale.ROOT,
                                "the limit is a %s, the measure's unit \"%s\" is of a %s",
                                got.label(),
                                unit.symbol(),
                                unit.dimension().label())));
        return expression.map(e -> new Limit(Optional.empty(), Optional.of(e), source));
    }

    private void template(Scalar scalar) {
        for (Template.Placeholder placeholder : Template.placeholders(scalar.text())) {
            if (!placeholders.contains(placeholder.name())) {
                problems.add(
                        scalar.at(placeholder.index()),
                        "unknown placeholder {" + placeholder.name() + "}"
                                + NearMiss.hint(placeholder.name(), placeholders) + " There are "
                                + String.join(", ", Template.NAMES) + " and the facts");
            }
        }
    }
}
