package runtrue.shape;

/** More bodies by curved faces whose volume and area follow from published formulas; lengths in millimetres. */
final class TurnedBodies {
    private TurnedBodies() {}

    /** The surface that a curve in the xz plane makes when it turns about z. */
    private static int turned(BrepText t, int curve) {
        int profile = t.line("IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#" + curve + ")");
        int axis = t.line("IFCAXIS1PLACEMENT(#" + t.point(0, 0, 0) + ",#" + t.direction(0, 0, 1) + ")");
        return t.line("IFCSURFACEOFREVOLUTION(#" + profile + ",$,#" + axis + ")");
    }

    private static int rim(BrepText t, double z, double radius) {
        int v = t.vertex(radius, 0, z);
        return t.edge(v, v, AdvancedBodies.circle(t, z, radius));
    }

    /** A cone cut off square to its axis. */
    static String frustum(BrepText t, double low, double high, double height) {
        int bottom = rim(t, 0, low);
        int top = rim(t, height, high);
        int line = t.line("IFCPOLYLINE((#" + t.point(low, 0, 0) + ",#" + t.point(high, 0, height) + "))");
        t.face(turned(t, line), true, t.bound(bottom), t.bound(-top));
        t.plane(t.bound(-bottom));
        t.plane(t.bound(top));
        return t.brep();
    }

    /** z = h (1 - x2 / R2) turned about z: its parabola in Bezier's form. */
    static String paraboloid(BrepText t, double radius, double height) {
        int rim = rim(t, 0, radius);
        int parabola = t.line("IFCBSPLINECURVEWITHKNOTS(2,(#" + t.point(radius, 0, 0) + ",#"
                + t.point(radius / 2, 0, height) + ",#" + t.point(0, 0, height)
                + "),.PARABOLIC_ARC.,.F.,.F.,(3,3),(0.,1.),.UNSPECIFIED.)");
        t.face(turned(t, parabola), true, t.bound(rim));
        t.plane(t.bound(-rim));
        return t.brep();
    }

    /** A part of a ball above a plane, its greatest height given. */
    static String cap(BrepText t, double radius, double height) {
        int rim = rim(t, 0, Math.sqrt(height * (2 * radius - height)));
        int sphere = t.line("IFCSPHERICALSURFACE(#" + t.up(0, 0, height - radius) + "," + t.length(radius) + ")");
        t.face(sphere, true, t.bound(rim));
        t.plane(t.bound(-rim));
        return t.brep();
    }

    /** A cylinder over an ellipse: its side a surface of extrusion. */
    static String ellipticCylinder(BrepText t, double a, double b, double height) {
        int[] rim = new int[2];
        for (int i = 0; i < 2; i++) {
            int v = t.vertex(a, 0, i * height);
            rim[i] = t.edge(
                    v,
                    v,
                    t.line("IFCELLIPSE(#" + t.up(0, 0, i * height) + "," + t.length(a) + "," + t.length(b) + ")"));
        }
        int flat = t.line("IFCAXIS2PLACEMENT2D(#" + t.line("IFCCARTESIANPOINT((0.,0.))") + ",$)");
        int ellipse = t.line("IFCELLIPSE(#" + flat + "," + t.length(a) + "," + t.length(b) + ")");
        int profile = t.line("IFCARBITRARYCLOSEDPROFILEDEF(.CURVE.,$,#" + ellipse + ")");
        int side = t.line("IFCSURFACEOFLINEAREXTRUSION(#" + profile + ",#" + t.up(0, 0, 0) + ",#" + t.direction(0, 0, 1)
                + "," + t.length(height) + ")");
        t.face(side, true, t.bound(rim[0]), t.bound(-rim[1]));
        t.plane(t.bound(-rim[0]));
        t.plane(t.bound(rim[1]));
        return t.brep();
    }

    /** A quarter of a ring of round section about z, from +x to +y. */
    static String elbow(BrepText t, double major, double minor) {
        int first = t.vertex(major + minor, 0, 0);
        int last = t.vertex(0, major + minor, 0);
        int start = t.edge(first, first, section(t, major, 0, minor, t.direction(0, -1, 0), t.direction(1, 0, 0)));
        int end = t.edge(last, last, section(t, 0, major, minor, t.direction(1, 0, 0), t.direction(0, 1, 0)));
        int surface =
                t.line("IFCTOROIDALSURFACE(#" + t.up(0, 0, 0) + "," + t.length(major) + "," + t.length(minor) + ")");
        t.face(surface, true, t.bound(-start), t.bound(end));
        t.plane(t.bound(start));
        t.plane(t.bound(-end));
        return t.brep();
    }

    private static int section(BrepText t, double x, double y, double minor, int axis, int ref) {
        return t.line("IFCCIRCLE(#" + t.axes(x, y, 0, axis, ref) + "," + t.length(minor) + ")");
    }
}
