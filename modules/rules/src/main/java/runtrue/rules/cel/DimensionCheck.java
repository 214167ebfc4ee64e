package runtrue.rules.cel;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelExpr;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import runtrue.rules.units.Dimension;

/**
 * Infers the dimension of an expression from those of its facts and refuses sums of unlike things. Empty stands for
 * what has no dimension to compare: texts, truth values, and the number 0, which fits anything.
 */
final class DimensionCheck {
    private static final Set<String> SAME = Set.of("_+_", "_-_", "_<_", "_<=_", "_>_", "_>=_", "_==_", "_!=_");
    private static final Set<String> COMPARING = Set.of("_<_", "_<=_", "_>_", "_>=_", "_==_", "_!=_");

    private final CelAbstractSyntaxTree ast;
    private final Map<Long, Dimension> quantities;
    private final Map<String, Optional<Dimension>> variables;
    private final Map<String, TableSpec> tables;
    private final BiConsumer<Long, String> error;

    DimensionCheck(
            CelAbstractSyntaxTree ast,
            Map<Long, Dimension> quantities,
            Map<String, Optional<Dimension>> variables,
            Map<String, TableSpec> tables,
            BiConsumer<Long, String> error) {
        this.ast = ast;
        this.quantities = quantities;
        this.variables = variables;
        this.tables = tables;
        this.error = error;
    }

    Optional<Dimension> infer() {
        return infer(ast.getExpr());
    }

    private Optional<Dimension> infer(CelExpr expr) {
        return switch (expr.getKind()) {
            case CONSTANT -> constant(expr);
            case IDENT, SELECT ->
                ast.getReference(expr.id()).flatMap(ref -> variables.getOrDefault(ref.name(), Optional.empty()));
            case LIST -> {
                expr.list().elements().forEach(this::infer);
                yield Optional.empty();
            }
            case CALL -> call(expr);
            default -> Optional.empty();
        };
    }

    private Optional<Dimension> constant(CelExpr expr) {
        Dimension quantity = quantities.get(expr.id());
        if (quantity != null) {
            return Optional.of(quantity);
        }
        boolean number = expr.constant().getKind() == dev.cel.common.ast.CelConstant.Kind.DOUBLE_VALUE;
        return number && expr.constant().doubleValue() != 0 ? Optional.of(Dimension.NONE) : Optional.empty();
    }

    private Optional<Dimension> call(CelExpr expr) {
        String function = expr.call().function();
        List<CelExpr> arguments = expr.call().args();
        TableSpec table = tables.get(tableName(expr));
        if (table != null) {
            return table(table, arguments);
        }
        List<Optional<Dimension>> args = arguments.stream().map(this::infer).toList();
        if (SAME.contains(function)) {
            Optional<Dimension> both = common(expr, args);
            return COMPARING.contains(function) ? Optional.empty() : both;
        }
        return switch (function) {
            case "_*_" -> Optional.of(of(args, 0).times(of(args, 1)));
            case "_/_" -> Optional.of(of(args, 0).per(of(args, 1)));
            case "-_", "abs" -> args.get(0);
            case "min", "max" -> common(expr, args);
            case "_?_:_" -> common(expr, args.subList(1, 3));
            case "sqrt" -> root(expr, of(args, 0));
            case "sin", "cos", "tan" -> turn(expr, args.get(0), Dimension.ANGLE, Dimension.NONE);
            case "ceil" -> turn(expr, args.get(0), Dimension.NONE, Dimension.NONE);
            case "atan" -> turn(expr, args.get(0), Dimension.NONE, Dimension.ANGLE);
            default -> Optional.empty();
        };
    }

    static String tableName(CelExpr expr) {
        String function = expr.call().function();
        boolean targeted = expr.call()
                .target()
                .filter(t -> t.getKind() == CelExpr.ExprKind.Kind.IDENT)
                .filter(t -> t.ident().name().equals("tables"))
                .isPresent();
        return targeted ? "tables." + function : function;
    }

    private Optional<Dimension> table(TableSpec table, List<CelExpr> arguments) {
        for (int i = 0; i < Math.min(arguments.size(), table.axes().size()); i++) {
            Optional<Dimension> wanted = table.axes().get(i).dimension();
            Optional<Dimension> got = infer(arguments.get(i));
            if (wanted.isPresent() && got.isPresent() && !wanted.equals(got)) {
                error.accept(
                        arguments.get(i).id(),
                        "axis " + table.axes().get(i).name() + " of table " + table.name() + " is a "
                                + wanted.get().label() + ", this is a "
                                + got.get().label());
            }
        }
        return Optional.of(table.unit().dimension());
    }

    private static Dimension of(List<Optional<Dimension>> args, int index) {
        return args.get(index).orElse(Dimension.NONE);
    }

    private Optional<Dimension> common(CelExpr expr, List<Optional<Dimension>> args) {
        Optional<Dimension> first = args.stream().flatMap(Optional::stream).findFirst();
        args.stream()
                .flatMap(Optional::stream)
                .filter(other -> !first.equals(Optional.of(other)))
                .findFirst()
                .ifPresent(other -> error.accept(
                        expr.id(),
                        "a " + first.orElse(other).label() + " and a " + other.label()
                                + " do not go together; write numbers with units as quantity(\"20 mm\")"));
        return first;
    }

    private Optional<Dimension> root(CelExpr expr, Dimension of) {
        Optional<Dimension> root = of.root();
        if (root.isEmpty()) {
            error.accept(expr.id(), "the square root of a " + of.label() + " is no quantity");
        }
        return root;
    }

    private Optional<Dimension> turn(CelExpr expr, Optional<Dimension> got, Dimension wanted, Dimension gives) {
        if (got.isPresent() && !got.get().equals(wanted)) {
            error.accept(
                    expr.id(),
                    expr.call().function() + " takes a " + wanted.label() + ", this is a "
                            + got.get().label());
        }
        return Optional.of(gives);
    }
}
