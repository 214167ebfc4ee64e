package runtrue.rules.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Table;
import runtrue.rules.Uses;
import runtrue.rules.cel.Evaluator.Lookup;
import runtrue.rules.cel.Evaluator.NoAnswerException;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.extend.RuleSources;
import runtrue.rules.judge.RuleTrial;
import runtrue.rules.units.Quantities;

/** Gives the facts of each example to its rule and compares what the rule says with what it should. */
public final class ExampleRun {
    private static final FactCatalogue CATALOGUE = FactCatalogue.standard();

    private final RuleBook book;
    private final RuleTrial trial;

    /** What the tables of the roof system answer in the example that is being tried. */
    private Map<String, Double> answers = Map.of();

    private ExampleRun(RuleBook book) {
        this.book = book;
        this.trial = RuleTrial.of(book.rules(), spec -> lookup(book.rules(), spec));
    }

    /** All examples of the book, each with how it went, in the order of the book. */
    public static List<ExampleResult> of(RuleBook book) {
        return new ExampleRun(book).run();
    }

    private List<ExampleResult> run() {
        List<ExampleResult> results = new ArrayList<>();
        for (Example example : book.examples()) {
            Rule rule = book.rules().rule(example.rule()).orElseThrow();
            answers = example.tables();
            ExampleResult result = compare(rule, example, trial.apply(rule, facts(rule, example)));
            results.add(result.holds() ? result : result.adding(changed(rule)));
        }
        return results;
    }

    /** Where a rule or a definition that it uses was changed by an extending rule set, its examples may have to change. */
    private String changed(Rule rule) {
        RuleSources sources = book.rules().sources();
        return Stream.concat(
                        Stream.of("rules." + rule.id()),
                        Uses.definitions(rule, book.rules()).stream().map(d -> "definitions." + d))
                .flatMap(name -> sources.changedIn(name).stream())
                .sorted()
                .findFirst()
                .map(place -> ". It is changed at " + place + "; give rule " + rule.id() + " examples of its own there")
                .orElse("");
    }

    private Lookup lookup(RuleSet rules, TableSpec spec) {
        Table own = rules.ownTables().get(spec.name());
        if (own != null) {
            return own::at;
        }
        return arguments -> {
            Double answer = answers.get(spec.name());
            if (answer == null) {
                throw new NoAnswerException("tables." + spec.name() + " is not stated by the example");
            }
            return answer;
        };
    }

    private static Facts facts(Rule rule, Example example) {
        Facts facts = Facts.empty();
        CATALOGUE.offeredTo(rule.kind()).forEach(fact -> facts.miss(fact.name(), "is not stated by the example"));
        example.facts().forEach((name, value) -> {
            if (value instanceof Double number) {
                facts.know(name, number, "example");
            } else if (value instanceof Boolean truth) {
                facts.know(name, truth, "example");
            } else {
                facts.know(name, value.toString(), "example");
            }
        });
        return facts;
    }

    private static ExampleResult compare(Rule rule, Example example, Optional<RuleTrial.Said> said) {
        Optional<Outcome> outcome = said.map(RuleTrial.Said::outcome);
        String got = outcome.map(Outcome::label).orElse(Expected.DOES_NOT_APPLY.label());
        String figures = said.map(ExampleRun::figures).orElse("");
        if (!outcome.equals(example.expected().outcome())) {
            return new ExampleResult(
                    example,
                    got,
                    "stated is \"" + example.expected().label() + "\", the rule says \"" + got + "\"" + figures);
        }
        Optional<Quantity> limit = said.flatMap(RuleTrial.Said::limit);
        // As people read it: whoever states a limit writes it with as many digits as the program does.
        if (example.limit().isPresent() && !shown(rule, example.limit()).equals(shown(rule, limit))) {
            return new ExampleResult(
                    example,
                    got,
                    "the limit stated is " + shown(rule, example.limit()) + ", the rule's is " + shown(rule, limit));
        }
        String reason = said.map(RuleTrial.Said::reason).orElse("");
        if (!reason.contains(example.because())) {
            return new ExampleResult(
                    example, got, "the reason does not hold \"" + example.because() + "\"; it is: " + reason);
        }
        return new ExampleResult(example, got, "");
    }

    private static String shown(Rule rule, Optional<Quantity> limit) {
        return limit.map(q -> Quantities.text(new Quantity(q.si(), rule.unit().symbol())))
                .orElse("none");
    }

    private static String figures(RuleTrial.Said said) {
        if (!said.reason().isEmpty()) {
            return ": " + said.reason();
        }
        String measured = said.measured().map(q -> ": " + Quantities.text(q)).orElse("");
        return measured
                + said.limit().map(q -> " against " + Quantities.text(q)).orElse("");
    }
}
