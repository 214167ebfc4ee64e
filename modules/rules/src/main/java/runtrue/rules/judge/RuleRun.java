package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.Rule.Comparison;
import runtrue.rules.Rule.Limit;
import runtrue.rules.Rule.Spoils;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.subject.Subject;

/** Applies a rule to a subject. */
final class RuleRun {
    /**
     * How far past the limit still counts as on it, relative and absolute in SI: the equality tolerance of the IDS 1.0
     * standard. Models carry rounded coordinates, and a pitch of 2 degrees must not fail for its last digit.
     */
    private static final double TOLERANCE = 1e-6;

    private final Evaluator evaluator;
    private final Words words;

    RuleRun(Evaluator evaluator, Words words) {
        this.evaluator = evaluator;
        this.words = words;
    }

    /** The verdict; empty when the rule is not for the subject. */
    Optional<Verdict> apply(Rule rule, Subject subject) {
        if (!subject.lacking().isEmpty()) {
            return Optional.of(toldOfLack(rule, subject).orElse(Verdict.notAssessed(subject.lacking())));
        }
        Facts facts = subject.facts();
        if (rule.when().isPresent()) {
            Evaluator.Value applies = evaluator.evaluate(rule.when().get(), facts);
            if (applies instanceof Evaluator.Unknown unknown) {
                return Optional.of(
                        hindrance(rule, subject, Spoils.ANY).orElse(Verdict.notAssessed(join(unknown.reasons()))));
            } else if (!isTrue(applies)) {
                return Optional.empty();
            }
        }
        Optional<Verdict> hindered = hindrance(rule, subject, Spoils.ANY);
        if (hindered.isPresent()) {
            return hindered;
        }
        Verdict verdict = rule.require()
                .map(required -> requirement(rule, required, facts))
                .orElseGet(() -> measurement(rule, facts));
        if (verdict.outcome() == Outcome.NOT_ASSESSED) {
            return Optional.of(verdict);
        }
        Spoils own = verdict.outcome() == Outcome.CONFORMS ? Spoils.CONFORMANCE : Spoils.BREACH;
        return Optional.of(hindrance(rule, subject, own)
                .map(doubt ->
                        Verdict.notAssessed(verdict.measured(), doubt.reason()).toldBy(doubt.toldBy()))
                .orElse(verdict));
    }

    /** Why nothing can be said, by the conditions that spoil such an outcome. */
    private Optional<Verdict> hindrance(Rule rule, Subject subject, Spoils outcome) {
        for (Rule.Unassessable unassessable : rule.unassessable()) {
            if (unassessable.spoils() != outcome) {
                continue;
            }
            Evaluator.Value holds = evaluator.evaluate(unassessable.when(), subject.facts());
            if (holds instanceof Evaluator.Unknown unknown) {
                return Optional.of(Verdict.notAssessed(join(unknown.reasons())).toldBy(unassessable.toldBy()));
            } else if (isTrue(holds)) {
                return Optional.of(Verdict.notAssessed(words.because(unassessable.because(), subject))
                        .toldBy(unassessable.toldBy()));
            }
        }
        return Optional.empty();
    }

    /** Where there is nothing to judge, whether another rule tells of the cause. */
    private Optional<Verdict> toldOfLack(Rule rule, Subject subject) {
        return rule.unassessable().stream()
                .filter(u -> !u.toldBy().isEmpty() && isTrue(evaluator.evaluate(u.when(), subject.facts())))
                .findFirst()
                .map(u -> Verdict.notAssessed(subject.lacking()).toldBy(u.toldBy()));
    }

    private Verdict requirement(Rule rule, Expression required, Facts facts) {
        Evaluator.Value value = evaluator.evaluate(required, facts);
        return value instanceof Evaluator.Unknown unknown
                ? Verdict.notAssessed(join(unknown.reasons()))
                : Verdict.ofRequirement(isTrue(value), rule.source());
    }

    private Verdict measurement(Rule rule, Facts facts) {
        Expression measure = rule.measure()
                .orElseThrow(() -> new IllegalStateException("rule " + rule.id() + " neither requires nor measures"));
        Evaluator.Value value = evaluator.evaluate(measure, facts);
        Set<String> reasons = new LinkedHashSet<>();
        if (value instanceof Evaluator.Unknown unknown) {
            reasons.addAll(unknown.reasons());
        }
        List<Governing> known = new ArrayList<>();
        for (Limit limit : rule.limits()) {
            limit(rule, limit, facts, known, reasons);
        }
        Optional<Quantity> measured =
                value instanceof Evaluator.Of of ? Optional.of(quantity(rule, of)) : Optional.empty();
        Optional<Governing> governing = known.stream()
                .min((a, b) -> rule.comparison() == Comparison.AT_MOST
                        ? Double.compare(a.si(), b.si())
                        : Double.compare(b.si(), a.si()));
        if (measured.isEmpty() || governing.isEmpty()) {
            return Verdict.notAssessed(measured, join(List.copyOf(reasons)));
        }
        Verdict verdict = compare(rule, measured.get(), governing.get());
        // A limit that is not known cannot make good what another limit already forbids.
        boolean decided = reasons.isEmpty() || verdict.outcome() == Outcome.DOES_NOT_CONFORM;
        return decided ? verdict : Verdict.notAssessed(measured, join(List.copyOf(reasons)));
    }

    private record Governing(double si, Limit limit, String source) {}

    private void limit(Rule rule, Limit limit, Facts facts, List<Governing> known, Set<String> reasons) {
        String source = limit.source().isEmpty() ? rule.source() : limit.source();
        if (limit.fixed().isPresent()) {
            known.add(new Governing(limit.fixed().get().si(), limit, source));
            return;
        }
        Evaluator.Value value = evaluator.evaluate(limit.expression().orElseThrow(), facts);
        if (value instanceof Evaluator.Of of) {
            known.add(new Governing((Double) of.value(), limit, source));
        } else if (value instanceof Evaluator.Unknown unknown) {
            reasons.addAll(unknown.reasons());
        }
    }

    private static Verdict compare(Rule rule, Quantity measured, Governing limit) {
        double sign = rule.comparison() == Comparison.AT_MOST ? 1 : -1;
        double margin = sign * (limit.si() - measured.si());
        boolean good = margin >= -(Math.abs(limit.si()) * TOLERANCE + TOLERANCE);
        String unit = rule.unit().symbol();
        return new Verdict(
                good ? Outcome.CONFORMS : Outcome.DOES_NOT_CONFORM,
                Optional.of(measured),
                Optional.of(new Quantity(limit.si(), unit)),
                Optional.of(new Quantity(good ? Math.max(0, margin) : margin, unit)),
                Optional.of(limit.limit()),
                limit.source(),
                "");
    }

    private static Quantity quantity(Rule rule, Evaluator.Of value) {
        return new Quantity((Double) value.value(), rule.unit().symbol());
    }

    private static boolean isTrue(Evaluator.Value value) {
        return value instanceof Evaluator.Of of && Boolean.TRUE.equals(of.value());
    }

    private static String join(List<String> reasons) {
        return String.join("; ", reasons);
    }
}
