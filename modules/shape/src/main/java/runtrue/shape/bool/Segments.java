package runtrue.shape.bool;

/** Two straight segments in the plane. */
final class Segments {
    private Segments() {}

    /** Whether segments a-b and c-d cross or come nearer than a tolerance. */
    static boolean near(
            double au, double av, double bu, double bv, double cu, double cv, double du, double dv, double tolerance) {
        if (Math.min(au, bu) > Math.max(cu, du) + tolerance
                || Math.min(cu, du) > Math.max(au, bu) + tolerance
                || Math.min(av, bv) > Math.max(cv, dv) + tolerance
                || Math.min(cv, dv) > Math.max(av, bv) + tolerance) {
            return false;
        }
        double sideC = side(au, av, bu, bv, cu, cv);
        double sideD = side(au, av, bu, bv, du, dv);
        double sideA = side(cu, cv, du, dv, au, av);
        double sideB = side(cu, cv, du, dv, bu, bv);
        if (sideC > 0 != sideD > 0 && sideA > 0 != sideB > 0) {
            return true;
        }
        return pointNear(au, av, bu, bv, cu, cv, tolerance)
                || pointNear(au, av, bu, bv, du, dv, tolerance)
                || pointNear(cu, cv, du, dv, au, av, tolerance)
                || pointNear(cu, cv, du, dv, bu, bv, tolerance);
    }

    private static double side(double au, double av, double bu, double bv, double pu, double pv) {
        return (bu - au) * (pv - av) - (bv - av) * (pu - au);
    }

    /** Whether a point is nearer to a segment than a tolerance. */
    static boolean pointNear(double au, double av, double bu, double bv, double pu, double pv, double tolerance) {
        double du = bu - au;
        double dv = bv - av;
        double length2 = du * du + dv * dv;
        double t = length2 > 0 ? ((pu - au) * du + (pv - av) * dv) / length2 : 0;
        t = Math.max(0, Math.min(1, t));
        double eu = au + t * du - pu;
        double ev = av + t * dv - pv;
        return eu * eu + ev * ev <= tolerance * tolerance;
    }
}
