package runtrue.rules.cel;

import dev.cel.common.CelAbstractSyntaxTree;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.units.Dimension;

/**
 * An expression that passed every check: syntax, names, types, dimensions.
 *
 * @param text as written
 * @param dimension of a number; empty for texts and truth values, and for a plain 0, which fits any
 * @param names facts and definitions that it mentions
 */
public record Expression(String text, CelAbstractSyntaxTree ast, Optional<Dimension> dimension, Set<String> names) {
    public Expression {
        names = Set.copyOf(names);
    }
}
