package runtrue.roof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import runtrue.ifc.Element;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** Invented roofs and members for tests, built from corners. */
final class RoofFixtures {
    private RoofFixtures() {}

    static RoofSettings settings(double coverWidth) {
        return new RoofSettings(
                coverWidth,
                SetOut.LEFT,
                OptionalDouble.empty(),
                0.6,
                Vector3D.ZERO,
                OptionalDouble.empty(),
                Tolerances.standard());
    }

    static Vector3D p(double x, double y, double z) {
        return Vector3D.of(x, y, z);
    }

    /** A slab below a top face whose corners run counter-clockwise seen from above, cut square to it. */
    static ReadElement slab(String id, double thickness, Vector3D... top) {
        List<Vector3D> ring = List.of(top);
        Vector3D normal = normal(ring);
        List<Vector3D> soffit =
                ring.stream().map(c -> c.subtract(normal.multiply(thickness))).toList();
        return element(id, "predefined type ROOF", prism(ring, soffit));
    }

    /** A square bar with its top face centred on the line between two points. */
    static ReadElement bar(String id, double size, Vector3D from, Vector3D to, Vector3D up) {
        Vector3D side = up.cross(to.subtract(from)).normalize().multiply(size / 2);
        Vector3D down = up.normalize().multiply(-size);
        List<Vector3D> end = List.of(
                from.add(side),
                from.subtract(side),
                from.subtract(side).add(down),
                from.add(side).add(down));
        Vector3D path = to.subtract(from);
        return element(
                id, "class only", prism(end.stream().map(c -> c.add(path)).toList(), end));
    }

    static ReadElement element(String id, String evidence, List<Face> faces) {
        Element element = new Element(
                id,
                "hall.ifc",
                id.hashCode() & 0xffff,
                "IfcSlab",
                "",
                "",
                id,
                "",
                "",
                "Hall",
                "Roof",
                "",
                "",
                List.of(),
                List.of(),
                Map.of());
        return new ReadElement(
                element, evidence, new Shape.Body(faces, true, Optional.empty(), "made for a test", List.of()));
    }

    /** The same body of another class. */
    static ReadElement ofClass(String ifcClass, ReadElement e) {
        Element old = e.element();
        Element element = new Element(
                old.globalId(),
                old.file(),
                old.stepId(),
                ifcClass,
                "",
                "",
                old.name(),
                "",
                "",
                "Hall",
                "Roof",
                "",
                "",
                List.of(),
                List.of(),
                Map.of());
        return new ReadElement(element, e.grounds(), e.evidence(), e.body());
    }

    /** One element of the bodies of two. */
    static ReadElement joined(ReadElement a, ReadElement b) {
        List<Face> faces = new ArrayList<>(a.body().faces());
        faces.addAll(b.body().faces());
        return new ReadElement(
                a.element(),
                a.grounds(),
                a.evidence(),
                new Shape.Body(faces, true, Optional.empty(), "made for a test", List.of()));
    }

    static ReadElement moved(ReadElement e, QuaternionRotation turn, Vector3D by) {
        List<Face> faces = e.body().faces().stream()
                .map(f -> new Face(
                        turn.apply(f.normal()),
                        f.outline().stream().map(q -> turn.apply(q).add(by)).toList(),
                        List.of()))
                .toList();
        return new ReadElement(
                e.element(), e.grounds(), e.evidence(), new Shape.Body(faces, true, Optional.empty(), "", List.of()));
    }

    /** As an exporter writes it in feet (rounded to a double each way), or with its left and right exchanged. */
    static List<ReadElement> drawnOtherwise(List<ReadElement> elements, boolean feet, boolean mirrored) {
        return elements.stream()
                .map(e -> {
                    List<Face> faces = new ArrayList<>();
                    for (Face face : e.body().faces()) {
                        List<Vector3D> ring = new ArrayList<>(face.outline().stream()
                                .map(q -> feet ? q.multiply(1 / 0.3048).multiply(0.3048) : q)
                                .map(q -> mirrored ? Vector3D.of(-q.getX(), q.getY(), q.getZ()) : q)
                                .toList());
                        if (mirrored) {
                            Collections.reverse(ring);
                        }
                        faces.add(face(ring));
                    }
                    return new ReadElement(
                            e.element(),
                            e.grounds(),
                            e.evidence(),
                            new Shape.Body(faces, true, Optional.empty(), "", List.of()));
                })
                .toList();
    }

    /** A body between a top and a bottom ring of as many corners, both counter-clockwise seen from above. */
    static List<Face> prism(List<Vector3D> top, List<Vector3D> bottom) {
        List<Face> faces = new ArrayList<>();
        faces.add(face(top));
        List<Vector3D> below = new ArrayList<>(bottom);
        Collections.reverse(below);
        faces.add(face(below));
        for (int i = 0; i < top.size(); i++) {
            int next = (i + 1) % top.size();
            faces.add(face(List.of(top.get(i), bottom.get(i), bottom.get(next), top.get(next))));
        }
        return faces;
    }

    private static Face face(List<Vector3D> ring) {
        return new Face(normal(ring), ring, List.of());
    }

    private static Vector3D normal(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        for (int i = 1; i + 1 < ring.size(); i++) {
            sum = sum.add(
                    ring.get(i).subtract(ring.get(0)).cross(ring.get(i + 1).subtract(ring.get(0))));
        }
        return sum.normalize();
    }

    /** A hip roof over a rectangle with one eaves level and one pitch: south, north, west, east planes. */
    static List<ReadElement> hipRoof(double length, double width, double pitch, double thickness) {
        double rise = Math.tan(pitch) * width / 2;
        Vector3D a = p(0, 0, 0);
        Vector3D b = p(length, 0, 0);
        Vector3D c = p(length, width, 0);
        Vector3D d = p(0, width, 0);
        Vector3D west = p(width / 2, width / 2, rise);
        Vector3D east = p(length - width / 2, width / 2, rise);
        return List.of(
                slab("south", thickness, a, b, east, west),
                slab("north", thickness, c, d, west, east),
                slab("west", thickness, d, a, west),
                slab("east", thickness, b, c, east));
    }
}
