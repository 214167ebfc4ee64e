package runtrue.rules.judge;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Evaluator.Lookup;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.judge.subject.Subject;

/** Applies single rules to facts that somebody states, with no roof behind them: the very evaluation that a roof gets. */
public final class RuleTrial {
    private final RuleRun run;

    private RuleTrial(RuleRun run) {
        this.run = run;
    }

    /**
     * What a rule says.
     *
     * @param measured empty where nothing was measured or it is not known
     * @param limit that governs; empty where none was compared
     * @param reason why it was not assessed, else empty
     */
    public record Said(Outcome outcome, Optional<Quantity> measured, Optional<Quantity> limit, String reason) {}

    /**
     * For the rules of a set.
     *
     * @param lookups how each of its tables answers
     */
    public static RuleTrial of(RuleSet rules, Function<TableSpec, Lookup> lookups) {
        Evaluator evaluator = Evaluators.of(rules, lookups);
        return new RuleTrial(new RuleRun(evaluator, new Words(FactCatalogue.standard(), rules)));
    }

    /** Empty where the rule is not for a subject with these facts. */
    public Optional<Said> apply(Rule rule, Facts facts) {
        Subject subject =
                new Subject(rule.kind(), "the " + rule.kind().label(), "", List.of(), Optional.empty(), "trial", facts);
        return run.apply(rule, subject)
                .map(verdict -> new Said(verdict.outcome(), verdict.measured(), verdict.limit(), verdict.reason()));
    }
}
