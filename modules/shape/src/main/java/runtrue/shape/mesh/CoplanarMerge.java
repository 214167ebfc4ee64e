package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import runtrue.shape.Tolerances;

/**
 * Neighbouring faces of one plane made into one face. Works on shared edges alone, so that no coordinate changes: edges
 * inside a region cancel, the others are strung into its outline and holes.
 */
final class CoplanarMerge {
    /**
     * Faces this near to the plane join whatever their own normal says: rounded coordinates tilt a narrow triangle
     * by many degrees. In points' tolerances.
     */
    private static final double ROUNDING = 10;

    private static final double LEAST_COSINE = 0.9;

    /**
     * Faces of like direction join when this near to the plane, in plane tolerances. Much less than the whole tolerance,
     * which is for the joints between elements: facets of a flat vault are to stay facets.
     */
    private static final double WITHIN_ELEMENT = 0.25;

    private final double[] xyz;
    private final int[][][] faces;
    private final EdgeMap edges;
    private final Tolerances tolerances;
    private final double cosine;
    private final boolean exactly;
    private final FacePlane[] planes;
    private final int[] region;

    private CoplanarMerge(double[] xyz, int[][][] faces, EdgeMap edges, Tolerances tolerances, boolean exactly) {
        this.exactly = exactly;
        this.xyz = xyz;
        this.faces = faces;
        this.edges = edges;
        this.tolerances = tolerances;
        this.cosine = Math.cos(tolerances.angle());
        this.planes = new FacePlane[faces.length];
        this.region = new int[faces.length];
    }

    /**
     * The merged faces, in the order of their largest part; normals must agree across edges beforehand.
     *
     * @param exactly only faces within the point tolerance of a plane, so that what is cut later still closes
     */
    static int[][][] merged(double[] xyz, int[][][] faces, EdgeMap edges, Tolerances tolerances, boolean exactly) {
        return new CoplanarMerge(xyz, faces, edges, tolerances, exactly).run();
    }

    private int[][][] run() {
        Arrays.fill(region, -1);
        long[] order = byArea();
        int[] queue = new int[faces.length];
        List<int[][]> result = new ArrayList<>();
        for (int i = order.length - 1; i >= 0; i--) {
            int seed = (int) order[i];
            if (region[seed] >= 0 || planes[seed].degenerate()) {
                continue;
            }
            int size = grow(seed, queue);
            if (size == 1) {
                result.add(faces[seed]);
            } else {
                addMerged(seed, Arrays.copyOf(queue, size), result);
            }
        }
        return result.toArray(new int[0][][]);
    }

    /** Areas as sortable bits over face numbers, so that no object is made for a face. */
    private long[] byArea() {
        long[] order = new long[faces.length];
        for (int f = 0; f < faces.length; f++) {
            planes[f] = FacePlane.of(xyz, faces[f][0]);
            float area = (float) FacePlane.area(xyz, faces[f]);
            order[f] = ((long) Float.floatToIntBits(area) << 32) | ((long) faces.length - 1 - f);
        }
        Arrays.sort(order);
        for (int i = 0; i < order.length; i++) {
            order[i] = (long) faces.length - 1 - (int) order[i];
        }
        return order;
    }

    private int grow(int seed, int[] queue) {
        int size = 0;
        queue[size++] = seed;
        region[seed] = seed;
        for (int i = 0; i < size; i++) {
            int f = queue[i];
            for (int e = edges.start[f]; e < edges.start[f + 1]; e++) {
                int other = edges.partner(e);
                if (other < 0 || edges.from[other] == edges.from[e]) {
                    continue;
                }
                int g = edges.face[other];
                if (region[g] < 0 && joins(seed, g)) {
                    region[g] = seed;
                    queue[size++] = g;
                }
            }
        }
        return size;
    }

    private boolean joins(int seed, int other) {
        double off = planes[seed].deviation(xyz, faces[other][0]);
        double dot = planes[seed].dot(planes[other]);
        boolean rounding = off <= (exactly ? 1 : ROUNDING) * tolerances.point();
        if (planes[other].degenerate()) {
            return rounding;
        }
        return (!exactly && dot >= cosine && off <= WITHIN_ELEMENT * tolerances.plane())
                || (dot >= LEAST_COSINE && rounding);
    }

    private void addMerged(int seed, int[] members, List<int[][]> result) {
        int[] from = new int[edgeCount(members)];
        int[] to = new int[from.length];
        int n = 0;
        for (int f : members) {
            for (int e = edges.start[f]; e < edges.start[f + 1]; e++) {
                int other = edges.partner(e);
                boolean inner = other >= 0 && region[edges.face[other]] == seed && edges.from[other] != edges.from[e];
                if (!inner) {
                    from[n] = edges.from[e];
                    to[n++] = edges.to[e];
                }
            }
        }
        Tracing.Traced traced = Tracing.loops(xyz, planes[seed], Arrays.copyOf(from, n), Arrays.copyOf(to, n));
        List<int[][]> nested = traced.complete() ? Loops.nested(xyz, traced.loops(), planes[seed]) : List.of();
        if (sameArea(members, nested)) {
            result.addAll(nested);
        } else {
            for (int f : members) {
                if (!planes[f].degenerate()) {
                    result.add(faces[f]);
                }
            }
        }
    }

    /** Guards against outlines that overlap themselves: a merge must not gain or lose area. */
    private boolean sameArea(int[] members, List<int[][]> nested) {
        double before = 0;
        for (int f : members) {
            before += FacePlane.area(xyz, faces[f]);
        }
        double after = 0;
        for (int[][] face : nested) {
            after += FacePlane.area(xyz, face);
        }
        return Math.abs(after - before) <= 1e-3 * before;
    }

    private int edgeCount(int[] members) {
        int sum = 0;
        for (int f : members) {
            sum += edges.start[f + 1] - edges.start[f];
        }
        return sum;
    }
}
