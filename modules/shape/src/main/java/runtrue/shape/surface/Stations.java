package runtrue.shape.surface;

/** Rows of parameters. */
final class Stations {
    private Stations() {}

    static double[] even(double from, double to, int steps) {
        double[] result = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            result[i] = from + (to - from) * i / steps;
        }
        result[steps] = to;
        return result;
    }
}
