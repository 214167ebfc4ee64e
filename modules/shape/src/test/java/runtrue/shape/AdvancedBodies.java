package runtrue.shape;

/** Bodies by curved faces whose volume and area follow from formulas; lengths in millimetres. */
final class AdvancedBodies {
    private AdvancedBodies() {}

    static int circle(BrepText t, double z, double radius) {
        return t.line("IFCCIRCLE(#" + t.up(0, 0, z) + "," + t.length(radius) + ")");
    }

    static int cylinder(BrepText t, double radius) {
        return t.line("IFCCYLINDRICALSURFACE(#" + t.up(0, 0, 0) + "," + t.length(radius) + ")");
    }

    static String box(BrepText t, double x, double y, double z) {
        int[] v = new int[8];
        for (int i = 0; i < 8; i++) {
            v[i] = t.vertex((i & 1) * x, (i >> 1 & 1) * y, (i >> 2) * z);
        }
        int[][] sides = {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {1, 3, 7, 5}, {3, 2, 6, 7}, {2, 0, 4, 6}};
        int[][] edges = new int[8][8];
        for (int[] side : sides) {
            int[] loop = new int[4];
            for (int i = 0; i < 4; i++) {
                int a = side[i];
                int b = side[(i + 1) % 4];
                if (edges[a][b] == 0) {
                    edges[a][b] = t.straight(v[a], v[b]);
                    edges[b][a] = -edges[a][b];
                }
                loop[i] = edges[a][b];
            }
            t.plane(t.bound(loop));
        }
        return t.brep();
    }

    /** Upright on the origin; its side is one face whose loop runs along a seam twice. */
    static String seamed(BrepText t, double radius, double height) {
        int low = t.vertex(radius, 0, 0);
        int high = t.vertex(radius, 0, height);
        int bottom = t.edge(low, low, circle(t, 0, radius));
        int top = t.edge(high, high, circle(t, height, radius));
        int seam = t.straight(low, high);
        t.face(cylinder(t, radius), true, t.bound(bottom, seam, -top, -seam));
        t.plane(t.bound(-bottom));
        t.plane(t.bound(top));
        return t.brep();
    }

    /** The same with two loops that run round, and no seam. */
    static String seamless(BrepText t, double radius, double height) {
        int low = t.vertex(radius, 0, 0);
        int high = t.vertex(0, radius, height);
        int turned = t.line("IFCCIRCLE(#" + t.axes(0, 0, height, t.direction(0, 0, 1), t.direction(0, 1, 0)) + ","
                + t.length(radius) + ")");
        int bottom = t.edge(low, low, circle(t, 0, radius));
        int top = t.edge(high, high, turned);
        t.face(cylinder(t, radius), true, t.bound(bottom), t.bound(-top));
        t.plane(t.bound(-bottom));
        t.plane(t.bound(top));
        return t.brep();
    }

    /** The same in two halves, one of which crosses the angle where a surface's own parameter jumps. */
    static String halved(BrepText t, double radius, double height) {
        int a = t.vertex(0, radius, 0);
        int b = t.vertex(0, -radius, 0);
        int c = t.vertex(0, radius, height);
        int d = t.vertex(0, -radius, height);
        int low = circle(t, 0, radius);
        int high = circle(t, height, radius);
        int ab = t.edge(a, b, low);
        int ba = t.edge(b, a, low);
        int cd = t.edge(c, d, high);
        int dc = t.edge(d, c, high);
        int ac = t.straight(a, c);
        int bd = t.straight(b, d);
        int side = cylinder(t, radius);
        t.face(side, true, t.bound(ab, bd, -cd, -ac));
        t.face(side, true, t.bound(ba, ac, -dc, -bd));
        t.plane(t.bound(-ab, -ba));
        t.plane(t.bound(cd, dc));
        return t.brep();
    }

    /** A tube: the hole's side looks against its surface. */
    static String tube(BrepText t, double outer, double inner, double height) {
        int[][] rim = new int[2][2];
        for (int i = 0; i < 2; i++) {
            double radius = i == 0 ? outer : inner;
            for (int k = 0; k < 2; k++) {
                int v = t.vertex(radius, 0, k * height);
                rim[i][k] = t.edge(v, v, circle(t, k * height, radius));
            }
        }
        t.face(cylinder(t, outer), true, t.bound(rim[0][0]), t.bound(-rim[0][1]));
        t.face(cylinder(t, inner), false, t.bound(-rim[1][0]), t.bound(rim[1][1]));
        t.plane(t.bound(-rim[0][0]), t.bound(rim[1][0]));
        t.plane(t.bound(rim[0][1]), t.bound(-rim[1][1]));
        return t.brep();
    }

