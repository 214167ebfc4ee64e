package runtrue.shape.surface;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Triangles in a plane whose outer edges never change: points are put in, and inner edges are flipped until no triangle's
 * circle holds a neighbour's corner (Lawson 1977), so that the net is a constrained Delaunay triangulation.
 */
final class Net {
    /** Shares of a triangle up to this count as nothing. */
    private static final double NOTHING = 1e-9;

    /** Four corners on one circle are left as they are: what is below this share of the sums is rounding. */
    private static final double ROUNDING = 1e-12;

    private double[] xy;
    private int points;

    /** Three corners a triangle, counter-clockwise. */
    private int[] corners;

    /** Beyond the edge from corner k to the next: three times the triangle's number plus its edge, or -1. */
    private int[] beyond;

    private int triangles;
    private int[] pending = new int[64];
    private int size;
    private int last;

    /**
     * @param xy two coordinates a point
     * @param corners three point numbers a triangle, counter-clockwise
     */
    Net(double[] xy, int[] corners) {
        this.xy = xy.clone();
        this.points = xy.length / 2;
        this.corners = corners.clone();
        this.triangles = corners.length / 3;
        this.beyond = new int[corners.length];
        Arrays.fill(beyond, -1);
        Map<Long, Integer> open = new HashMap<>();
        for (int e = 0; e < corners.length; e++) {
            long from = corners[e];
            long to = corners[next(e)];
            Integer other = open.remove(to << 32 | from);
            if (other == null) {
                open.put(from << 32 | to, e);
            } else {
                join(e, other);
            }
        }
        for (int e = 0; e < corners.length; e++) {
            push(e);
        }
        settle();
    }

    private static int next(int e) {
        return e % 3 == 2 ? e - 2 : e + 1;
    }

    private static int previous(int e) {
        return e % 3 == 0 ? e + 2 : e - 1;
    }

    int triangles() {
        return triangles;
    }

    int corner(int e) {
        return corners[e];
    }

    /** The number of the edge's other side, -1 at the outline. */
    int beyond(int e) {
        return beyond[e];
    }

    int end(int e) {
        return corners[next(e)];
    }

    private void join(int e, int other) {
        beyond[e] = other;
        if (other >= 0) {
            beyond[other] = e;
        }
    }

    /** Twice the signed area of a triangle of points. */
    private double area(int a, int b, int c) {
        double ax = xy[2 * a];
        double ay = xy[2 * a + 1];
        return (xy[2 * b] - ax) * (xy[2 * c + 1] - ay) - (xy[2 * b + 1] - ay) * (xy[2 * c] - ax);
    }

    private int point(double x, double y) {
        if (2 * points == xy.length) {
            xy = Arrays.copyOf(xy, 2 * xy.length);
        }
        xy[2 * points] = x;
        xy[2 * points + 1] = y;
        return points++;
    }

