package runtrue.rules.cel;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelExpr.ExprKind.Kind;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import runtrue.rules.yaml.NearMiss;

/** Finds the facts, definitions and tables that an expression mentions, and the misspelt ones. */
final class Names {
    private final Set<String> variables;
    private final Set<String> functions;
    private final BiConsumer<Long, String> error;
    private final Set<String> used = new TreeSet<>();
    private final Map<Long, Long> starts = new HashMap<>();

    Names(Set<String> variables, Set<String> functions, BiConsumer<Long, String> error) {
        this.variables = variables;
        this.functions = functions;
        this.error = error;
    }

    Set<String> usedBy(CelAbstractSyntaxTree ast) {
        visit(ast.getExpr());
        return used;
    }

    /** Ids of dotted names to those of their first words, which say where they start; the others stand at a dot. */
    Map<Long, Long> starts() {
        return starts;
    }

    private void visit(CelExpr expr) {
        switch (expr.getKind()) {
            case IDENT, SELECT -> variable(expr);
            case LIST -> expr.list().elements().forEach(this::visit);
            case CALL -> call(expr);
            default -> {}
        }
    }

    private void variable(CelExpr expr) {
        Optional<String> name = dotted(expr);
        starts.put(expr.id(), root(expr).id());
        if (name.isEmpty()) {
            visit(expr.select().operand());
        } else if (variables.contains(name.get())) {
            used.add(name.get());
        } else {
            error.accept(
                    root(expr).id(),
                    "unknown fact \"" + name.get() + "\"" + NearMiss.hint(name.get(), variables)
                            + (group(name.get()).isEmpty() ? "" : " Known here: " + group(name.get())));
        }
    }

    private void call(CelExpr expr) {
        Optional<String> space = expr.call().target().flatMap(Names::dotted);
        String name = space.map(s -> s + ".").orElse("") + expr.call().function();
        boolean ofTable = space.filter("tables"::equals).isPresent();
        if (ofTable || (space.isEmpty() && Character.isLetter(name.charAt(0)))) {
            if (!functions.contains(name)) {
                error.accept(
                        expr.id(),
                        "unknown " + (ofTable ? "table" : "function") + " \"" + name + "\""
                                + NearMiss.hint(name, functions));
            }
        } else {
            expr.call().target().ifPresent(this::visit);
        }
        expr.call().args().forEach(this::visit);
    }

    /** The facts of the same group, to choose from; empty when there is no such group. */
    private String group(String name) {
        String start = name.contains(".") ? name.substring(0, name.indexOf('.') + 1) : name + ".";
        return String.join(
                ", ",
                variables.stream().filter(v -> v.startsWith(start)).sorted().toList());
    }

    private static Optional<String> dotted(CelExpr expr) {
        if (expr.getKind() == Kind.IDENT) {
            return Optional.of(expr.ident().name());
        } else if (expr.getKind() == Kind.SELECT) {
            return dotted(expr.select().operand())
                    .map(before -> before + "." + expr.select().field());
        }
        return Optional.empty();
    }

    private static CelExpr root(CelExpr expr) {
        return expr.getKind() == Kind.SELECT ? root(expr.select().operand()) : expr;
    }
}
