package runtrue.rules.cel;

import dev.cel.common.CelOptions;
import dev.cel.runtime.CelAttribute;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeBuilder;
import dev.cel.runtime.CelRuntimeFactory;
import dev.cel.runtime.CelUnknownSet;
import dev.cel.runtime.CelVariableResolver;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Evaluates expressions with the tables at hand. A missing fact does not matter where the outcome is clear without it
 * ({@code false && missing}); where it matters, the value is {@link Unknown} with the reason.
 */
public final class Evaluator {
    private final Map<String, CelRuntime.Program> definitions = new HashMap<>();
    private final Map<Expression, CelRuntime.Program> programs = new HashMap<>();
    private final CelRuntime runtime;

    /** What an expression came to. */
    public sealed interface Value {}

    /** A Double, String or Boolean. */
    public record Of(Object value) implements Value {}

    /** Not known, for each of these reasons. */
    public record Unknown(List<String> reasons) implements Value {
        public Unknown {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Prepares all expressions, so that evaluation changes nothing and threads may share it.
     *
     * @param definitions by name without {@link ExpressionCompiler#DEFINED}
     * @param lookups a lookup for every table that the expressions were compiled with
     */
    public Evaluator(
            List<Expression> expressions, Map<String, Expression> definitions, Map<TableSpec, Lookup> lookups) {
        CelRuntimeBuilder builder = CelRuntimeFactory.plannerRuntimeBuilder()
                .setOptions(CelOptions.current()
                        .enableUnknownTracking(true)
                        .enableHeterogeneousNumericComparisons(true)
                        .build());
        builder.addFunctionBindings(Functions.bindings());
        lookups.forEach((table, lookup) -> builder.addFunctionBindings(binding(table, lookup)));
        runtime = builder.build();
        definitions.forEach(
                (name, expression) -> this.definitions.put(ExpressionCompiler.DEFINED + name, program(expression)));
        for (Expression expression : expressions) {
            programs.computeIfAbsent(expression, this::program);
        }
    }

    /** How a table answers; arguments are Doubles in SI and Strings. */
    @FunctionalInterface
    public interface Lookup {
        /**
         * The value in SI.
         *
         * @throws NoAnswerException when the table says nothing there
         */
        double at(Object... arguments);
    }

    /** A table that has no answer; becomes a reason why something was not assessed. */
    public static final class NoAnswerException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public NoAnswerException(String reason) {
            super(reason, null, false, false);
        }
    }

    /** The value of one of the expressions given at the start. */
    public Value evaluate(Expression expression, Facts facts) {
        CelRuntime.Program program = programs.get(expression);
        if (program == null) {
            throw new IllegalArgumentException("not prepared: " + expression.text());
        }
        CelVariableResolver resolver = resolver(facts);
        Object result;
        try {
            result = program.eval(resolver);
        } catch (CelEvaluationException e) {
            return new Unknown(List.of(reason(e)));
        }
        if (result instanceof CelUnknownSet unknown) {
            return new Unknown(reasons(unknown, facts));
        }
        if (result instanceof Double number && !Double.isFinite(number)) {
            return new Unknown(List.of("\"" + expression.text() + "\" comes to no finite number"));
        }
        return new Of(result);
    }

    private CelRuntime.Program program(Expression expression) {
        try {
            return runtime.createProgram(expression.ast());
        } catch (CelEvaluationException e) {
            throw new IllegalStateException("a checked expression cannot be prepared: " + expression.text(), e);
        }
    }

    private CelVariableResolver resolver(Facts facts) {
        return new CelVariableResolver() {
            @Override
            public Optional<Object> find(String name) {
                CelRuntime.Program definition = definitions.get(name);
                if (definition != null) {
                    return Optional.of(defined(definition, this));
                }
                Optional<Facts.Fact> fact = facts.find(name);
                if (fact.isPresent() && fact.get() instanceof Facts.Known known) {
                    return Optional.of(known.value());
                }
                return Optional.of(CelUnknownSet.create(CelAttribute.fromQualifiedIdentifier(name)));
            }
        };
    }

    private static Object defined(CelRuntime.Program definition, CelVariableResolver resolver) {
        try {
            return definition.eval(resolver);
        } catch (CelEvaluationException e) {
            throw new NoAnswerException(reason(e));
        }
    }

    private static List<String> reasons(CelUnknownSet unknown, Facts facts) {
        TreeSet<String> reasons = new TreeSet<>();
        for (CelAttribute attribute : unknown.attributes()) {
            String name = attribute.toString();
            Facts.Fact fact = facts.find(name).orElse(new Facts.Missing("is not known"));
            reasons.add(fact instanceof Facts.Missing missing ? name + " " + missing.reason() : name);
        }
        return new ArrayList<>(reasons);
    }

    private static String reason(CelEvaluationException e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (at instanceof NoAnswerException) {
                return String.valueOf(at.getMessage());
            }
        }
        return "evaluation failed: " + e.getMessage();
    }

    @SuppressWarnings("Immutable") // a lookup answers from a table that never changes
    private static CelFunctionBinding binding(TableSpec table, Lookup lookup) {
        List<Class<?>> types = new ArrayList<>();
        for (TableSpec.Axis axis : table.axes()) {
            types.add(axis.unit().isPresent() ? Double.class : String.class);
        }
        return CelFunctionBinding.from(Functions.overload(table), types, lookup::at);
    }
}
