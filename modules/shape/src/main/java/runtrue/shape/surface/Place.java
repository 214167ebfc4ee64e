package runtrue.shape.surface;

/** A place on a surface by its two parameters. */
record Place(double u, double v) {
    double on(int axis) {
        return axis == 0 ? u : v;
    }
}
