package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Uses;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.example.Example;
import runtrue.rules.example.RuleBook;
import runtrue.rules.explain.Explanation.Step;
import runtrue.rules.judge.Evaluators;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/** What one rule asks: its expressions, the definitions, tables and facts behind them, and its examples. */
public final class RuleExplanation {
    private static final Pattern TABLE = Pattern.compile("tables\\.([a-z0-9_]+)");

    private final RuleBook book;
    private final RuleSet rules;
    private final Rule rule;
    private final RoofSystem system;
    private final StatedLimits stated;

    private RuleExplanation(RuleBook book, Rule rule, RoofSystem system, DropSettings settings) {
        this.book = book;
        this.rules = book.rules();
        this.rule = rule;
        this.system = system;
        this.stated = new StatedLimits(rules, system, settings);
    }

    /**
     * Explains a rule of the book.
     *
     * @param system whose values and tables are shown
     */
    public static Explanation of(RuleBook book, Rule rule, RoofSystem system, DropSettings settings) {
        return new RuleExplanation(book, rule, system, settings).explanation();
    }

    private Explanation explanation() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("The rule", RuleLines.heading(rule, rules)));
        steps.add(new Step("Whether it is for a " + rule.kind().label(), applies()));
        if (!rule.unassessable().isEmpty()) {
            steps.add(new Step("When nothing can be said, besides a fact that is missing", unassessable()));
        }
        steps.add(new Step("What it asks", asks()));
        add(steps, "Definitions", definitions());
        add(steps, "Tables", tables());
        add(steps, "Facts that it reads", facts());
        steps.add(new Step("What is said", said()));
        add(steps, "Examples", examples());
        return new Explanation(rule.title(), steps);
    }

    private static void add(List<Step> steps, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            steps.add(new Step(title, lines));
        }
    }

    private List<String> applies() {
        return List.of(rule.when().map(RuleExplanation::oneLine).orElse("It is for all."));
    }

    private List<String> unassessable() {
        List<String> lines = new ArrayList<>();
        for (Rule.Unassessable condition : rule.unassessable()) {
            String spoils = switch (condition.spoils()) {
                case ANY -> "";
                case BREACH -> " (of what is off the limit)";
                case CONFORMANCE -> " (of what is within the limit)";
            };
            lines.add(oneLine(condition.when()) + spoils);
            lines.add("  because " + condition.because()
                    + (condition.toldBy().isEmpty() ? "" : "; rule " + condition.toldBy() + " tells of it"));
        }
        return lines;
    }

    private List<String> asks() {
        List<String> lines = new ArrayList<>();
        rule.require().ifPresent(required -> lines.add("Required: " + oneLine(required)));
        rule.measure()
                .ifPresent(measure -> lines.add(
                        "Measured: " + oneLine(measure) + ", in " + rule.unit().symbol()));
        for (Rule.Limit limit : rule.limits()) {
            lines.add(rule.comparison().label() + " " + stated.text(rule, limit));
            if (!limit.source().isEmpty()) {
                lines.add("  Source: " + limit.source());
            }
        }
        if (rule.limits().size() > 1) {
            lines.add("All are to be kept; the strictest governs.");
        }
        String key = rule.require().isPresent() ? "require" : rule.comparison().label();
        RuleLines.origin(rules, "rules." + rule.id() + "." + key).ifPresent(where -> lines.add("Stated at " + where));
        return lines;
    }

    private List<String> definitions() {
        List<String> lines = new ArrayList<>();
        for (String name : Uses.definitions(rule, rules)) {
            Expression definition = rules.definitions().get(name);
            String text = definition == null ? "unknown" : oneLine(definition);
            lines.add("defined." + name + " = " + text
                    + RuleLines.origin(rules, "definitions." + name + ".value")
                            .map(where -> " [" + where + "]")
                            .orElse(""));
        }
        return lines;
    }

    private List<String> tables() {
        Set<String> names = new TreeSet<>();
        List<Expression> expressions = new ArrayList<>(Uses.expressions(rule));
        Uses.definitions(rule, rules).forEach(name -> {
            Expression definition = rules.definitions().get(name);
            if (definition != null) {
                expressions.add(definition);
            }
        });
        for (Expression expression : expressions) {
            Matcher matcher = TABLE.matcher(expression.text());
            while (matcher.find()) {
                names.add(matcher.group(1));
            }
        }
        List<String> lines = new ArrayList<>();
        for (TableSpec spec : rules.tables()) {
            if (names.contains(spec.name())) {
                lines.addAll(TableLines.of(spec, Evaluators.table(rules, system, spec), system));
            }
        }
        return lines;
    }

    private List<String> facts() {
        Map<String, FactSpec> specs = new HashMap<>();
        FactCatalogue.standard().all().forEach(spec -> specs.put(spec.name(), spec));
        List<String> lines = new ArrayList<>();
        for (String name : Uses.facts(rule, rules)) {
            FactSpec spec = specs.get(name);
            if (spec != null) {
                String kind = switch (spec.type()) {
                    case TEXT -> "text";
                    case TRUTH -> "true or false";
                    case NUMBER -> unit(spec);
                };
                lines.add(name + ", " + kind + ": " + spec.about() + stated.value(name));
            }
        }
        return lines;
    }

    private static String unit(FactSpec spec) {
        Unit unit = Quantities.usualUnit(spec.dimension());
        return unit == Unit.ONE ? "number" : "in " + unit.symbol();
    }

    private List<String> said() {
        List<String> lines = new ArrayList<>();
        lines.add(rule.message());
        if (!rule.cure().isEmpty()) {
            lines.add("Cure: " + rule.cure());
        }
        rule.cautions().forEach(caution -> lines.add("Bear in mind: " + caution));
        return lines;
    }

    private List<String> examples() {
        List<String> lines = new ArrayList<>();
        for (Example example : book.examplesOf(rule.id())) {
            lines.add(example.expected().label() + (example.about().isEmpty() ? "" : ": " + example.about()) + " ["
                    + example.place().file() + ":" + example.place().line() + "]");
            List<String> facts = new ArrayList<>();
            example.texts().forEach((name, text) -> facts.add(name + " " + text));
            lines.add("  " + (facts.isEmpty() ? "nothing stated" : String.join(", ", facts)));
        }
        book.nevers().stream()
                .filter(never -> never.rule().equals(rule.id()))
                .forEach(never -> lines.add(never.outcome().label() + ": " + never.because()));
        book.without(rule.id()).forEach(outcome -> lines.add(outcome.label() + ": no example"));
        return lines;
    }

    private static String oneLine(Expression expression) {
        return expression.text().strip().replaceAll("\\s+", " ");
    }
}
