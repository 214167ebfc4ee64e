package runtrue.roof.curved;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The circle nearest to points in the sense of least squares of their distances from it (geometric fit by Gauss-Newton
 * steps from the algebraic fit).
 *
 * @param deviation greatest distance of a point from the circle, metres
 */
record CircleFit(Vector2D centre, double radius, double deviation) {
    private static final int STEPS = 20;

    /** Three points or more; empty when they lie on a line. */
    static Optional<CircleFit> of(List<Vector2D> points) {
        Vector2D mean = Vector2D.ZERO;
        for (Vector2D p : points) {
            mean = mean.add(p.multiply(1.0 / points.size()));
        }
        Vector2D middle = mean;
        List<Vector2D> centred = points.stream().map(p -> p.subtract(middle)).toList();
        return algebraic(centred).flatMap(start -> geometric(start, centred)).map(c -> {
            double deviation = centred.stream()
                    .mapToDouble(p -> Math.abs(p.distance(c.centre) - c.radius))
                    .max()
                    .orElseThrow();
            return new CircleFit(c.centre.add(middle), c.radius, deviation);
        });
    }

    /** Least squares of x2 + y2 + a x + b y + c. */
    private static Optional<CircleFit> algebraic(List<Vector2D> points) {
        LeastSquares equations = new LeastSquares(3);
        points.forEach(p -> equations.add(p.getX(), p.getY(), 1, -p.normSq()));
        return equations.solve().map(x -> {
            Vector2D centre = Vector2D.of(-x[0] / 2, -x[1] / 2);
            return new CircleFit(centre, Math.sqrt(Math.max(0, centre.normSq() - x[2])), 0);
        });
    }

    private static Optional<CircleFit> geometric(CircleFit start, List<Vector2D> points) {
        CircleFit at = start;
        for (int step = 0; step < STEPS; step++) {
            LeastSquares equations = new LeastSquares(3);
            for (Vector2D p : points) {
                Vector2D from = p.subtract(at.centre);
                double distance = from.norm();
                equations.add(from.getX() / distance, from.getY() / distance, 1, distance - at.radius);
            }
            Optional<double[]> change = equations.solve();
            if (change.isEmpty()) {
                return Optional.empty();
            }
            double[] by = change.get();
            at = new CircleFit(at.centre.add(Vector2D.of(by[0], by[1])), at.radius + by[2], 0);
            if (Math.abs(by[0]) + Math.abs(by[1]) + Math.abs(by[2]) < 1e-10 * at.radius) {
                break;
            }
        }
        boolean found = Double.isFinite(at.radius) && at.radius > 0;
        return found ? Optional.of(at) : Optional.empty();
    }
}
