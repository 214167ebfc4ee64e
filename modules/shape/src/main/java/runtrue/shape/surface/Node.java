package runtrue.shape.surface;

import java.util.List;

/**
 * A corner of a face on its surface's parameters.
 *
 * @param point its number among the points of the body; a seam has two nodes for one point
 */
record Node(double u, double v, int point) {
    double on(int axis) {
        return axis == 0 ? u : v;
    }

    Node moved(double du, double dv) {
        return new Node(u + du, v + dv, point);
    }

    /** Signed area of a ring in the plane of the parameters. */
    static double area(List<Node> ring) {
        double sum = 0;
        Node last = ring.get(ring.size() - 1);
        double ou = last.u();
        double ov = last.v();
        for (Node node : ring) {
            sum += (last.u() - ou) * (node.v() - ov) - (node.u() - ou) * (last.v() - ov);
            last = node;
        }
        return 0.5 * sum;
    }
}