    /** A dome over z = 0: with one loop round it, or with a meridian as its seam. */
    static String dome(BrepText t, double radius, boolean seam) {
        int v = t.vertex(radius, 0, 0);
        int rim = t.edge(v, v, circle(t, 0, radius));
        int sphere = t.line("IFCSPHERICALSURFACE(#" + t.up(0, 0, 0) + "," + t.length(radius) + ")");
        if (seam) {
            int meridian = t.edge(v, t.vertex(0, 0, radius), meridian(t, radius));
            t.face(sphere, true, t.bound(rim, meridian, -meridian));
        } else {
            t.face(sphere, true, t.bound(rim));
        }
        t.plane(t.bound(-rim));
        return t.brep();
    }

    private static int meridian(BrepText t, double radius) {
        int axes = t.axes(0, 0, 0, t.direction(0, -1, 0), t.direction(1, 0, 0));
        return t.line("IFCCIRCLE(#" + axes + "," + t.length(radius) + ")");
    }

    /** A whole ball: between its poles along one meridian, or with one corner as its only loop. */
    static String ball(BrepText t, double radius, boolean seam) {
        int south = t.vertex(0, 0, -radius);
        int sphere = t.line("IFCSPHERICALSURFACE(#" + t.up(0, 0, 0) + "," + t.length(radius) + ")");
        if (seam) {
            int meridian = t.edge(south, t.vertex(0, 0, radius), meridian(t, radius));
            t.face(sphere, true, t.bound(meridian, -meridian));
        } else {
            t.face(
                    sphere,
                    true,
                    "#" + t.line("IFCFACEOUTERBOUND(#" + t.line("IFCVERTEXLOOP(#" + south + ")") + ",.T.)"));
        }
        return t.brep();
    }

    /** A whole ring with a seam each way. */
    static String torus(BrepText t, double major, double minor) {
        int v = t.vertex(major + minor, 0, 0);
        int axes = t.axes(major, 0, 0, t.direction(0, -1, 0), t.direction(1, 0, 0));
        int round = t.edge(v, v, circle(t, 0, major + minor));
        int section = t.edge(v, v, t.line("IFCCIRCLE(#" + axes + "," + t.length(minor) + ")"));
        int surface =
                t.line("IFCTOROIDALSURFACE(#" + t.up(0, 0, 0) + "," + t.length(major) + "," + t.length(minor) + ")");
        t.face(surface, true, t.bound(round, section, -round, -section));
        return t.brep();
    }

    /**
     * A quarter of a barrel roof along y, of constant thickness: its upper face a rational B-spline, its lower one a
     * surface of extrusion; the quarter turns from +x to +z.
     */
    static String barrel(BrepText t, double outer, double inner, double length) {
        int[][] corner = new int[2][4];
        int[][] arc = new int[2][2];
        int y = t.direction(0, -1, 0);
        int x = t.direction(1, 0, 0);
        for (int i = 0; i < 2; i++) {
            double r = i == 0 ? outer : inner;
            for (int k = 0; k < 2; k++) {
                corner[i][2 * k] = t.vertex(r, k * length, 0);
                corner[i][2 * k + 1] = t.vertex(0, k * length, r);
                int circle = t.line("IFCCIRCLE(#" + t.axes(0, k * length, 0, y, x) + "," + t.length(r) + ")");
                arc[i][k] = t.edge(corner[i][2 * k], corner[i][2 * k + 1], circle);
            }
        }
        int outerFoot = t.straight(corner[0][0], corner[0][2]);
        int outerTop = t.straight(corner[0][1], corner[0][3]);
        int innerFoot = t.straight(corner[1][0], corner[1][2]);
        int innerTop = t.straight(corner[1][1], corner[1][3]);
        t.face(rationalQuarter(t, outer, length), false, t.bound(outerFoot, arc[0][1], -outerTop, -arc[0][0]));
        t.face(drawnQuarter(t, inner, y, x), false, t.bound(arc[1][0], innerTop, -arc[1][1], -innerFoot));
        int[] foot = {t.straight(corner[1][0], corner[0][0]), t.straight(corner[1][2], corner[0][2])};
        int[] top = {t.straight(corner[1][1], corner[0][1]), t.straight(corner[1][3], corner[0][3])};
        t.plane(t.bound(foot[0], arc[0][0], -top[0], -arc[1][0]));
        t.plane(t.bound(-foot[1], arc[1][1], top[1], -arc[0][1]));
        t.plane(t.bound(-foot[0], innerFoot, foot[1], -outerFoot));
        t.plane(t.bound(top[0], outerTop, -top[1], -innerTop));
        return t.brep();
    }

