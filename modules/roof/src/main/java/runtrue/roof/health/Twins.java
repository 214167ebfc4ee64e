package runtrue.roof.health;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.flat.Overlays;
import runtrue.roof.read.DropElements;
import runtrue.roof.skin.SkinFace;
import runtrue.roof.skin.SkinReader;
import runtrue.shape.Tolerances;

/** Elements that are modelled twice, and roof elements that lie in each other. */
final class Twins {
    private static final GeometryFactory PLAN = new GeometryFactory();

    private final DropElements elements;
    private final Roof roof;
    private final Lines lines;
    private final Set<String> twins = new HashSet<>();

    private record Boxed(ReadElement element, Extent extent) {}

    Twins(DropElements elements, Roof roof, Lines lines) {
        this.elements = elements;
        this.roof = roof;
        this.lines = lines;
    }

    void check() {
        same();
        for (PlaneLayout layout : roof.planes()) {
            if (layout.plane().elements().size() > 1) {
                overlaps(layout.plane().frame(), layout.plane().elements());
            }
        }
    }

    /** Sorted by their low corner, twins lie next to each other but for those that start as far along x. */
    private void same() {
        double within = HealthLimit.SAME_PLACE.value();
        List<Boxed> all = Stream.concat(elements.roofs().stream(), elements.members().stream())
                .filter(e -> !e.body().faces().isEmpty())
                .map(e -> new Boxed(e, Extent.of(e.body().faces())))
                .sorted(Comparator.comparingDouble(b -> b.extent().low().getX()))
                .toList();
        for (int i = 0; i < all.size(); i++) {
            Boxed one = all.get(i);
            double reach = one.extent().low().getX() + within;
            for (int k = i + 1; k < all.size() && all.get(k).extent().low().getX() <= reach; k++) {
                if (same(one, all.get(k), within)) {
                    twins(one.element(), all.get(k).element());
                }
            }
        }
    }

    private static boolean same(Boxed a, Boxed b, double within) {
        int faces = a.element().body().faces().size();
        return faces == b.element().body().faces().size() && a.extent().same(b.extent(), within);
    }

    private void twins(ReadElement a, ReadElement b) {
        twins.add(pair(a, b));
        add(HealthKind.SAME_GEOMETRY, a, b, "as ");
    }

    private void add(HealthKind kind, ReadElement a, ReadElement b, String how) {
        lines.add(kind, a.element(), how + Names.of(b.element(), a.element().file()));
        lines.add(kind, b.element(), how + Names.of(a.element(), b.element().file()));
    }

    private static String pair(ReadElement a, ReadElement b) {
        String one = a.element().file() + "#" + a.element().stepId();
        String other = b.element().file() + "#" + b.element().stepId();
        return one.compareTo(other) < 0 ? one + "|" + other : other + "|" + one;
    }

    private record Part(ReadElement element, Extent extent, List<Polygon> skin) {}

    /** Within one plane: layers one above the other are two planes, and no overlap. */
    private void overlaps(PlaneFrame frame, List<ReadElement> all) {
        SkinReader skins = new SkinReader(roof.settings().tolerances());
        List<Part> parts = new ArrayList<>();
        for (ReadElement element : all) {
            List<Polygon> skin = skins.read(element).stream()
                    .filter(f -> lies(f, frame))
                    .map(f -> polygon(f, frame))
                    .toList();
            parts.add(new Part(element, Extent.of(element.body().faces()), skin));
        }
        for (int i = 0; i < parts.size(); i++) {
            for (int k = i + 1; k < parts.size(); k++) {
                if (parts.get(i).extent().reaches(parts.get(k).extent())) {
                    overlap(parts.get(i), parts.get(k));
                }
            }
        }
    }

    private void overlap(Part a, Part b) {
        double shared = 0;
        for (Polygon one : a.skin()) {
            for (Polygon other : b.skin()) {
                shared += shared(one, other);
            }
        }
        double smaller = Math.min(area(a.skin()), area(b.skin()));
        boolean much = shared > roof.settings().tolerances().sliver() && shared > HealthLimit.OVERLAP.value() * smaller;
        if (much && !twins.contains(pair(a.element(), b.element()))) {
            add(
                    HealthKind.OVERLAP,
                    a.element(),
                    b.element(),
                    String.format(Locale.ROOT, "%.2f m2 in common with ", shared));
        }
    }

    private static double shared(Polygon a, Polygon b) {
        if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
            return 0;
        }
        Geometry common = Overlays.intersection(a, b);
        return common.getArea();
    }

    private static double area(List<Polygon> skin) {
        return skin.stream().mapToDouble(Polygon::getArea).sum();
    }

    private boolean lies(SkinFace face, PlaneFrame frame) {
        Tolerances tolerances = roof.settings().tolerances();
        return face.normal().dot(frame.normal()) > Math.cos(tolerances.angle())
                && face.outline().stream().allMatch(p -> Math.abs(frame.w(p)) < 2 * tolerances.plane());
    }

    private static Polygon polygon(SkinFace face, PlaneFrame frame) {
        LinearRing[] holes = face.holes().stream().map(h -> ring(h, frame)).toArray(LinearRing[]::new);
        return PLAN.createPolygon(ring(face.outline(), frame), holes);
    }

    private static LinearRing ring(List<Vector3D> points, PlaneFrame frame) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vector3D p = points.get(i % points.size());
            ring[i] = new Coordinate(frame.u(p), frame.v(p));
        }
        return PLAN.createLinearRing(ring);
    }
}
