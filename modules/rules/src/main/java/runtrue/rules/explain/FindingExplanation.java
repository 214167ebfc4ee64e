package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import runtrue.ifc.Element;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Uses;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Expression;
import runtrue.rules.explain.Explanation.Step;
import runtrue.rules.judge.subject.Grounds;
import runtrue.rules.judge.subject.Subject;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/** How one outcome came about: each expression of the rule with its value, and every fact with its evidence. */
public final class FindingExplanation {
    private static final int MOST_LISTED = 6;

    private final RuleSet rules;
    private final Grounds grounds;
    private final Rule rule;
    private final Judgement judgement;
    private final Trace trace;
    private final FactLines facts;

    private FindingExplanation(RuleSet rules, RoofSystem system, Grounds grounds) {
        this.rules = rules;
        this.grounds = grounds;
        this.rule = grounds.rule();
        this.judgement = grounds.judgement();
        this.trace = new Trace(rules, system, rule, grounds.subject().facts());
        this.facts = new FactLines(grounds.subject().facts(), system);
    }

    /**
     * Explains a judgement by evaluating its rule again on the very facts that it was made of.
     *
     * @param grounds with the judgement as it stands in the results, concessions applied
     */
    public static Explanation of(RuleSet rules, RoofSystem system, Grounds grounds) {
        return new FindingExplanation(rules, system, grounds).explanation();
    }

