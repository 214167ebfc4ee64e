package runtrue.shape.mesh;

/**
 * A plane {@code n . p = offset} with a unit normal. A loop without area has a normal of zeros.
 */
public record FacePlane(double nx, double ny, double nz, double offset) {
    /**
     * Mean plane of a loop by Newell's method (Sutherland, Sproull and Schumacker 1974), through the mean of its points.
     */
    public static FacePlane of(double[] xyz, int[] loop) {
        double[] n = doubleArea(xyz, loop);
        double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        if (!(length > 0)) {
            return new FacePlane(0, 0, 0, 0);
        }
        double x = 0;
        double y = 0;
        double z = 0;
        for (int p : loop) {
            x += xyz[3 * p];
            y += xyz[3 * p + 1];
            z += xyz[3 * p + 2];
        }
        double nx = n[0] / length;
        double ny = n[1] / length;
        double nz = n[2] / length;
        return new FacePlane(nx, ny, nz, (nx * x + ny * y + nz * z) / loop.length);
    }

    /** Area of a face in square metres, holes taken off. */
    public static double area(double[] xyz, int[][] face) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int[] loop : face) {
            double[] n = doubleArea(xyz, loop);
            x += n[0];
            y += n[1];
            z += n[2];
        }
        return 0.5 * Math.sqrt(x * x + y * y + z * z);
    }

    /** Twice the area vector of a loop, taken about its first point to keep digits far from the origin. */
    static double[] doubleArea(double[] xyz, int[] loop) {
        int o = 3 * loop[0];
        double ox = xyz[o];
        double oy = xyz[o + 1];
        double oz = xyz[o + 2];
        double nx = 0;
        double ny = 0;
        double nz = 0;
        double ax = 0;
        double ay = 0;
        double az = 0;
        for (int i = 1; i < loop.length; i++) {
            int p = 3 * loop[i];
            double bx = xyz[p] - ox;
            double by = xyz[p + 1] - oy;
            double bz = xyz[p + 2] - oz;
            nx += ay * bz - az * by;
            ny += az * bx - ax * bz;
            nz += ax * by - ay * bx;
            ax = bx;
            ay = by;
            az = bz;
        }
        return new double[] {nx, ny, nz};
    }

    /** Signed distance of a point, positive on the side of the normal. */
    public double distance(double[] xyz, int point) {
        return nx * xyz[3 * point] + ny * xyz[3 * point + 1] + nz * xyz[3 * point + 2] - offset;
    }

    public boolean degenerate() {
        return nx == 0 && ny == 0 && nz == 0;
    }

    public double dot(FacePlane other) {
        return nx * other.nx + ny * other.ny + nz * other.nz;
    }

    public FacePlane flipped() {
        return new FacePlane(-nx, -ny, -nz, -offset);
    }

    /** Greatest distance of a loop's points from the plane. */
    public double deviation(double[] xyz, int[] loop) {
        double worst = 0;
        for (int p : loop) {
            worst = Math.max(worst, Math.abs(distance(xyz, p)));
        }
        return worst;
    }
}
