package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Uses;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.subject.Subject;
import runtrue.rules.units.Quantities;

/** Puts verdicts into words. */
final class Words {
    private static final String PIECES = " pcs";

    private final Map<String, FactSpec> specs = new HashMap<>();
    private final RuleSet rules;

    Words(FactCatalogue catalogue, RuleSet rules) {
        catalogue.all().forEach(fact -> specs.put(fact.name(), fact));
        this.rules = rules;
    }

    String message(Rule rule, Group group) {
        Verdict verdict = group.worst().verdict();
        return verdict.outcome() == Outcome.NOT_ASSESSED
                ? stopped(capital(group.name()) + ": not assessed, because " + verdict.reason())
                : capital(fill(rule.message(), group.worst(), group.name(), extreme(rule, group)))
                        .strip();
    }

    /** What would cure it; {@code laps} tells how a sheet could be divided. */
    String cure(Rule rule, Group group, Laps laps) {
        return group.worst().verdict().outcome() == Outcome.DOES_NOT_CONFORM
                ? fill(
                                rule.cure().replace("{laps}", laps.sentence(group.worst())),
                                group.worst(),
                                group.name(),
                                extreme(rule, group))
                        .strip()
                : "";
    }

    String because(String template, Subject subject) {
        return fill(template, new Judged(subject, Verdict.notAssessed("")), subject.name(), "");
    }

    /** Reasons from elsewhere may be whole sentences. */
    private static String stopped(String text) {
        return text.endsWith(".") ? text : text + ".";
    }

    /** What stands before a measure that is the worst of several. */
    private static String extreme(Rule rule, Group group) {
        if (!group.varies()) {
            return "";
        }
        return rule.comparison() == Rule.Comparison.AT_MOST ? "up to " : "down to ";
    }

    private String fill(String template, Judged judged, String name, String extreme) {
        Verdict verdict = judged.verdict();
        return Template.fill(template, placeholder -> switch (placeholder) {
            case "subject" -> name;
            case "measured" -> extreme + apart(verdict.measured(), verdict.limit(), verdict.outcome());
            case "limit" -> apart(verdict.limit(), verdict.measured(), verdict.outcome());
            case "margin" -> verdict.margin().map(Words::text).orElse("unknown");
            default -> value(placeholder, judged.subject().facts());
        });
    }

    private static String apart(Optional<Quantity> one, Optional<Quantity> other, Outcome outcome) {
        if (one.isPresent() && other.isPresent() && outcome == Outcome.DOES_NOT_CONFORM) {
            return bare(Quantities.text(one.get(), other.get()));
        }
        return one.map(Words::text).orElse("unknown");
    }

    private static String text(Quantity quantity) {
        return bare(Quantities.text(quantity));
    }

    /** In a sentence the noun says what is counted. */
    private static String bare(String text) {
        return text.endsWith(PIECES) ? text.substring(0, text.length() - PIECES.length()) : text;
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Every fact that the rule rests on, as {@code name = value unit (evidence)}. */
    List<String> facts(Rule rule, Subject subject) {
        List<String> facts = new ArrayList<>();
        for (String name : Uses.facts(rule, rules)) {
            Optional<Facts.Fact> fact = subject.facts().find(name);
            String evidence = fact.isPresent()
                            && fact.get() instanceof Facts.Known known
                            && !known.evidence().isEmpty()
                    ? " (" + known.evidence() + ")"
                    : "";
            facts.add(name + " = " + value(name, subject.facts()) + evidence);
        }
        return facts;
    }

    private String value(String name, Facts facts) {
        Optional<Facts.Fact> fact = facts.find(name);
        if (fact.isEmpty()) {
            return "unknown";
        } else if (fact.get() instanceof Facts.Known known) {
            FactSpec spec = specs.get(name);
            return known.value() instanceof Double number && spec != null && spec.type() == FactType.NUMBER
                    ? Quantities.text(number, spec.dimension())
                    : known.value().toString();
        }
        return "unknown: " + ((Facts.Missing) fact.get()).reason();
    }
}
