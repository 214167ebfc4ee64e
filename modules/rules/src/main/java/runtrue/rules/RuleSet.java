package runtrue.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.TableSpec;
import runtrue.rules.extend.RuleSources;

/**
 * A rule set that passed every check. Immutable; threads may share it.
 *
 * @param version its own, and those of the rule sets that it extends
 * @param hash SHA-256 of the file's text, hexadecimal; it covers the rule sets that it extends
 * @param edgeZoneWidth the declared formula over building facts, in metres; empty when the rule set has none
 * @param edgeZoneSource where that formula comes from
 * @param definitions shared expressions by name
 * @param tables declared; those without values here are the roof system's
 * @param ownTables with values here, by name
 * @param sources where its parts stand, and what of an extended rule set is switched off
 */
public record RuleSet(
        String name,
        String version,
        String title,
        String file,
        String hash,
        Optional<Expression> edgeZoneWidth,
        String edgeZoneSource,
        Map<String, Expression> definitions,
        List<TableSpec> tables,
        Map<String, Table> ownTables,
        List<Rule> rules,
        RuleSources sources) {
    public RuleSet {
        definitions = Map.copyOf(definitions);
        tables = List.copyOf(tables);
        ownTables = Map.copyOf(ownTables);
        rules = List.copyOf(rules);
    }

    /** The same rule set under a name for its file that does not depend on the machine. */
    public RuleSet shownAs(String shownFile) {
        return new RuleSet(
                name,
                version,
                title,
                shownFile,
                hash,
                edgeZoneWidth,
                edgeZoneSource,
                definitions,
                tables,
                ownTables,
                rules,
                sources.shownAs(file, shownFile));
    }

    public Optional<Rule> rule(String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
    }
}
