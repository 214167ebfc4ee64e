package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.SetOut;
import runtrue.roof.Sheet;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.SupportEvidence;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.Zone;
import runtrue.roof.ZoneKind;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.TruePlanes;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** One rectangular mono-pitch roof, built by hand: the drop origin is (1000, 2000, 0), the eave runs along x. */
record TestRoofs(
        double pitchDegrees, double width, double run, double cover, List<Double> supports, OptionalDouble thickness) {
    static final GeometryFactory PLAN = new GeometryFactory();

    static TestRoofs gentle() {
        return new TestRoofs(5, 10, 6, 0.5, List.of(0.15, 1.35, 2.95, 4.55, 5.85), OptionalDouble.of(0.18));
    }

    TestRoofs pitched(double degrees) {
        return new TestRoofs(degrees, width, run, cover, supports, thickness);
    }

    TestRoofs running(double metres) {
        return new TestRoofs(pitchDegrees, width, metres, cover, supports, thickness);
    }

    TestRoofs supportedAt(Double... lines) {
        return new TestRoofs(pitchDegrees, width, run, cover, List.of(lines), thickness);
    }

    TestRoofs thick(OptionalDouble metres) {
        return new TestRoofs(pitchDegrees, width, run, cover, supports, metres);
    }

    static Element element(String id, String ifcClass, String name) {
        return new Element(
                id, "roof.ifc", 7, ifcClass, "", "", name, "", "", "", "", "", "", List.of(), List.of(), Map.of());
    }

    Roof roof() {
        double pitch = Math.toRadians(pitchDegrees);
        PlaneFrame frame = new PlaneFrame(
                Vector3D.of(0, 0, 4),
                Vector3D.of(1, 0, 0),
                Vector3D.of(0, Math.cos(pitch), Math.sin(pitch)),
                Vector3D.of(0, -Math.sin(pitch), Math.cos(pitch)));
        Shape.Body nothing = new Shape.Body(List.of(), true, Optional.empty(), "Body", List.of());
        Polygon outline = (Polygon) PLAN.toGeometry(new Envelope(0, width, 0, run));
        double area = width * run;
        RoofPlane plane = new RoofPlane(
                "P-1",
                "south",
                frame,
                outline,
                pitch,
                OptionalDouble.of(Math.PI),
                OptionalDouble.empty(),
                area,
                area,
                area * Math.cos(pitch),
                area * Math.cos(pitch),
                4,
                4 + run * Math.sin(pitch),
                thickness,
                "",
                "",
                List.of(),
                List.of(new ReadElement(element("slab", "IfcSlab", "Roof slab"), "type", nothing)),
                List.of(),
                Optional.empty());
        PlaneLayout layout = new PlaneLayout(plane, sheets(), lines(), List.of(), spans(), bearing(lines()), List.of());
        RoofBody body = new RoofBody(
                "B-1",
                List.of("P-1"),
                PLAN.toGeometry(new Envelope(0, width, 0, run * Math.cos(pitch))),
                Math.min(width, run * Math.cos(pitch)),
                Math.max(width, run * Math.cos(pitch)),
                4,
                plane.ridgeLevel());
        RoofSettings settings = new RoofSettings(
                cover,
                SetOut.LEFT,
                OptionalDouble.empty(),
                0.5,
                Vector3D.of(1000, 2000, 0),
                OptionalDouble.empty(),
                Tolerances.standard());
        return new Roof(List.of(layout), List.of(), List.of(body), List.of(), settings);
    }

    /** At a stated build-up of 180 mm, which is where the supports lie. */
    private static Bearing bearing(List<SupportLine> lines) {
        return lines.isEmpty()
                ? Bearing.unknown()
                : new Bearing(
                        BearingKind.PURLINS,
                        Optional.of(TruePlanes.of(lines, OptionalDouble.of(0.18))),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of());
    }

    /** The same roof resting otherwise. */
    static Roof with(Roof roof, Bearing bearing) {
        PlaneLayout l = roof.planes().get(0);
        PlaneLayout changed =
                new PlaneLayout(l.plane(), l.sheets(), l.supports(), l.stretches(), l.spans(), bearing, l.remarks());
        return new Roof(List.of(changed), roof.edges(), roof.bodies(), roof.unplaced(), roof.settings());
    }

    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        int number = 1;
        for (double u = 0; u < width - 1e-9; u += cover) {
            double to = Math.min(width, u + cover);
            boolean trimmed = to - u < cover - 1e-9;
            sheets.add(new Sheet(
                    number++, new Interval(u, to), new Interval(0, run), run, (to - u) * run, trimmed, false, false));
        }
        return sheets;
    }

    private List<SupportLine> lines() {
        List<SupportLine> lines = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            double v = supports.get(i);
            SupportPiece piece = new SupportPiece(
                    element("purlin" + (i + 1), "IfcMember", "Purlin " + (i + 1)),
                    SupportEvidence.TYPED,
                    0,
                    v,
                    width,
                    v,
                    -0.18,
                    0.06,
                    0.2,
                    OptionalDouble.of(0.0015));
            lines.add(new SupportLine("P-1/L" + (i + 1), i + 1, v, List.of(piece), List.of(new Interval(0, width))));
        }
        return lines;
    }

    private List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        int last = supports.size() - 1;
        if (last < 0) {
            return spans;
        }
        spans.add(span(SpanKind.EAVE_OVERHANG, 0, supports.get(0), "", "P-1/L1"));
        for (int i = 1; i <= last; i++) {
            SpanKind kind = i == 1 || i == last ? SpanKind.END_SPAN : SpanKind.INTERNAL_SPAN;
            spans.add(span(kind, supports.get(i - 1), supports.get(i), "P-1/L" + i, "P-1/L" + (i + 1)));
        }
        spans.add(span(SpanKind.RIDGE_OVERHANG, supports.get(last), run, "P-1/L" + (last + 1), ""));
        return spans;
    }

    private Span span(SpanKind kind, double from, double to, String lower, String upper) {
        return new Span(kind, to - from, to - from, new Interval(0, width), new Interval(from, to), lower, upper);
    }

    /** Zones with a tributary length of choice; their shapes do not matter here. */
    static List<Zone> zones(double width, double tributary) {
        List<Zone> zones = new ArrayList<>();
        for (ZoneKind kind : ZoneKind.values()) {
            zones.add(new Zone("B-1", "P-1", kind, width, 1, PLAN.toGeometry(new Envelope(0, 1, 0, 1)), tributary));
        }
        return zones;
    }
}
