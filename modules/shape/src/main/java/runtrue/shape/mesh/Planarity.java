package runtrue.shape.mesh;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import runtrue.shape.Tolerances;

/** Sees to it that faces are plane: turns holes against their outline, splits twisted outlines into triangles. */
final class Planarity {
    private final double[] xyz;
    private final Tolerances tolerances;
    private int split;
    private double worst;

    Planarity(double[] xyz, Tolerances tolerances) {
        this.xyz = xyz;
        this.tolerances = tolerances;
    }

    /** Adds the face, or its triangles when its corners leave the mean plane by more than the tolerance. */
    void add(int[][] face, List<int[][]> target) {
        if (face.length == 1 && face[0].length == 3) {
            target.add(face);
            return;
        }
        FacePlane plane = FacePlane.of(xyz, face[0]);
        double off = 0;
        for (int[] loop : face) {
            off = Math.max(off, plane.deviation(xyz, loop));
        }
        if (plane.degenerate() || off <= tolerances.plane()) {
            target.add(face.length == 1 ? face : holesTurned(face, plane));
            return;
        }
        split++;
        worst = Math.max(worst, off);
        target.addAll(Triangles.of(xyz, holesTurned(face, plane), plane));
    }

    void remark(Consumer<String> remarks) {
        if (split > 0) {
            remarks.accept(String.format(
                    Locale.ROOT,
                    "%d faces are not plane (by up to %.1f mm) and were split into triangles",
                    split,
                    1000 * worst));
        }
    }

    private int[][] holesTurned(int[][] face, FacePlane plane) {
        int[][] result = face.clone();
        for (int i = 1; i < face.length; i++) {
            double[] n = FacePlane.doubleArea(xyz, face[i]);
            if (n[0] * plane.nx() + n[1] * plane.ny() + n[2] * plane.nz() > 0) {
                result[i] = Loops.turned(face[i]);
            }
        }
        return result;
    }
}
