package runtrue.shape.surface;

import java.util.List;

/** A range of both parameters. */
record Window(double u0, double u1, double v0, double v1) {
    static Window of(List<Node> nodes) {
        double max = Double.POSITIVE_INFINITY;
        double[] w = {max, -max, max, -max};
        for (Node node : nodes) {
            w[0] = Math.min(w[0], node.u());
            w[1] = Math.max(w[1], node.u());
            w[2] = Math.min(w[2], node.v());
            w[3] = Math.max(w[3], node.v());
        }
        return new Window(w[0], w[1], w[2], w[3]);
    }

    double low(int axis) {
        return axis == 0 ? u0 : v0;
    }

    double high(int axis) {
        return axis == 0 ? u1 : v1;
    }
}
