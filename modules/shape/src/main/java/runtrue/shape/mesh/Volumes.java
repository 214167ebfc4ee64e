package runtrue.shape.mesh;

/** Signed volume by the divergence theorem: cones from one point over every loop. */
final class Volumes {
    private Volumes() {}

    static double signed(double[] xyz, int[][][] faces) {
        if (faces.length == 0) {
            return 0;
        }
        int origin = faces[0][0][0];
        double sum = 0;
        for (int[][] face : faces) {
            sum += sixfold(xyz, face, origin);
        }
        return sum / 6;
    }

    /** Six times the signed volume of the cone from a point over a face. */
    static double sixfold(double[] xyz, int[][] face, int origin) {
        double sum = 0;
        for (int[] loop : face) {
            double[] n = FacePlane.doubleArea(xyz, loop);
            int p = 3 * loop[0];
            int o = 3 * origin;
            sum += n[0] * (xyz[p] - xyz[o]) + n[1] * (xyz[p + 1] - xyz[o + 1]) + n[2] * (xyz[p + 2] - xyz[o + 2]);
        }
        return sum;
    }
}
