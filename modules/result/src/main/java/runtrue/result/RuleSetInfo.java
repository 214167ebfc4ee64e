package runtrue.result;

import java.util.List;

/**
 * The rule set that was applied.
 *
 * @param sha256 of the file's bytes, lower-case hexadecimal
 * @param rules in the file's order, also those that met no subject
 */
public record RuleSetInfo(String name, String version, String file, String sha256, List<Rule> rules) {
    public RuleSetInfo {
        rules = List.copyOf(rules);
    }

    /** One rule of the set. */
    public record Rule(String id, String title, Severity severity) {}
}
