package runtrue.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;

/** What the expressions of a rule mention, those of definitions included. */
public final class Uses {
    private Uses() {}

    /** All expressions of the rule, in the order in which they are looked at. */
    public static List<Expression> expressions(Rule rule) {
        List<Expression> all = new ArrayList<>();
        rule.when().ifPresent(all::add);
        rule.unassessable().forEach(u -> all.add(u.when()));
        rule.require().ifPresent(all::add);
        rule.measure().ifPresent(all::add);
        rule.limits().forEach(limit -> limit.expression().ifPresent(all::add));
        return all;
    }

    /** Names of facts, in alphabetical order. */
    public static Set<String> facts(Rule rule, RuleSet rules) {
        Set<String> names = all(rule, rules);
        names.removeIf(name -> name.startsWith(ExpressionCompiler.DEFINED));
        return names;
    }

    /** The same of one expression. */
    public static Set<String> facts(Expression expression, RuleSet rules) {
        Set<String> names = new TreeSet<>();
        collect(expression, rules, names);
        names.removeIf(name -> name.startsWith(ExpressionCompiler.DEFINED));
        return names;
    }

    /** Names of definitions, without {@link ExpressionCompiler#DEFINED}. */
    public static Set<String> definitions(Rule rule, RuleSet rules) {
        Set<String> found = new TreeSet<>();
        all(rule, rules).stream()
                .filter(name -> name.startsWith(ExpressionCompiler.DEFINED))
                .forEach(name -> found.add(name.substring(ExpressionCompiler.DEFINED.length())));
        return found;
    }

    private static Set<String> all(Rule rule, RuleSet rules) {
        Set<String> names = new TreeSet<>();
        expressions(rule).forEach(expression -> collect(expression, rules, names));
        return names;
    }

    private static void collect(Expression expression, RuleSet rules, Set<String> names) {
        for (String name : expression.names()) {
            names.add(name);
            if (name.startsWith(ExpressionCompiler.DEFINED)) {
                Expression definition = rules.definitions().get(name.substring(ExpressionCompiler.DEFINED.length()));
                if (definition != null) {
                    collect(definition, rules, names);
                }
            }
        }
    }
}
