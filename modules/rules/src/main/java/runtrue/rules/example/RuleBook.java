package runtrue.rules.example;

import java.util.List;
import runtrue.rules.RuleSet;

/**
 * A rule set with its examples, in the order of the rules.
 *
 * @param nevers outcomes that rules cannot come to
 */
public record RuleBook(RuleSet rules, List<Example> examples, List<Never> nevers) {
    public RuleBook {
        examples = List.copyOf(examples);
        nevers = List.copyOf(nevers);
    }

    /** The same under a name for the rule set's file that does not depend on the machine. */
    public RuleBook shownAs(String file) {
        return new RuleBook(rules.shownAs(file), examples, nevers);
    }

    /** Those of one rule. */
    public List<Example> examplesOf(String rule) {
        return examples.stream().filter(e -> e.rule().equals(rule)).toList();
    }

    /** Outcomes of one rule that there is neither an example of nor a sentence why not; does-not-apply needs none. */
    public List<Expected> without(String rule) {
        return List.of(Expected.CONFORMS, Expected.DOES_NOT_CONFORM, Expected.NOT_ASSESSED).stream()
                .filter(outcome -> examplesOf(rule).stream().noneMatch(e -> e.expected() == outcome))
                .filter(outcome -> nevers.stream().noneMatch(n -> n.rule().equals(rule) && n.outcome() == outcome))
                .toList();
    }
}
