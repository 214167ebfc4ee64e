package runtrue.shape.mesh;

/**
 * A view of a plane along the axis nearest to its normal: the two other coordinates, swapped where needed so that
 * counter-clockwise about the normal stays counter-clockwise. Lengths are foreshortened; containment and order are not
 * changed.
 */
public final class Flat {
    private final int u;
    private final int v;

    private Flat(int u, int v) {
        this.u = u;
        this.v = v;
    }

    public static Flat along(FacePlane plane) {
        double ax = Math.abs(plane.nx());
        double ay = Math.abs(plane.ny());
        double az = Math.abs(plane.nz());
        if (az >= ax && az >= ay) {
            return plane.nz() > 0 ? new Flat(0, 1) : new Flat(1, 0);
        }
        if (ax >= ay) {
            return plane.nx() > 0 ? new Flat(1, 2) : new Flat(2, 1);
        }
        return plane.ny() > 0 ? new Flat(2, 0) : new Flat(0, 2);
    }

    public double u(double[] xyz, int p) {
        return xyz[3 * p + u];
    }

    public double v(double[] xyz, int p) {
        return xyz[3 * p + v];
    }

    /** Adds the point of the plane whose shadow is (u, v), and gives its number. */
    public int lift(FacePlane plane, double pu, double pv, Points target) {
        double[] n = {plane.nx(), plane.ny(), plane.nz()};
        double[] p = new double[3];
        int w = 3 - u - v;
        p[u] = pu;
        p[v] = pv;
        p[w] = (plane.offset() - n[u] * pu - n[v] * pv) / n[w];
        return target.add(p[0], p[1], p[2]);
    }

    /** Signed area of the loop's shadow. */
    public double area(double[] xyz, int[] loop) {
        double ou = u(xyz, loop[0]);
        double ov = v(xyz, loop[0]);
        double sum = 0;
        for (int i = 1; i + 1 < loop.length; i++) {
            double au = u(xyz, loop[i]) - ou;
            double av = v(xyz, loop[i]) - ov;
            sum += au * (v(xyz, loop[i + 1]) - ov) - av * (u(xyz, loop[i + 1]) - ou);
        }
        return 0.5 * sum;
    }

    /** Whether a place lies within a loop (either direction), by the parity of crossings. */
    public boolean within(double[] xyz, int[] loop, double pu, double pv) {
        boolean inside = false;
        int last = loop[loop.length - 1];
        for (int p : loop) {
            double av = v(xyz, last);
            double bv = v(xyz, p);
            if (av > pv != bv > pv) {
                double cross = u(xyz, last) + (pv - av) / (bv - av) * (u(xyz, p) - u(xyz, last));
                if (pu < cross) {
                    inside = !inside;
                }
            }
            last = p;
        }
        return inside;
    }

    /** Whether most corners and edge middles of a loop lie within another: shared corners do not decide alone. */
    boolean mostlyWithin(double[] xyz, int[] loop, int[] outline) {
        int inside = 0;
        int last = loop[loop.length - 1];
        for (int p : loop) {
            double mu = 0.5 * (u(xyz, last) + u(xyz, p));
            double mv = 0.5 * (v(xyz, last) + v(xyz, p));
            inside += within(xyz, outline, u(xyz, p), v(xyz, p)) ? 1 : -1;
            inside += within(xyz, outline, mu, mv) ? 1 : -1;
            last = p;
        }
        return inside > 0;
    }
}
