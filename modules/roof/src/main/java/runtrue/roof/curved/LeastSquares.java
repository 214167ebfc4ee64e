package runtrue.roof.curved;

import java.util.Optional;

/** Solves linear equations in the sense of least squares by their normal equations; for few unknowns near 1. */
final class LeastSquares {
    /** Pivots below this share of the largest entry are nothing: the equations do not tell that unknown. */
    private static final double SINGULAR = 1e-14;

    private final int unknowns;
    private final double[][] normal;

    LeastSquares(int unknowns) {
        this.unknowns = unknowns;
        this.normal = new double[unknowns][unknowns + 1];
    }

    /** Adds an equation: as many factors as there are unknowns, then the right side. */
    void add(double... row) {
        for (int i = 0; i < unknowns; i++) {
            for (int k = 0; k <= unknowns; k++) {
                normal[i][k] += row[i] * row[k];
            }
        }
    }

    /** By elimination with pivots; empty when an unknown is not told by the equations. */
    Optional<double[]> solve() {
        double[][] m = new double[unknowns][];
        double largest = 0;
        for (int i = 0; i < unknowns; i++) {
            m[i] = normal[i].clone();
            largest = Math.max(largest, m[i][i]);
        }
        for (int i = 0; i < unknowns; i++) {
            int pivot = i;
            for (int r = i + 1; r < unknowns; r++) {
                pivot = Math.abs(m[r][i]) > Math.abs(m[pivot][i]) ? r : pivot;
            }
            double[] swapped = m[i];
            m[i] = m[pivot];
            m[pivot] = swapped;
            if (Math.abs(m[i][i]) <= SINGULAR * largest) {
                return Optional.empty();
            }
            for (int r = 0; r < unknowns; r++) {
                double share = r == i ? 0 : m[r][i] / m[i][i];
                for (int k = i; k <= unknowns; k++) {
                    m[r][k] -= share * m[i][k];
                }
            }
        }
        double[] solution = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            solution[i] = m[i][unknowns] / m[i][i];
        }
        return Optional.of(solution);
    }
}
