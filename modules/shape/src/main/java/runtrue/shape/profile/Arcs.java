package runtrue.shape.profile;

import runtrue.shape.curve.Fineness;

/** Round outlines as chords with their ends on the curve. */
final class Arcs {
    private Arcs() {}

    /** A full ellipse (or circle) about the origin. */
    static Ring ellipse(double semiAxisX, double semiAxisY, Fineness fineness) {
        int n = 4 * fineness.chords(Math.max(semiAxisX, semiAxisY), Math.PI / 2);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            xy[2 * i] = semiAxisX * Math.cos(angle);
            xy[2 * i + 1] = semiAxisY * Math.sin(angle);
        }
        return Ring.of(xy, 0);
    }

    /** A rectangle about the origin with rounded corners; square ones for a radius of 0. */
    static Ring rounded(double xDim, double yDim, double radius, Fineness fineness) {
        double r = Math.min(radius, 0.5 * Math.min(xDim, yDim));
        if (!(r > 0)) {
            return Ring.of(Outlines.rectangle(xDim, yDim), fineness.point());
        }
        int chords = fineness.chords(r, Math.PI / 2);
        double[] xy = new double[8 * (chords + 1)];
        int n = 0;
        for (int corner = 0; corner < 4; corner++) {
            double sx = corner == 0 || corner == 3 ? 1 : -1;
            double sy = corner < 2 ? 1 : -1;
            for (int i = 0; i <= chords; i++) {
                double angle = Math.PI / 2 * (corner + (double) i / chords);
                xy[n++] = sx * (0.5 * xDim - r) + r * Math.cos(angle);
                xy[n++] = sy * (0.5 * yDim - r) + r * Math.sin(angle);
            }
        }
        return Ring.of(xy, fineness.point());
    }
}
