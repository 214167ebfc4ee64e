package runtrue.rules.cel;

import dev.cel.checker.CelStandardDeclarations;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;
import dev.cel.runtime.CelFunctionBinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Functions of numbers that CEL itself lacks, and the declaration of tables as functions. */
final class Functions {
    private record OfOne(String name, DoubleUnaryOperator value) {}

    private static final List<OfOne> OF_ONE = List.of(
            new OfOne("abs", Math::abs),
            new OfOne("sqrt", Math::sqrt),
            new OfOne("sin", Math::sin),
            new OfOne("cos", Math::cos),
            new OfOne("tan", Math::tan),
            new OfOne("atan", Math::atan),
            new OfOne("ceil", Functions::ceil));

    private Functions() {}

    static Set<String> names() {
        return Set.of("abs", "sqrt", "sin", "cos", "tan", "atan", "ceil", "min", "max", "size", "matches");
    }

    /** Whole numbers that came of a division and are off by rounding stay what they are. */
    private static double ceil(double value) {
        return Math.ceil(value - 1e-9 * Math.max(1, Math.abs(value)));
    }

    /**
     * The functions of CEL but those of dates, durations, bytes and unsigned numbers: no fact is any of these. The
     * library declares all it is given anew for each expression, and makes its own declarations anew as well.
     */
    static CelStandardDeclarations ofTheStandard() {
        return CelStandardDeclarations.newBuilder()
                .filterFunctions((function, overload) ->
                        overload.celOverloadDecl().parameterTypes().stream().noneMatch(Functions::isNoFact))
                .build();
    }

    private static boolean isNoFact(CelType type) {
        return switch (type.kind()) {
            case BYTES, UINT, TIMESTAMP, DURATION -> true;
            default -> false;
        };
    }

    static List<CelFunctionDecl> declarations() {
        List<CelFunctionDecl> all = new ArrayList<>();
        for (OfOne function : OF_ONE) {
            all.add(CelFunctionDecl.newFunctionDeclaration(
                    function.name(),
                    CelOverloadDecl.newGlobalOverload(
                            function.name() + "_double", SimpleType.DOUBLE, SimpleType.DOUBLE)));
        }
        all.add(ofSeveral("min"));
        all.add(ofSeveral("max"));
        return all;
    }

    @SuppressWarnings("Immutable") // the functions have no state
    static List<CelFunctionBinding> bindings() {
        List<CelFunctionBinding> all = new ArrayList<>();
        for (OfOne function : OF_ONE) {
            all.add(CelFunctionBinding.from(
                    function.name() + "_double",
                    Double.class,
                    x -> function.value().applyAsDouble(x)));
        }
        all.add(CelFunctionBinding.from("min_2", Double.class, Double.class, Math::min));
        all.add(CelFunctionBinding.from("max_2", Double.class, Double.class, Math::max));
        List<Class<?>> three = List.of(Double.class, Double.class, Double.class);
        all.add(CelFunctionBinding.from(
                "min_3", three, a -> Math.min((Double) a[0], Math.min((Double) a[1], (Double) a[2]))));
        all.add(CelFunctionBinding.from(
                "max_3", three, a -> Math.max((Double) a[0], Math.max((Double) a[1], (Double) a[2]))));
        return all;
    }

    /** {@code tables.end_span(...)}: a number for numbers and words. */
    static CelFunctionDecl declaration(TableSpec table) {
        List<CelType> types = new ArrayList<>();
        for (TableSpec.Axis axis : table.axes()) {
            types.add(axis.unit().isPresent() ? SimpleType.DOUBLE : SimpleType.STRING);
        }
        return CelFunctionDecl.newFunctionDeclaration(
                "tables." + table.name(), CelOverloadDecl.newGlobalOverload(overload(table), SimpleType.DOUBLE, types));
    }

    static String overload(TableSpec table) {
        return "table_" + table.name();
    }

    private static CelFunctionDecl ofSeveral(String name) {
        return CelFunctionDecl.newFunctionDeclaration(
                name,
                CelOverloadDecl.newGlobalOverload(name + "_2", SimpleType.DOUBLE, SimpleType.DOUBLE, SimpleType.DOUBLE),
                CelOverloadDecl.newGlobalOverload(
                        name + "_3", SimpleType.DOUBLE, SimpleType.DOUBLE, SimpleType.DOUBLE, SimpleType.DOUBLE));
    }
}
