package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import runtrue.ifc.Element;
import runtrue.ifc.MaterialLayer;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.Penetration;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.SetOut;
import runtrue.roof.Sheet;
import runtrue.roof.above.Above;
import runtrue.roof.above.Fixture;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/**
 * Rectangular planes without supports, built by hand: the eave of each runs along x, water runs towards -y.
 *
 * @param pitch degrees
 * @param holes in u, v
 */
record TestPlanes(
        String id, Vector3D corner, double pitch, double width, double run, String material, List<Envelope> holes) {
    static final double COVER = 0.5;
    private static final GeometryFactory PLANE = new GeometryFactory();

    static TestPlanes of(String id, double y, double z, double pitch, double width, double run) {
        return new TestPlanes(id, Vector3D.of(0, y, z), pitch, width, run, "", List.of());
    }

    TestPlanes withHole(double u0, double v0, double u1, double v1) {
        return new TestPlanes(id, corner, pitch, width, run, material, List.of(new Envelope(u0, u1, v0, v1)));
    }

    TestPlanes of(String metal) {
        return new TestPlanes(id, corner, pitch, width, run, metal, holes);
    }

    private PlaneFrame frame() {
        double a = Math.toRadians(pitch);
        return new PlaneFrame(
                corner,
                Vector3D.of(1, 0, 0),
                Vector3D.of(0, Math.cos(a), Math.sin(a)),
                Vector3D.of(0, -Math.sin(a), Math.cos(a)));
    }

    /** The edge between two points of the plane. */
    RoofEdge edge(String name, EdgeKind kind, double u0, double v0, double u1, double v1) {
        Vector3D from = frame().at(u0, v0);
        Vector3D to = frame().at(u1, v1);
        return new RoofEdge(
                name, kind, List.of(id), from, to, from.distance(to), OptionalDouble.empty(), OptionalDouble.empty());
    }

    RoofEdge eave() {
        return edge(id + "/eave", EdgeKind.EAVE, 0, 0, width, 0);
    }

    PlaneLayout layout() {
        double a = Math.toRadians(pitch);
        LinearRing shell = ((Polygon) PLANE.toGeometry(new Envelope(0, width, 0, run))).getExteriorRing();
        List<Polygon> cuts =
                holes.stream().map(h -> (Polygon) PLANE.toGeometry(h)).toList();
        Polygon outline = PLANE.createPolygon(
                shell, cuts.stream().map(Polygon::getExteriorRing).toArray(LinearRing[]::new));
        List<Penetration> penetrations = cuts.stream()
                .map(c -> new Penetration(
                        "",
                        c,
                        c.getEnvelopeInternal().getWidth(),
                        c.getEnvelopeInternal().getHeight(),
                        c.getArea()))
                .toList();
        RoofPlane plane = new RoofPlane(
                id,
                id,
                frame(),
                outline,
                a,
                OptionalDouble.of(Math.PI),
                OptionalDouble.empty(),
                outline.getArea(),
                width * run,
                outline.getArea() * Math.cos(a),
                width * run * Math.cos(a),
                corner.getZ(),
                corner.getZ() + run * Math.sin(a),
                OptionalDouble.of(0.1),
                "",
                "",
                penetrations,
                List.of(element()),
                List.of(),
                Optional.empty());
        return new PlaneLayout(plane, sheets(), List.of(), List.of(), List.of(), List.of());
    }

    private ReadElement element() {
        List<MaterialLayer> layers =
                material.isEmpty() ? List.of() : List.of(new MaterialLayer(material, OptionalDouble.empty()));
        Element slab = element(id + "-slab", "IfcSlab", layers);
        return new ReadElement(slab, "type", new Shape.Body(List.of(), true, Optional.empty(), "Body", List.of()));
    }

    static Element element(String name, String ifcClass, List<MaterialLayer> layers) {
        return new Element(
                name, "roof.ifc", 7, ifcClass, "", "", name, "", "", "", "", "", "", layers, List.of(), Map.of());
    }

    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (double u = 0; u < width - 1e-9; u += COVER) {
            double to = Math.min(width, u + COVER);
            boolean trimmed = to - u < COVER - 1e-9;
            Interval across = new Interval(u, to);
            Interval along = new Interval(0, run);
            sheets.add(new Sheet(sheets.size() + 1, across, along, run, (to - u) * run, trimmed, false, false));
        }
        return sheets;
    }

    static Roof roof(List<TestPlanes> planes, List<RoofEdge> edges, Map<String, Double> walls, Fixture... fixtures) {
        RoofSettings settings = new RoofSettings(
                COVER,
                SetOut.LEFT,
                OptionalDouble.empty(),
                0.5,
                Vector3D.ZERO,
                OptionalDouble.empty(),
                Tolerances.standard());
        return new Roof(
                planes.stream().map(TestPlanes::layout).toList(),
                edges,
                List.of(),
                List.of(),
                settings,
                new Above(walls, List.of(fixtures)));
    }
}