    /** Degree 2 by 1 with the weights of a quarter circle (Piegl and Tiller, The NURBS Book, 7.3). */
    static int rationalQuarter(BrepText t, double r, double length) {
        double[][][] net = {{{r, 0, 0}, {r, length, 0}}, {{r, 0, r}, {r, length, r}}, {{0, 0, r}, {0, length, r}}};
        String w = t.real(Math.sqrt(0.5));
        return t.line("IFCRATIONALBSPLINESURFACEWITHKNOTS(2,1," + t.net(net)
                + ",.CYLINDRICAL_SURF.,.F.,.F.,.F.,(3,3),(2,2),(0.,1.),(0.,1.),.UNSPECIFIED.,((1.,1.),(" + w + "," + w
                + "),(1.,1.)))");
    }

    private static int drawnQuarter(BrepText t, double r, int axis, int ref) {
        int flat = t.line("IFCAXIS2PLACEMENT2D(#" + t.line("IFCCARTESIANPOINT((0.,0.))") + ",$)");
        int circle = t.line("IFCCIRCLE(#" + flat + "," + t.length(r) + ")");
        String from = "#" + t.line("IFCCARTESIANPOINT((" + t.length(r) + ",0.))");
        String to = "#" + t.line("IFCCARTESIANPOINT((0.," + t.length(r) + "))");
        int arc = t.line("IFCTRIMMEDCURVE(#" + circle + ",(" + from + "),(" + to + "),.T.,.CARTESIAN.)");
        int profile = t.line("IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#" + arc + ")");
        return t.line("IFCSURFACEOFLINEAREXTRUSION(#" + profile + ",#" + t.axes(0, 0, 0, axis, ref) + ",#"
                + t.direction(0, 0, 1) + "," + t.length(1000) + ")");
    }

    /** A cone whose side is a line turned about z, with its point as a pole and one loop round its foot. */
    static String cone(BrepText t, double radius, double height) {
        int v = t.vertex(radius, 0, 0);
        int rim = t.edge(v, v, circle(t, 0, radius));
        int line = t.line("IFCPOLYLINE((#" + t.point(radius, 0, 0) + ",#" + t.point(0, 0, height) + "))");
        int profile = t.line("IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#" + line + ")");
        int axis = t.line("IFCAXIS1PLACEMENT(#" + t.point(0, 0, 0) + ",#" + t.direction(0, 0, 1) + ")");
        t.face(t.line("IFCSURFACEOFREVOLUTION(#" + profile + ",$,#" + axis + ")"), true, t.bound(rim));
        t.plane(t.bound(-rim));
        return t.brep();
    }

    /** A cylinder whose side is a rational B-spline that closes, in four quarters, with two loops and no seam. */
    static String splined(BrepText t, double r, double height) {
        int low = t.vertex(0, r, 0);
        int high = t.vertex(-r, 0, height);
        int bottom = t.edge(low, low, circle(t, 0, r));
        int top = t.edge(high, high, circle(t, height, r));
        double[][] corners = {{r, 0}, {r, r}, {0, r}, {-r, r}, {-r, 0}, {-r, -r}, {0, -r}, {r, -r}, {r, 0}};
        double[][][] net = new double[9][][];
        StringBuilder weights = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            net[i] = new double[][] {{corners[i][0], corners[i][1], 0}, {corners[i][0], corners[i][1], height}};
            String w = i % 2 == 0 ? "1." : t.real(Math.sqrt(0.5));
            weights.append(i == 0 ? "(" : ",(").append(w).append(',').append(w).append(')');
        }
        int side = t.line("IFCRATIONALBSPLINESURFACEWITHKNOTS(2,1," + t.net(net) + ",.CYLINDRICAL_SURF.,.T.,.F.,.F.,"
                + "(3,2,2,2,3),(2,2),(0.,1.,2.,3.,4.),(0.,1.),.UNSPECIFIED.,(" + weights + "))");
        t.face(side, true, t.bound(bottom), t.bound(-top));
        t.plane(t.bound(-bottom));
        t.plane(t.bound(top));
        return t.brep();
    }
}
