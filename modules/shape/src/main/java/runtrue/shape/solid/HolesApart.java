package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.ifc.IfcEntity;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Flat;

/**
 * Faces with a hole that stand in two. Files are known to split a plane face with a hole in two faces that name the same
 * plane: one with an outer bound, one whose only bounds are inner ones, run backwards; either may be the one around the
 * other.
 */
final class HolesApart {
    private record Hole(int plane, List<int[]> loops) {}

    private final Map<Integer, List<Integer>> outlined = new HashMap<>();
    private final List<Hole> holes = new ArrayList<>();

    static boolean isHole(IfcEntity face) {
        List<IfcEntity> bounds = face.refs("Bounds");
        return face.has("FaceSurface")
                && bounds.stream()
                        .allMatch(bound -> !bound.isA("IfcFaceOuterBound")
                                && bound.enumeration("Orientation").equals("F"));
    }

    /** Notes a face on a plane that holes may belong to. */
    void outline(IfcEntity face, int number) {
        if (face.has("FaceSurface")) {
            outlined.computeIfAbsent(face.ref("FaceSurface").id(), id -> new ArrayList<>(1))
                    .add(number);
        }
    }

    void hole(IfcEntity face, List<int[]> loops) {
        holes.add(new Hole(face.ref("FaceSurface").id(), loops));
    }

    /** Makes one face of each two; a hole that has no other half becomes a face. */
    void join(double[] xyz, List<int[][]> faces) {
        for (Hole hole : holes) {
            int around = -1;
            for (int number : outlined.getOrDefault(hole.plane(), List.of())) {
                int[] outline = faces.get(number)[0];
                int[] loop = hole.loops().get(0);
                if (holds(xyz, outline, loop) || holds(xyz, loop, outline)) {
                    around = number;
                }
            }
            if (around < 0) {
                faces.add(hole.loops().toArray(new int[0][]));
                continue;
            }
            List<int[]> loops = new ArrayList<>(List.of(faces.get(around)));
            loops.addAll(hole.loops());
            loops.sort(Comparator.comparingDouble(loop -> -FacePlane.area(xyz, new int[][] {loop})));
            faces.set(around, loops.toArray(new int[0][]));
        }
        holes.clear();
        outlined.clear();
    }

    private static boolean holds(double[] xyz, int[] outline, int[] loop) {
        Flat flat = Flat.along(FacePlane.of(xyz, outline));
        for (int p : loop) {
            if (!flat.within(xyz, outline, flat.u(xyz, p), flat.v(xyz, p))) {
                return false;
            }
        }
        return true;
    }
}
