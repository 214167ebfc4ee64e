package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Table;
import runtrue.rules.Uses;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Evaluator.Lookup;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.judge.Evaluators;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/** Evaluates the expressions of one rule again, as the judge does, and keeps what tables were asked. */
final class Trace {
    private final RuleSet rules;
    private final RoofSystem system;
    private final Facts facts;
    private final Evaluator evaluator;
    private final List<String> asked = new ArrayList<>();

    Trace(RuleSet rules, RoofSystem system, Rule rule, Facts facts) {
        this.rules = rules;
        this.system = system;
        this.facts = facts;
        List<Expression> expressions = new ArrayList<>(Uses.expressions(rule));
        expressions.addAll(rules.definitions().values());
        Map<TableSpec, Lookup> lookups = Evaluators.lookups(rules, spec -> recording(spec));
        evaluator = new Evaluator(expressions, rules.definitions(), lookups);
    }

    private Lookup recording(TableSpec spec) {
        Lookup lookup = Evaluators.answers(rules, system, spec);
        return arguments -> {
            double answer = lookup.at(arguments);
            asked.add(call(spec, arguments) + " = "
                    + Quantities.text(new Quantity(answer, spec.unit().symbol())) + source(spec));
            return answer;
        };
    }

    private static String call(TableSpec spec, Object... arguments) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < arguments.length; i++) {
            TableSpec.Axis axis = spec.axes().get(i);
            Object argument = arguments[i];
            texts.add(axis.name() + " "
                    + (argument instanceof Double number
                            ? Quantities.text(new Quantity(
                                    number, axis.unit().orElse(Unit.ONE).symbol()))
                            : argument));
        }
        return "tables." + spec.name() + " at " + String.join(", ", texts);
    }

    private String source(TableSpec spec) {
        @Nullable Table table = Evaluators.table(rules, system, spec);
        String file = rules.ownTables().containsKey(spec.name())
                ? rules.sources()
                        .origin("tables." + spec.name())
                        .map(p -> p.file() + ":" + p.line())
                        .orElse(rules.file())
                : system.file();
        return table == null ? "" : " [" + file + ": " + table.source() + "]";
    }

    Evaluator.Value value(Expression expression) {
        asked.clear();
        return evaluator.evaluate(expression, facts);
    }

    /** What the last expression came to. */
    String text(Evaluator.Value value, Optional<Unit> unit) {
        if (value instanceof Evaluator.Of of) {
            return of.value() instanceof Double number
                    ? Quantities.text(new Quantity(number, unit.orElse(Unit.ONE).symbol()))
                    : of.value().toString();
        }
        return "unknown, because " + String.join("; ", ((Evaluator.Unknown) value).reasons());
    }

    /** What tables answered while the last expression was evaluated. */
    List<String> tables() {
        return asked.stream().distinct().toList();
    }

    /** Definitions that an expression rests on, each with its own expression and value; the innermost first. */
    List<String> definitions(Expression expression) {
        List<String> lines = new ArrayList<>();
        for (String name : expression.names()) {
            if (name.startsWith(ExpressionCompiler.DEFINED)) {
                String own = name.substring(ExpressionCompiler.DEFINED.length());
                Expression definition = rules.definitions().get(own);
                if (definition != null) {
                    lines.addAll(definitions(definition));
                    Optional<Unit> unit = definition.dimension().map(Quantities::usualUnit);
                    String where = rules.sources()
                            .origin("definitions." + own + ".value")
                            .map(p -> " [" + p.file() + ":" + p.line() + "]")
                            .orElse("");
                    lines.add(name + " = " + definition.text().strip().replaceAll("\\s+", " ") + " = "
                            + text(evaluator.evaluate(definition, facts), unit) + where);
                }
            }
        }
        return lines.stream().distinct().toList();
    }
}