    private Explanation explanation() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("What is judged", judged()));
        steps.add(new Step("By which rule", RuleLines.heading(rule, rules)));
        if (!grounds.subject().lacking().isEmpty()) {
            steps.add(new Step(
                    "What there is to judge",
                    List.of("Nothing: " + grounds.subject().lacking() + ".")));
        } else {
            steps.add(new Step("Whether the rule is for it", applies()));
            steps.add(new Step("What would make it uncertain", uncertain()));
            rule.require().ifPresent(required -> steps.add(new Step("What is required", required(required))));
            rule.measure().ifPresent(measure -> {
                steps.add(new Step("What is measured", measured(measure)));
                steps.add(new Step("What it is held against", limits()));
            });
        }
        steps.add(new Step("Outcome", outcome()));
        return new Explanation("Finding " + judgement.id() + ": " + judgement.message(), steps);
    }

    private List<String> judged() {
        List<String> lines = new ArrayList<>();
        Subject subject = grounds.subject();
        lines.add(judgement.subject());
        if (grounds.members().size() > 1) {
            lines.add("Told of together: " + grounds.members().size() + ". The figures below are those of the worst, "
                    + subject.name() + ".");
            grounds.members().stream()
                    .limit(MOST_LISTED)
                    .forEach(m -> lines.add("  " + m.name()
                            + m.measured().map(q -> ": " + Quantities.text(q)).orElse("")));
            more(lines, grounds.members().size());
        }
        List<Element> elements = judgement.elements();
        elements.stream()
                .limit(MOST_LISTED)
                .forEach(e -> lines.add("  " + e.ifcClass() + " \"" + e.name() + "\", #" + e.stepId() + " of "
                        + e.file() + ", GlobalId " + e.globalId()));
        more(lines, elements.size());
        return lines;
    }

    private static void more(List<String> lines, int all) {
        if (all > MOST_LISTED) {
            lines.add("  and " + (all - MOST_LISTED) + " more");
        }
    }

    private List<String> applies() {
        if (rule.when().isEmpty()) {
            return List.of("It is for every " + rule.kind().label() + ".");
        }
        return truth("", rule.when().get(), "yes", "no");
    }

    private List<String> uncertain() {
        if (rule.unassessable().isEmpty()) {
            return List.of("The rule names no condition under which nothing could be said; only a missing fact would.");
        }
        List<String> lines = new ArrayList<>();
        for (Rule.Unassessable condition : rule.unassessable()) {
            String spoils = switch (condition.spoils()) {
                case ANY -> "";
                case BREACH -> "only what is off the limit: ";
                case CONFORMANCE -> "only what is within the limit: ";
            };
            lines.addAll(truth(spoils, condition.when(), "yes", "no"));
        }
        return lines;
    }

    /** The expression with its answer, and what it rests on, indented. */
    private List<String> truth(String before, Expression expression, String yes, String no) {
        Evaluator.Value value = trace.value(expression);
        String answer = value instanceof Evaluator.Of of
                ? Boolean.TRUE.equals(of.value()) ? yes : no
                : trace.text(value, Optional.empty());
        List<String> lines = new ArrayList<>();
        lines.add(before + oneLine(expression) + ": " + answer);
        lines.addAll(restsOn(expression, Optional.empty()));
        return lines;
    }

    private List<String> required(Expression required) {
        return truth("", required, "met", "not met");
    }

    private List<String> measured(Expression measure) {
        return value("", measure);
    }

    private List<String> value(String before, Expression expression) {
        Optional<Unit> unit = Optional.of(rule.unit());
        Evaluator.Value value = trace.value(expression);
        List<String> lines = new ArrayList<>();
        if (before.isEmpty() && expression.names().contains(oneLine(expression))) {
            return facts.of(expression.names(), unit); // a fact as it is
        }
        lines.add(before + oneLine(expression) + " = " + trace.text(value, unit));
        lines.addAll(restsOn(expression, unit));
        return lines;
    }

    /** Tables as they were asked, definitions with their values, facts with their evidence. */
    private List<String> restsOn(Expression expression, Optional<Unit> unit) {
        List<String> lines = new ArrayList<>();
        trace.tables().forEach(line -> lines.add("  " + line));
        trace.definitions(expression).forEach(line -> lines.add("  " + line));
        facts.of(Uses.facts(expression, rules), unit).forEach(line -> lines.add("  " + line));
        return lines;
    }

    private List<String> limits() {
        List<String> lines = new ArrayList<>();
        Set<String> open = new LinkedHashSet<>();
        for (Rule.Limit limit : rule.limits()) {
            String before = rule.comparison().label() + " ";
            Optional<Quantity> si = limit.fixed();
            if (limit.fixed().isPresent()) {
                lines.add(before + Quantities.text(limit.fixed().get()));
            } else {
                Expression expression = limit.expression().orElseThrow();
                lines.addAll(value(before, expression));
                if (trace.value(expression) instanceof Evaluator.Of of) {
                    si = Optional.of(
                            new Quantity((Double) of.value(), rule.unit().symbol()));
                } else {
                    open.add(oneLine(expression));
                }
            }
            lines.add("  Source: " + (limit.source().isEmpty() ? rule.source() : limit.source()));
            if (rule.limits().size() > 1 && governs(si)) {
                lines.add("  This is the strictest that is known: it governs.");
            }
        }
        if (!open.isEmpty() && open.size() < rule.limits().size()) {
            lines.add(
                    "A limit that is not known cannot make good what another one forbids; short of that nothing is said.");
        }
        return lines;
    }

    private boolean governs(Optional<Quantity> limit) {
        return limit.isPresent()
                && judgement.limit().isPresent()
                && Double.compare(limit.get().si(), judgement.limit().get().si()) == 0;
    }

    private List<String> outcome() {
        List<String> lines = new ArrayList<>();
        judgement
                .measured()
                .ifPresent(measured -> judgement.limit().ifPresent(limit -> lines.add(compared(measured, limit))));
        lines.add(
                capital(judgement.outcome().label()) + (judgement.reason().isEmpty() ? "" : ": " + judgement.reason()));
        if (judgement.outcome() == Outcome.DOES_NOT_CONFORM) {
            lines.add("No concession holds for it.");
            lines.add("Cure: " + judgement.cure());
        }
        rule.cautions().forEach(caution -> lines.add("Bear in mind: " + caution));
        return lines;
    }

    private String compared(Quantity measured, Quantity limit) {
        String margin = judgement
                .margin()
                .map(m -> "; margin " + Quantities.text(m) + ", negative on the wrong side")
                .orElse("");
        return Quantities.text(measured, limit) + " measured, " + judgement.comparison() + " "
                + Quantities.text(limit, measured) + " wanted" + margin;
    }

    private static String oneLine(Expression expression) {
        return expression.text().strip().replaceAll("\\s+", " ");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
