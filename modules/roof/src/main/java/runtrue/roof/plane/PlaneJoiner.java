package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneFrame;
import runtrue.roof.skin.PlanarArea;
import runtrue.roof.skin.SkinFace;
import runtrue.shape.Tolerances;

/** Joins faces that lie in one plane and touch, or nearly touch: across joints, elements and files. */
final class PlaneJoiner {
    private final Tolerances tolerances;

    PlaneJoiner(Tolerances tolerances) {
        this.tolerances = tolerances;
    }

    /** Planes in an order that depends on the faces' geometry alone. */
    List<JoinedPlane> join(List<SkinFace> faces) {
        List<JoinedPlane> planes = new ArrayList<>();
        for (List<SkinFace> coplanar : coplanar(faces)) {
            planes.addAll(joined(coplanar));
        }
        return planes;
    }

    private List<List<SkinFace>> coplanar(List<SkinFace> faces) {
        List<SkinFace> byArea = new ArrayList<>(faces);
        byArea.sort(Comparator.comparingDouble((SkinFace f) -> -roundedArea(f))
                .thenComparing(f -> f.source().element().file())
                .thenComparingInt(f -> f.source().element().stepId())
                .thenComparingDouble(f -> f.outline().get(0).getX())
                .thenComparingDouble(f -> f.outline().get(0).getY())
                .thenComparingDouble(f -> f.outline().get(0).getZ()));
        List<List<SkinFace>> groups = new ArrayList<>();
        for (SkinFace face : byArea) {
            groups.stream()
                    .filter(g -> isCoplanar(g.get(0), face))
                    .findFirst()
                    .ifPresentOrElse(g -> g.add(face), () -> groups.add(new ArrayList<>(List.of(face))));
        }
        return groups;
    }

    /** To the square millimetre, so that equal faces tie whatever the rounding of their coordinates. */
    private static double roundedArea(SkinFace face) {
        return Math.rint(PlanarArea.vector(face.outline()).norm() * 1e6);
    }

    private boolean isCoplanar(SkinFace main, SkinFace other) {
        if (main.normal().dot(other.normal()) < Math.cos(tolerances.angle())) {
            return false;
        }
        Vector3D point = main.outline().get(0);
        for (Vector3D p : other.outline()) {
            if (Math.abs(p.subtract(point).dot(main.normal())) > tolerances.plane()) {
                return false;
            }
        }
        return true;
    }

    private List<JoinedPlane> joined(List<SkinFace> coplanar) {
        SkinFace main = coplanar.get(0);
        PlaneFrame frame = PlaneFrames.of(main.normal(), main.outline().get(0), tolerances.angle(), main.outline());
        List<Polygon> polygons =
                coplanar.stream().map(f -> Outlines.polygon(f, frame)).toList();
        List<JoinedPlane> planes = new ArrayList<>();
        for (Polygon outline : Outlines.join(polygons, tolerances.joint())) {
            List<SkinFace> own = IntStream.range(0, coplanar.size())
                    .filter(i -> isOf(outline, polygons.get(i)))
                    .mapToObj(coplanar::get)
                    .toList();
            if (outline.getArea() > tolerances.sliver() && !own.isEmpty()) {
                planes.add(new JoinedPlane(frame, outline, own));
            }
        }
        return planes;
    }

    /** Whether a face is a part of a plane, or a plane a part of it: a slab cut through by another gives two planes. */
    private boolean isOf(Polygon plane, Polygon face) {
        return plane.isWithinDistance(face.getInteriorPoint(), tolerances.joint())
                || face.isWithinDistance(plane.getInteriorPoint(), tolerances.point());
    }
}
