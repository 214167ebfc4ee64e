package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import runtrue.rules.RoofSystem;
import runtrue.rules.RuleSet;
import runtrue.rules.Table;
import runtrue.rules.Uses;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Evaluator.Lookup;
import runtrue.rules.cel.Evaluator.NoAnswerException;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.TableSpec;

/** Makes evaluators that are prepared for everything a rule set may ask, and says how its tables answer. */
public final class Evaluators {
    private Evaluators() {}

    static Evaluator of(RuleSet rules, RoofSystem system) {
        return of(rules, spec -> answers(rules, system, spec));
    }

    static Evaluator of(RuleSet rules, Function<TableSpec, Lookup> answers) {
        List<Expression> expressions = new ArrayList<>();
        rules.edgeZoneWidth().ifPresent(expressions::add);
        rules.rules().forEach(rule -> expressions.addAll(Uses.expressions(rule)));
        return new Evaluator(expressions, rules.definitions(), lookups(rules, answers));
    }

    /** A lookup for every table that the rule set declares. */
    public static Map<TableSpec, Lookup> lookups(RuleSet rules, Function<TableSpec, Lookup> answers) {
        Map<TableSpec, Lookup> lookups = new HashMap<>();
        rules.tables().forEach(spec -> lookups.put(spec, answers.apply(spec)));
        return lookups;
    }

    /** The values behind a table, as the rule set states them, or else the roof system; null where neither does. */
    public static @Nullable Table table(RuleSet rules, RoofSystem system, TableSpec spec) {
        Table own = rules.ownTables().get(spec.name());
        return own != null ? own : system.tables().get(spec.name());
    }

    /** How a table answers. */
    public static Lookup answers(RuleSet rules, RoofSystem system, TableSpec spec) {
        Table table = table(rules, system, spec);
        if (table == null) {
            return arguments -> {
                throw new NoAnswerException("roof system " + system.name() + " has no table " + spec.name());
            };
        } else if (!table.spec().answers(spec)) {
            return arguments -> {
                throw new NoAnswerException("table " + spec.name() + " of roof system " + system.name()
                        + " has other axes or another unit than the rule set declares");
            };
        }
        return table::at;
    }
}
