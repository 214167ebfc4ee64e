package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;

/** Edges cut into chords, each once, so that the faces on both its sides meet in the same corners. */
final class Edges {
    private static final int DEEPEST = 20;

    private final Fineness fineness;
    private final FaceBudget budget;
    private final ToIntFunction<IfcEntity> corner;
    private final ToIntFunction<Vector3D> newPoint;
    private final Map<Integer, int[]> cut = new HashMap<>();

    /**
     * @param corner numbers a point of the file
     * @param newPoint numbers a place in file units
     */
    Edges(Fineness fineness, FaceBudget budget, ToIntFunction<IfcEntity> corner, ToIntFunction<Vector3D> newPoint) {
        this.fineness = fineness;
        this.budget = budget;
        this.corner = corner;
        this.newPoint = newPoint;
    }

    /** The corners of an IfcEdgeLoop and its chords. */
    int[] loop(IfcEntity loop) {
        List<int[]> runs = new ArrayList<>();
        int size = 0;
        for (IfcEntity edge : loop.refs("EdgeList")) {
            int[] run = run(edge, 0);
            runs.add(run);
            size += run.length;
        }
        int[] result = new int[size];
        int n = 0;
        for (int i = 0; i < runs.size(); i++) {
            int[] run = runs.get(i);
            int next = runs.get((i + 1) % runs.size())[0];
            for (int k = 0; k < run.length; k++) {
                // A run ends where the next one starts; where a file leaves a gap, both corners stay.
                if (k + 1 < run.length || run[k] != next) {
                    result[n++] = run[k];
                }
            }
        }
        return Arrays.copyOf(result, n);
    }

    private int[] run(IfcEntity edge, int depth) {
        if (depth > DEEPEST) {
            throw new ShapeException("The edge " + edge.label() + " refers to itself.");
        }
        if (edge.isA("IfcOrientedEdge")) {
            int[] run = run(edge.ref("EdgeElement"), depth + 1);
            return edge.enumeration("Orientation").equals("F") ? back(run) : run;
        }
        int[] known = cut.get(edge.id());
        if (known == null) {
            known = chords(edge);
            cut.put(edge.id(), known);
        }
        return known;
    }

    private static int[] back(int[] run) {
        int[] result = new int[run.length];
        for (int i = 0; i < run.length; i++) {
            result[i] = run[run.length - 1 - i];
        }
        return result;
    }

    private int[] chords(IfcEntity edge) {
        IfcEntity start = vertex(edge, "EdgeStart");
        IfcEntity end = vertex(edge, "EdgeEnd");
        int from = corner.applyAsInt(start);
        int to = corner.applyAsInt(end);
        if (!edge.has("EdgeGeometry") || edge.ref("EdgeGeometry").isA("IfcLine")) {
            return new int[] {from, to};
        }
        boolean sameSense = !edge.enumeration("SameSense").equals("F");
        List<Vector3D> places = new CurveReader(fineness)
                .between(edge.ref("EdgeGeometry"), place(start), place(end), sameSense)
                .points(fineness);
        budget.take(places.size());
        int[] run = new int[Math.max(2, places.size())];
        run[0] = from;
        for (int i = 1; i + 1 < places.size(); i++) {
            run[i] = newPoint.applyAsInt(places.get(i));
        }
        run[run.length - 1] = to;
        return run;
    }

    private static IfcEntity vertex(IfcEntity edge, String end) {
        IfcEntity vertex = edge.ref(end);
        if (!vertex.has("VertexGeometry")) {
            throw new ShapeException("The corner " + vertex.label() + " of " + edge.label()
                    + " has no point; export this element as a faceted body.");
        }
        return vertex.ref("VertexGeometry");
    }

    private static Vector3D place(IfcEntity point) {
        double[] c = point.reals("Coordinates");
        return Vector3D.of(c[0], c[1], c[2]);
    }
}
