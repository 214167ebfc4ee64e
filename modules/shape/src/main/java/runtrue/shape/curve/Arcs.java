package runtrue.shape.curve;

/** Angles on closed curves. */
final class Arcs {
    private Arcs() {}

    /** From one angle on to another, forward or back; a whole turn when they are the same. */
    static double sweep(double start, double end, boolean forward) {
        double sweep = (end - start) % Conic.TURN;
        if (forward && sweep <= 1e-12) {
            return sweep + Conic.TURN;
        }
        return !forward && sweep >= -1e-12 ? sweep - Conic.TURN : sweep;
    }
}
