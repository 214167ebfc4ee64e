package runtrue.shape.profile;

/**
 * Arcs as chords with their ends on the curve. A chord over the angle a leaves an arc of radius r by r (1 - cos(a/2));
 * that gives the greatest angle for a given chord tolerance.
 */
final class Arcs {
    /** However small a circle is, it keeps twelve sides, and 95 % of its area. */
    private static final double GREATEST_STEP = Math.PI / 6;

    private Arcs() {}

    /** Number of chords for an arc. */
    static int chords(double radius, double angle, double tolerance) {
        double step = tolerance < radius ? 2 * Math.acos(1 - tolerance / radius) : GREATEST_STEP;
        return Math.max(1, (int) Math.ceil(Math.abs(angle) / Math.min(step, GREATEST_STEP) - 1e-9));
    }

    /** A full ellipse (or circle) about the origin. */
    static Ring ellipse(double semiAxisX, double semiAxisY, double tolerance) {
        int n = 4 * chords(Math.max(semiAxisX, semiAxisY), Math.PI / 2, tolerance);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            xy[2 * i] = semiAxisX * Math.cos(angle);
            xy[2 * i + 1] = semiAxisY * Math.sin(angle);
        }
        return Ring.of(xy, 0);
    }

    /** Adds the arc from a over b to c, all three included; a straight line when they lie on one. */
    static void through(Path path, double[] a, double[] b, double[] c, double tolerance) {
        path.add(a[0], a[1]);
        double bx = b[0] - a[0];
        double by = b[1] - a[1];
        double cx = c[0] - a[0];
        double cy = c[1] - a[1];
        double d = 2 * (bx * cy - by * cx);
        double b2 = bx * bx + by * by;
        double c2 = cx * cx + cy * cy;
        if (Math.abs(d) <= 1e-12 * (b2 + c2)) {
            path.add(c[0], c[1]);
            return;
        }
        double ux = (cy * b2 - by * c2) / d;
        double uy = (bx * c2 - cx * b2) / d;
        double radius = Math.hypot(ux, uy);
        double start = Math.atan2(-uy, -ux);
        double sweep = Math.atan2(cy - uy, cx - ux) - start;
        double turn = 2 * Math.PI;
        sweep = d > 0 ? (sweep % turn + turn) % turn : -((-sweep % turn + turn) % turn);
        int n = chords(radius, sweep, tolerance);
        for (int i = 1; i < n; i++) {
            double angle = start + sweep * i / n;
            path.add(a[0] + ux + radius * Math.cos(angle), a[1] + uy + radius * Math.sin(angle));
        }
        path.add(c[0], c[1]);
    }
}
