package runtrue.cli.rules;

import java.util.Optional;
import runtrue.ids.IdsDocument;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.example.RuleBook;
import runtrue.rules.explain.Explanation;

/** What stands between the command and files. */
public interface RulesWork {
    /**
     * A rule set with its examples, and the values that its limits are told with.
     *
     * @throws RuleException when a file is wrong or not there
     */
    Opened open(RulesRequest request);

    /** What {@link #open} gives. */
    record Opened(RuleBook book, RoofSystem system, DropSettings settings) {}

    /**
     * What the rules need from models.
     *
     * @throws RuleException when the file that says what facts rest on is wrong
     */
    IdsDocument needs(RuleSet rules);

    /**
     * How a finding of the drops in the request came about: they are read, laid out and judged again. Empty when none of
     * them has it.
     *
     * @throws RuleException when the drops or a file cannot be read
     */
    Optional<Explanation> finding(RulesRequest request, String id);
}
