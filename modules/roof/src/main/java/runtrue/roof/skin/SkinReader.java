package runtrue.roof.skin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Face;
import runtrue.shape.Tolerances;

/**
 * The upper skin of one element: its upward faces, without the cut edges of a thick slab that also look upward, and
 * without faces that lie under another face of the same element.
 */
public final class SkinReader {
    /** Steeper than this is a wall to a roofer: 87 degrees. */
    private static final double LEAST_UP = Math.cos(RoofTolerance.STEEPEST_ROOF.si());

    /** A cut edge is as wide as the slab is thick, or wider where it is cut askew: up to half as much again. */
    private static final double SKEW_CUT = RoofTolerance.SKEW_CUT.si();

    /** Surfaces both of this many times the larger face are both roof, and the faces are compared by themselves. */
    private static final double CLEARLY = 10;

    private final Tolerances tolerances;

    public SkinReader(Tolerances tolerances) {
        this.tolerances = tolerances;
    }

    /** Faces of the element that sheets could lie on; empty when none looks upward. */
    public List<SkinFace> read(ReadElement element) {
        return read(List.of(element)).get(0);
    }

    /**
     * The same of each element, in their order. Elements that go on from each other help to tell which face of a thick and
     * narrow one is its top.
     */
    public List<List<SkinFace>> read(List<ReadElement> elements) {
        List<Optional<SkinFace>> ribbed = elements.stream()
                .map(e -> RibbedSheet.skin(e, tolerances.angle()))
                .toList();
        List<List<SkinFace>> upward = IntStream.range(0, elements.size())
                .mapToObj(i -> ribbed.get(i).map(List::of).orElseGet(() -> upward(elements.get(i))))
                .toList();
        SmoothSurfaces surfaces =
                new SmoothSurfaces(upward.stream().flatMap(List::stream).toList(), tolerances);
        return IntStream.range(0, elements.size())
                .mapToObj(i -> ribbed.get(i).isPresent()
                        ? upward.get(i)
                        : HiddenFaces.removeFrom(withoutCutEdges(upward.get(i), surfaces), tolerances))
                .toList();
    }

    private List<SkinFace> upward(ReadElement element) {
        boolean closed = element.body().closed();
        List<Face> up = new ArrayList<>();
        List<Face> down = new ArrayList<>();
        for (Face face : element.body().faces()) {
            if (face.normal().getZ() > LEAST_UP) {
                up.add(face);
            } else if (face.normal().getZ() < -LEAST_UP) {
                down.add(face);
                if (!closed) {
                    up.add(turned(face));
                }
            }
        }
        String remark = closed ? "" : "surface or body that is not closed: its upper side was taken as the roof";
        return up.stream()
                .map(face -> new SkinFace(
                        element,
                        face.normal(),
                        face.outline(),
                        face.holes(),
                        closed ? thickness(face, down) : OptionalDouble.empty(),
                        remark))
                .toList();
    }

    private static Face turned(Face face) {
        return new Face(
                face.normal().negate(),
                reversed(face.outline()),
                face.holes().stream().map(SkinReader::reversed).toList());
    }

    private static List<Vector3D> reversed(List<Vector3D> ring) {
        List<Vector3D> copy = new ArrayList<>(ring);
        Collections.reverse(copy);
        return copy;
    }

    /** Least distance to a parallel downward face that lies below some part of this one. */
    private OptionalDouble thickness(Face face, List<Face> down) {
        double cosine = Math.cos(tolerances.angle());
        Vector3D middle = mean(face.outline());
        double least = Double.POSITIVE_INFINITY;
        for (Face other : down) {
            double distance = middle.subtract(other.outline().get(0)).dot(face.normal());
            if (-other.normal().dot(face.normal()) > cosine && distance > tolerances.point() && overlap(face, other)) {
                least = Math.min(least, distance);
            }
        }
        return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    /** Whether the extents of two parallel faces overlap, seen square to them; exact enough to tell a slab's soffit. */
    private static boolean overlap(Face a, Face b) {
        Vector3D across = a.normal().orthogonal();
        Vector3D up = a.normal().cross(across);
        return overlap(a.outline(), b.outline(), across) && overlap(a.outline(), b.outline(), up);
    }

    private static boolean overlap(List<Vector3D> a, List<Vector3D> b, Vector3D axis) {
        return low(a, axis) < high(b, axis) && low(b, axis) < high(a, axis);
    }

    private static double low(List<Vector3D> ring, Vector3D axis) {
        return ring.stream().mapToDouble(p -> p.dot(axis)).min().orElseThrow();
    }

    private static double high(List<Vector3D> ring, Vector3D axis) {
        return ring.stream().mapToDouble(p -> p.dot(axis)).max().orElseThrow();
    }

    private static Vector3D mean(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        for (Vector3D p : ring) {
            sum = sum.add(p);
        }
        return sum.multiply(1.0 / ring.size());
    }

    private List<SkinFace> withoutCutEdges(List<SkinFace> faces, SmoothSurfaces surfaces) {
        return faces.stream()
                .filter(f -> faces.stream().noneMatch(main -> isCutEdge(f, main, surfaces)))
                .toList();
    }

    /** Whether a face is the sawn or folded end of the slab that the main face is the top of. */
    private boolean isCutEdge(SkinFace face, SkinFace main, SmoothSurfaces surfaces) {
        if (main.thickness().isEmpty() || Math.abs(face.normal().dot(main.normal())) > 0.5) {
            return false;
        }
        double thickness = main.thickness().getAsDouble();
        return PlanarArea.width(face.outline(), face.normal()) <= SKEW_CUT * thickness + tolerances.plane()
                && touch(face, main)
                && isLess(face, main, surfaces);
    }

    /** Whether a face, with what it goes on into, is smaller than another with what that goes on into. */
    private static boolean isLess(SkinFace face, SkinFace other, SmoothSurfaces surfaces) {
        double area = PlanarArea.vector(face.outline()).norm();
        double otherArea = PlanarArea.vector(other.outline()).norm();
        double enough = CLEARLY * Math.max(area, otherArea);
        double surface = surfaces.area(face, enough);
        double otherSurface = surfaces.area(other, enough);
        boolean told = surface < enough || otherSurface < enough;
        return told ? surface < otherSurface : area < otherArea;
    }

    /** Whether two corners of the face lie in the main face's plane: it hangs on one of its edges. */
    private boolean touch(SkinFace face, SkinFace main) {
        long on = face.outline().stream()
                .filter(p -> Math.abs(p.subtract(main.outline().get(0)).dot(main.normal())) < tolerances.plane())
                .count();
        return on >= 2;
    }
}
