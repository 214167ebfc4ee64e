package runtrue.cli.rules;

import java.util.ArrayList;
import java.util.List;
import runtrue.rules.Rule;
import runtrue.rules.example.ExampleResult;
import runtrue.rules.example.ExampleRun;
import runtrue.rules.example.Expected;
import runtrue.rules.example.RuleBook;

/** How the examples of a rule set went. */
record ExampleReport(List<String> lines, int exitCode) {
    static ExampleReport of(RuleBook book) {
        List<ExampleResult> results = ExampleRun.of(book);
        List<String> lines = new ArrayList<>();
        for (ExampleResult result : results) {
            if (!result.holds()) {
                lines.add(result.example().place() + ": " + result.example().name() + ": " + result.fault());
            }
        }
        long failed = lines.size();
        int lacking = 0;
        for (Rule rule : book.rules().rules()) {
            List<Expected> without = book.without(rule.id());
            if (!without.isEmpty()) {
                lacking++;
                lines.add("Rule " + rule.id() + " has no example of: "
                        + String.join(
                                ", ", without.stream().map(Expected::label).toList()));
            }
        }
        lines.add(book.rules().name() + " " + book.rules().version() + ": "
                + book.rules().rules().size() + " rules, " + results.size() + " examples, " + failed
                + " of them do not hold; "
                + lacking + " rules lack one");
        int exit = failed > 0
                ? RulesCommand.EXAMPLE_FAILS
                : lacking > 0 ? RulesCommand.EXAMPLE_LACKING : RulesCommand.DONE;
        return new ExampleReport(lines, exit);
    }
}
