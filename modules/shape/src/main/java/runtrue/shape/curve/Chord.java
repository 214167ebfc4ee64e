package runtrue.shape.curve;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A line that stands for a piece of a curve. A Bezier curve lies within the hull of its points, and the points of its
 * halves come as near to it as one likes (the convex hull property and subdivision, in every text on the subject). So the
 * answer is sure for the whole piece, where samples would miss a swing between them.
 *
 * @param along from the start to the end; zero for a closed piece, for which distances are taken from the start
 * @param most greatest distance that the curve may have from the line, metres
 */
record Chord(Vector3D start, Vector3D along, double most) {
    /** Halvings before a curve that is neither surely within nor surely beyond counts as beyond. */
    private static final int DEEPEST = 6;

    static Chord of(Vector3D start, Vector3D end, double most) {
        return new Chord(start, end.subtract(start), most);
    }

    /** @param bezier x w, y w, z w and w of each point of the piece; the weights are above zero */
    boolean keeps(double[][] bezier) {
        return keeps(bezier, DEEPEST);
    }

    private boolean keeps(double[][] bezier, int halvings) {
        int last = bezier.length - 1;
        boolean within = true;
        for (double[] point : bezier) {
            within &= distance(point) <= most;
        }
        if (within) {
            return true;
        }
        if (halvings == 0 || distance(bezier[0]) > most || distance(bezier[last]) > most) {
            return false;
        }
        double[][] first = new double[last + 1][];
        double[][] second = bezier.clone();
        for (int level = 0; level <= last; level++) {
            first[level] = second[0];
            for (int i = 0; i < last - level; i++) {
                second[i] = DeBoor.between(second[i], second[i + 1], 0.5);
            }
        }
        return keeps(first, halvings - 1) && keeps(second, halvings - 1);
    }

    private double distance(double[] point) {
        double w = point[3];
        Vector3D off = Vector3D.of(point[0] / w, point[1] / w, point[2] / w).subtract(start);
        double length = along.norm();
        return length > 0 ? off.cross(along).norm() / length : off.norm();
    }
}
