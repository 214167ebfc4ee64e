package runtrue.rules.cel;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelIssue;
import dev.cel.common.CelOptions;
import dev.cel.common.CelValidationException;
import dev.cel.common.CelValidationResult;
import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import runtrue.rules.units.Dimension;
import runtrue.rules.yaml.Place;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Compiles expressions for one kind of subject against the facts, definitions and tables that it offers. */
public final class ExpressionCompiler {
    /** The group of names that shared definitions are reached by. */
    public static final String DEFINED = "defined.";

    private static final int LONGEST = 2_000;
    private static final int DEEPEST = 50;

    private final CelCompiler compiler;
    private final Map<String, Optional<Dimension>> dimensions = new HashMap<>();
    private final Map<String, TableSpec> tables;
    private final Set<String> functions;
    private final Problems problems;

    /** Facts as declared, tables as {@code tables.name(...)}, and errors into {@code problems}. */
    public ExpressionCompiler(List<FactSpec> facts, List<TableSpec> tables, Problems problems) {
        this(environment(facts, tables), new HashMap<>(), new TreeSet<>(Functions.names()), problems);
        for (TableSpec table : tables) {
            this.tables.put("tables." + table.name(), table);
            functions.add("tables." + table.name());
        }
        functions.add(Literals.QUANTITY);
        offer(facts);
    }

    private ExpressionCompiler(
            CelCompiler compiler, Map<String, TableSpec> tables, Set<String> functions, Problems problems) {
        this.compiler = compiler;
        this.tables = tables;
        this.functions = functions;
        this.problems = problems;
    }

    /**
     * The same compiler for some of its facts; the others are as unknown as misspelt ones. Costs nothing, while a new
     * compiler sets up all of CEL's declarations.
     */
    public ExpressionCompiler offering(List<FactSpec> facts) {
        ExpressionCompiler narrowed = new ExpressionCompiler(compiler, tables, functions, problems);
        narrowed.offer(facts);
        return narrowed;
    }

    private void offer(List<FactSpec> facts) {
        for (FactSpec fact : facts) {
            boolean number = fact.type() == FactType.NUMBER;
            dimensions.put(fact.name(), number ? Optional.of(fact.dimension()) : Optional.empty());
        }
    }

    private static CelCompiler environment(List<FactSpec> facts, List<TableSpec> tables) {
        CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder()
                .setOptions(CelOptions.current()
                        .maxExpressionCodePointSize(LONGEST)
                        .maxParseRecursionDepth(DEEPEST)
                        .build())
                .setStandardEnvironmentEnabled(false)
                .setStandardDeclarations(Functions.ofTheStandard())
                .addFunctionDeclarations(Functions.declarations());
        facts.forEach(fact -> builder.addVar(fact.name(), type(fact.type())));
        tables.forEach(table -> builder.addFunctionDeclarations(Functions.declaration(table)));
        return builder.build();
    }

    /** The checked expression, or empty with the reasons in the problems given. */
    public Optional<Expression> compile(Scalar scalar, FactType wanted) {
        Run run = new Run(scalar);
        return run.compile(wanted);
    }

    private static CelType type(FactType type) {
        return switch (type) {
            case NUMBER -> SimpleType.DOUBLE;
            case TEXT -> SimpleType.STRING;
            case TRUTH -> SimpleType.BOOL;
        };
    }

    /** One expression on its way. */
    private final class Run {
        private final Scalar scalar;
        private boolean failed;

        Run(Scalar scalar) {
            this.scalar = scalar;
        }

        Optional<Expression> compile(FactType wanted) {
            try {
                CelValidationResult parsing = compiler.parse(scalar.text());
                if (parsing.hasError()) {
                    parsing.getErrors().forEach(this::report);
                    return Optional.empty();
                }
                return check(parsing.getAst(), wanted);
            } catch (CelValidationException e) {
                e.getErrors().forEach(this::report);
                return Optional.empty();
            }
        }

        private Optional<Expression> check(CelAbstractSyntaxTree parsed, FactType wanted)
                throws CelValidationException {
            Map<Long, Integer> positions = parsed.getSource().getPositionsMap();
            Names names = new Names(
                    dimensions.keySet(), functions, (id, message) -> add(positions.getOrDefault(id, 0), message));
            Set<String> used = names.usedBy(parsed);
            BiConsumer<Long, String> error =
                    (id, message) -> add(positions.getOrDefault(names.starts().getOrDefault(id, id), 0), message);
            Literals literals = new Literals(error);
            CelAbstractSyntaxTree prepared = literals.prepare(parsed);
            if (failed) {
                return Optional.empty();
            }
            CelValidationResult checking = compiler.check(prepared);
            if (checking.hasError()) {
                checking.getErrors().forEach(issue -> error.accept(issue.getExprId(), Wording.of(issue.getMessage())));
                return Optional.empty();
            }
            CelAbstractSyntaxTree checked = checking.getAst();
            Optional<Dimension> dimension =
                    new DimensionCheck(checked, literals.dimensions(), dimensions, tables, error).infer();
            if (!checked.getResultType().equals(type(wanted))) {
                add(0, "gives a " + word(checked.getResultType()) + "; wanted is a " + word(type(wanted)));
            }
            return failed ? Optional.empty() : Optional.of(new Expression(scalar.text(), checked, dimension, used));
        }

        private void report(CelIssue issue) {
            int line = Math.max(1, issue.getSourceLocation().getLine());
            int column = Math.max(0, issue.getSourceLocation().getColumn());
            add(indexOf(line) + column, Wording.of(issue.getMessage()));
        }

        private int indexOf(int line) {
            int index = 0;
            for (int i = 1; i < line; i++) {
                int next = scalar.text().indexOf('\n', index);
                index = next < 0 ? index : next + 1;
            }
            return index;
        }

        private void add(int index, String message) {
            failed = true;
            Place place = scalar.at(index);
            problems.add(place, message);
        }
    }

    private static String word(CelType type) {
        if (type.equals(SimpleType.DOUBLE)) {
            return "number";
        } else if (type.equals(SimpleType.STRING)) {
            return "text";
        } else if (type.equals(SimpleType.BOOL)) {
            return "truth value";
        }
        return type.name();
    }
}