    private int triangle(int a, int b, int c) {
        int t = triangles++;
        if (3 * triangles > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length + 12);
            beyond = Arrays.copyOf(beyond, corners.length);
        }
        set(t, a, b, c);
        return t;
    }

    private void set(int t, int a, int b, int c) {
        corners[3 * t] = a;
        corners[3 * t + 1] = b;
        corners[3 * t + 2] = c;
    }

    /** Puts a point in and gives its number; -1 when it lies on the outline or beyond. */
    int add(double x, double y) {
        int p = point(x, y);
        int t = holding(p);
        if (t < 0) {
            points--;
            return -1;
        }
        double whole = area(corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]);
        for (int e = 3 * t; e < 3 * t + 3; e++) {
            if (area(corners[e], end(e), p) <= NOTHING * whole) {
                if (beyond[e] < 0) {
                    points--;
                    return -1;
                }
                split(e, p);
                return p;
            }
        }
        int a = corners[3 * t];
        int b = corners[3 * t + 1];
        int c = corners[3 * t + 2];
        int ofB = beyond[3 * t + 1];
        int ofC = beyond[3 * t + 2];
        int second = triangle(b, c, p);
        int third = triangle(c, a, p);
        set(t, a, b, p);
        join(3 * second, ofB);
        join(3 * third, ofC);
        join(3 * t + 1, 3 * second + 2);
        join(3 * second + 1, 3 * third + 2);
        join(3 * third + 1, 3 * t + 2);
        push(3 * t);
        push(3 * second);
        push(3 * third);
        settle();
        return p;
    }

    /** The point in the middle of an inner edge, as a new corner. */
    int halve(int e) {
        int a = corners[e];
        int b = end(e);
        int p = point(0.5 * (xy[2 * a] + xy[2 * b]), 0.5 * (xy[2 * a + 1] + xy[2 * b + 1]));
        split(e, p);
        return p;
    }

    private void split(int e, int p) {
        int t = e / 3;
        int other = beyond[e];
        int u = other / 3;
        int a = corners[e];
        int b = end(e);
        int c = corners[previous(e)];
        int d = corners[previous(other)];
        int bc = beyond[next(e)];
        int ca = beyond[previous(e)];
        int ad = beyond[next(other)];
        int db = beyond[previous(other)];
        set(t, a, p, c);
        set(u, b, p, d);
        int v = triangle(p, b, c);
        int w = triangle(p, a, d);
        join(3 * t + 2, ca);
        join(3 * u + 2, db);
        join(3 * v + 1, bc);
        join(3 * w + 1, ad);
        join(3 * t, 3 * w);
        join(3 * u, 3 * v);
        join(3 * t + 1, 3 * v + 2);
        join(3 * u + 1, 3 * w + 2);
        push(3 * t + 2);
        push(3 * u + 2);
        push(3 * v + 1);
        push(3 * w + 1);
        settle();
    }

    /** A walk from the last triangle towards the point; where the outline stops it, all are looked at. */
    private int holding(int p) {
        int t = Math.min(last, triangles - 1);
        for (int steps = 0; steps < triangles; steps++) {
            int out = -1;
            for (int e = 3 * t; e < 3 * t + 3 && out < 0; e++) {
                out = area(corners[e], end(e), p) < 0 ? e : -1;
            }
            if (out < 0) {
                last = t;
                return t;
            }
            if (beyond[out] < 0) {
                break;
            }
            t = beyond[out] / 3;
        }
        for (t = 0; t < triangles; t++) {
            if (holds(t, p)) {
                last = t;
                return t;
            }
        }
        return -1;
    }

    private boolean holds(int t, int p) {
        return area(corners[3 * t], corners[3 * t + 1], p) >= 0
                && area(corners[3 * t + 1], corners[3 * t + 2], p) >= 0
                && area(corners[3 * t + 2], corners[3 * t], p) >= 0;
    }

    private void push(int e) {
        if (size == pending.length) {
            pending = Arrays.copyOf(pending, 2 * size);
        }
        pending[size++] = e;
    }

    private void settle() {
        while (size > 0) {
            int e = pending[--size];
            if (beyond[e] >= 0 && wrong(e)) {
                flip(e);
            }
        }
    }

    /** Whether the other diagonal of the two triangles is the better one, and lies within them. */
    private boolean wrong(int e) {
        int a = corners[e];
        int b = end(e);
        int c = corners[previous(e)];
        int d = corners[previous(beyond[e])];
        double whole = area(a, b, c) + area(b, a, d);
        if (area(c, a, d) <= NOTHING * whole || area(d, b, c) <= NOTHING * whole) {
            return false;
        }
        double ax = xy[2 * a] - xy[2 * d];
        double ay = xy[2 * a + 1] - xy[2 * d + 1];
        double bx = xy[2 * b] - xy[2 * d];
        double by = xy[2 * b + 1] - xy[2 * d + 1];
        double cx = xy[2 * c] - xy[2 * d];
        double cy = xy[2 * c + 1] - xy[2 * d + 1];
        double aa = ax * ax + ay * ay;
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        double ofA = bx * cy - by * cx;
        double ofB = ax * cy - ay * cx;
        double ofC = ax * by - ay * bx;
        double size = aa * (Math.abs(bx * cy) + Math.abs(by * cx))
                + bb * (Math.abs(ax * cy) + Math.abs(ay * cx))
                + cc * (Math.abs(ax * by) + Math.abs(ay * bx));
        return aa * ofA - bb * ofB + cc * ofC > ROUNDING * size;
    }

    private void flip(int e) {
        int other = beyond[e];
        int t = e / 3;
        int u = other / 3;
        int a = corners[e];
        int b = end(e);
        int c = corners[previous(e)];
        int d = corners[previous(other)];
        int bc = beyond[next(e)];
        int ca = beyond[previous(e)];
        int ad = beyond[next(other)];
        int db = beyond[previous(other)];
        set(t, a, d, c);
        set(u, d, b, c);
        join(3 * t, ad);
        join(3 * t + 1, 3 * u + 2);
        join(3 * t + 2, ca);
        join(3 * u, db);
        join(3 * u + 1, bc);
        push(3 * t);
        push(3 * t + 2);
        push(3 * u);
        push(3 * u + 1);
    }
}
