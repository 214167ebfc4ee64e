package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.Evaluators;
import runtrue.rules.judge.StatedFacts;
import runtrue.rules.units.Quantities;

/** Limits as written, and what they come to where the roof system and the settings alone decide it. */
final class StatedLimits {
    private final Facts facts;
    private final Evaluator evaluator;

    StatedLimits(RuleSet rules, RoofSystem system, DropSettings settings) {
        facts = StatedFacts.of(FactCatalogue.standard(), system, settings);
        List<Expression> expressions = new ArrayList<>();
        rules.rules().forEach(rule -> rule.limits().forEach(l -> l.expression().ifPresent(expressions::add)));
        evaluator = new Evaluator(
                expressions,
                rules.definitions(),
                Evaluators.lookups(rules, spec -> Evaluators.answers(rules, system, spec)));
    }

    /** {@code system.minimum_pitch (2 deg)}. */
    String text(Rule rule, Rule.Limit limit) {
        if (limit.fixed().isPresent()) {
            return Quantities.text(limit.fixed().get());
        }
        Expression expression = limit.expression().orElseThrow();
        String text = expression.text().strip().replaceAll("\\s+", " ");
        return evaluator.evaluate(expression, facts) instanceof Evaluator.Of of
                ? text + " ("
                        + Quantities.text(
                                new Quantity((Double) of.value(), rule.unit().symbol())) + ")"
                : text;
    }

    /** What system or settings state of a fact, as {@code ; here 0.6 mm}; empty for all others. */
    String value(String name) {
        Optional<Facts.Fact> fact = facts.find(name);
        if (fact.isPresent() && fact.get() instanceof Facts.Known known) {
            return "; here " + FactLines.text(name, known) + " [" + known.evidence() + "]";
        }
        return fact.isPresent() && fact.get() instanceof Facts.Missing missing ? "; here it " + missing.reason() : "";
    }
}
