package runtrue.report.drawing.place;

import runtrue.result.Point;

/**
 * Plan view: from world metres to the paper.
 *
 * @param middle world X and Y that come to lie on {@code centre}
 * @param turn by which the world is turned on the paper, radians counter-clockwise
 * @param denominator of the scale: 100 for 1:100
 * @param centre on the paper
 */
public record View(Point middle, double turn, double denominator, Vec centre) {
    public Vec at(Point point) {
        return centre.plus(way(point.xMetres() - middle.xMetres(), point.yMetres() - middle.yMetres()));
    }

    /** A plan vector of the world in metres, as millimetres on paper. */
    public Vec way(double x, double y) {
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        return new Vec(x * cos - y * sin, -(x * sin + y * cos)).times(1000 / denominator);
    }
}
