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

/** Makes evaluators that are prepared for everything a rule set may ask. */
final class Evaluators {
    private Evaluators() {}

    /** Tables answer as the rule set states them, or else the roof system. */
    static Evaluator of(RuleSet rules, RoofSystem system) {
        return of(rules, spec -> lookup(spec, table(rules, system, spec), system));
    }

    static Evaluator of(RuleSet rules, Function<TableSpec, Lookup> answers) {
        List<Expression> expressions = new ArrayList<>();
        rules.edgeZoneWidth().ifPresent(expressions::add);
        rules.rules().forEach(rule -> expressions.addAll(Uses.expressions(rule)));
        Map<TableSpec, Lookup> lookups = new HashMap<>();
        rules.tables().forEach(spec -> lookups.put(spec, answers.apply(spec)));
        return new Evaluator(expressions, rules.definitions(), lookups);
    }

    /** The values behind a table; null where neither states any. */
    static @Nullable Table table(RuleSet rules, RoofSystem system, TableSpec spec) {
        Table own = rules.ownTables().get(spec.name());
        return own != null ? own : system.tables().get(spec.name());
    }

    static Lookup lookup(TableSpec spec, @Nullable Table table, RoofSystem system) {
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
