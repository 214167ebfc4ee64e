package runtrue.cutting;

import java.util.List;
import java.util.Optional;
import org.ojalgo.concurrent.Parallelism;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * The programme over patterns by Gilmore and Gomory (Operations Research 9, 1961), solved by the library: how often each
 * pattern is cut so that all pieces come out of few bars. The only class that knows the library, which is loaded with it.
 */
final class PatternProgramme {
    private static final double WHOLE = 0.5;

    private final Demand demand;
    private final List<int[]> patterns;

    /** @param patterns counts of each size in one bar; each size in one of them at least */
    PatternProgramme(Demand demand, List<int[]> patterns) {
        this.demand = demand;
        this.patterns = patterns;
    }

    /**
     * Worth of a piece of each size in bars, when bars may be used in fractions: the most that all pieces can be worth while no
     * pattern is worth more than a bar.
     */
    double[] values() {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Variable[] values = new Variable[demand.kinds()];
        for (int i = 0; i < values.length; i++) {
            values[i] = model.newVariable("size " + i).lower(0).weight(demand.counts()[i]);
            if (demand.counts()[i] == 0) {
                values[i].upper(0);
            }
        }
        for (int p = 0; p < patterns.size(); p++) {
            Expression worth = model.newExpression("pattern " + p).upper(1);
            for (int i = 0; i < values.length; i++) {
                if (patterns.get(p)[i] > 0) {
                    worth.set(values[i], patterns.get(p)[i]);
                }
            }
        }
        return numbers(model.maximise(), values.length);
    }

    /** How often each pattern is cut, in fractions. */
    double[] fractions() {
        ExpressionsBasedModel model = model(false);
        return numbers(model.minimise(), patterns.size());
    }

    /**
     * How often each pattern is cut, in whole numbers and with too many pieces here and there; empty when none was found.
     *
     * @param least bars that are needed at any rate
     * @param most bars that are worth an answer
     * @param milliseconds left
     */
    Optional<int[]> whole(int least, int most, int nodes, long milliseconds) {
        ExpressionsBasedModel model = model(true);
        Expression bars = model.newExpression("bars").lower(least).upper(most);
        model.variables().forEach(v -> bars.set(v, 1));
        model.options.integer(IntegerStrategy.newConfigurable().withParallelism(Parallelism.ONE));
        model.options.iterations_abort = nodes;
        model.options.time_abort = milliseconds;
        Optimisation.Result result = model.minimise();
        if (!result.getState().isFeasible()) {
            return Optional.empty();
        }
        int[] times = new int[patterns.size()];
        for (int p = 0; p < times.length; p++) {
            times[p] = (int) Math.floor(result.doubleValue(p) + WHOLE);
        }
        return Optional.of(times);
    }

    private ExpressionsBasedModel model(boolean whole) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Variable[] times = new Variable[patterns.size()];
        for (int p = 0; p < times.length; p++) {
            times[p] = model.newVariable("pattern " + p)
                    .lower(0)
                    .upper(most(patterns.get(p)))
                    .integer(whole)
                    .weight(1);
        }
        for (int i = 0; i < demand.kinds(); i++) {
            Expression pieces = model.newExpression("size " + i).lower(demand.counts()[i]);
            for (int p = 0; p < times.length; p++) {
                if (patterns.get(p)[i] > 0) {
                    pieces.set(times[p], patterns.get(p)[i]);
                }
            }
        }
        return model;
    }

    /** As often as its pieces are needed. */
    private int most(int[] pattern) {
        int most = 0;
        for (int i = 0; i < pattern.length; i++) {
            if (pattern[i] > 0) {
                most = Math.max(most, (int) LowerBounds.ceil(demand.counts()[i], pattern[i]));
            }
        }
        return most;
    }

    private static double[] numbers(Optimisation.Result result, int count) {
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = result.doubleValue(i);
        }
        return numbers;
    }
}
