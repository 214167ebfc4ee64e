package runtrue.rules.cel;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelMutableAst;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelMutableExpr;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import runtrue.rules.Quantity;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/**
 * Prepares a parsed expression: whole numbers become doubles, since all numeric facts are doubles and CEL mixes the two
 * for no operator; {@code quantity("20 mm")} becomes its value in SI.
 */
final class Literals {
    static final String QUANTITY = "quantity";

    private final BiConsumer<Long, String> error;
    private final Map<Long, Dimension> dimensions = new HashMap<>();

    /** @param error takes the expression's id and what is wrong */
    Literals(BiConsumer<Long, String> error) {
        this.error = error;
    }

    CelAbstractSyntaxTree prepare(CelAbstractSyntaxTree parsed) {
        CelMutableAst ast = CelMutableAst.fromCelAst(parsed);
        prepare(ast.expr());
        return ast.toParsedAst();
    }

    /** Dimensions of the quantities found, by expression id. */
    Map<Long, Dimension> dimensions() {
        return dimensions;
    }

    private void prepare(CelMutableExpr expr) {
        switch (expr.getKind()) {
            case CONSTANT -> number(expr);
            case SELECT -> prepare(expr.select().operand());
            case LIST -> expr.list().elements().forEach(this::prepare);
            case CALL -> call(expr);
            case IDENT -> {}
            default -> error.accept(expr.id(), "maps, structures and comprehensions have no use here");
        }
    }

    private void number(CelMutableExpr expr) {
        if (expr.constant().getKind() == CelConstant.Kind.INT64_VALUE) {
            expr.setConstant(CelConstant.ofValue((double) expr.constant().int64Value()));
        }
    }

    private void call(CelMutableExpr expr) {
        List<CelMutableExpr> args = expr.call().args();
        if (!expr.call().function().equals(QUANTITY) || expr.call().target().isPresent()) {
            expr.call().target().ifPresent(this::prepare);
            args.forEach(this::prepare);
            return;
        }
        if (args.size() != 1
                || args.get(0).getKind() != dev.cel.common.ast.CelExpr.ExprKind.Kind.CONSTANT
                || args.get(0).constant().getKind() != CelConstant.Kind.STRING_VALUE) {
            error.accept(expr.id(), "quantity takes one text, for example quantity(\"20 mm\")");
            return;
        }
        try {
            Quantity quantity = Quantities.parse(args.get(0).constant().stringValue());
            dimensions.put(expr.id(), Unit.of(quantity.unit()).dimension());
            expr.setConstant(CelConstant.ofValue(quantity.si()));
        } catch (IllegalArgumentException e) {
            error.accept(args.get(0).id(), String.valueOf(e.getMessage()));
        }
    }
}
