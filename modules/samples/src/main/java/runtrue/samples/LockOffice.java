package runtrue.samples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import runtrue.samples.Framing.Section;
import runtrue.samples.ifc.AngleUnit;
import runtrue.samples.ifc.Bodies;
import runtrue.samples.ifc.Body;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.LengthUnit;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.StepRef;
import runtrue.samples.ifc.Vec;

/**
 * An L-shaped office under a hipped roof, five in twelve all round: five hips, one valley, two ridges. IFC4X3, metres,
 * radians. Plan, in the building's axes: a wing along x, 24.2 by 10, and one along y, 10 by 22, sharing the corner at 0, 0.
 */
final class LockOffice {
    private static final double SLOPE = 5.0 / 12;
    private static final double PITCH = StrictMath.atan2(5, 12);
    private static final double EAVE_LEVEL = 3;
    private static final double BUILD_UP = 0.12;
    private static final double PURLIN_DEPTH = 0.12;
    private static final double HALF = 5;

    /** How far a purlin stops short of a hip or valley, across the fall. */
    private static final double SHORT = 0.05;

    private static final List<Double> LINES = Framing.positions(0.25, 1.1, 1.35, 1.35, 1.1);

    /**
     * One of the six planes.
     *
     * @param corner left end of the eave looking up the fall
     * @param eave its length
     * @param left 1 where the left edge is a hip, -1 where it is a valley
     * @param right the same of the right edge
     */
    private record Side(String name, Vec corner, Vec uphill, double eave, int left, int right) {
        Frame frame() {
            return Frame.roof(corner, uphill, PITCH);
        }

        /** Corners of the skin, counter-clockwise from above. */
        List<Vec> skin() {
            Vec across = uphill.cross(Vec.Z);
            Vec rise = uphill.times(HALF).plus(Vec.Z.times(HALF * SLOPE));
            Vec topLeft = corner.plus(across.times(left * HALF)).plus(rise);
            Vec topRight = corner.plus(across.times(eave - right * HALF)).plus(rise);
            List<Vec> corners = new ArrayList<>(List.of(corner, corner.plus(across.times(eave)), topRight));
            if (topRight.minus(topLeft).length() > 1e-6) {
                corners.add(topLeft);
            }
            return corners;
        }

        /** Distance across the fall by which a hip has moved inwards at v. */
        static double hip(double v) {
            return v * StrictMath.cos(PITCH);
        }
    }

    private static final List<Side> SIDES = List.of(
            new Side("Roof A south", at(0, 0), Vec.Y, 24.2, 1, 1),
            new Side("Roof B east end", at(24.2, 0), Vec.X.times(-1), 10, 1, 1),
            new Side("Roof C north", at(24.2, 10), Vec.Y.times(-1), 14.2, 1, -1),
            new Side("Roof D east", at(10, 10), Vec.X.times(-1), 12, -1, 1),
            new Side("Roof E north end", at(10, 22), Vec.Y.times(-1), 10, 1, 1),
            new Side("Roof F west", at(0, 22), Vec.X, 22, 1, 1));

    private final IfcFile file;
    private final Place ground;
    private final Place roofLevel;

    private LockOffice() {
        file = new IfcFile(
                "lock-office.ifc",
                Schema.IFC4X3,
                LengthUnit.METRE,
                AngleUnit.RADIAN,
                "Lock Office",
                OptionalDouble.of(StrictMath.toRadians(30)));
        Place building = file.building("Lock Office", Frame.at(new Vec(40, 20, 0)));
        ground = file.storey(building, "Ground floor", 0);
        roofLevel = file.storey(building, "Roof level", EAVE_LEVEL);
    }

    static String write() {
        LockOffice model = new LockOffice();
        model.roof();
        model.purlins();
        model.hipsAndRidges();
        model.walls();
        return model.file.text();
    }

    private static Vec at(double x, double y) {
        return new Vec(x, y, EAVE_LEVEL);
    }

    /** Bodies in turn as a polygonal face set and as a faceted brep, mitred plumb at hips, valley and ridges. */
    private void roof() {
        Place roof = file.element("IFCROOF", "Office roof")
                .predefinedType("HIP_ROOF")
                .frame(Frame.at(Vec.Z.times(EAVE_LEVEL)))
                .addTo(roofLevel);
        Bodies bodies = file.bodies();
        List<Place> slabs = new ArrayList<>();
        for (Side side : SIDES) {
            List<List<Vec>> faces = Bodies.plumbPrism(side.skin(), BUILD_UP / StrictMath.cos(PITCH));
            Body body = slabs.size() % 2 == 0 ? bodies.polygonalFaceSet(faces) : bodies.facetedBrep(faces);
            slabs.add(file.element("IFCSLAB", side.name())
                    .predefinedType("ROOF")
                    .body(body)
                    .addAsPart(roofLevel));
        }
        file.aggregate(roof, "Office roof", slabs);
        file.attachments().statedPitch(slabs, "Office roof", PITCH);
        Map<String, Double> layers = new LinkedHashMap<>();
        layers.put("Profiled steel sheet", 0.04);
        layers.put("Mineral wool", 0.08);
        file.attachments().layers(slabs, "Single skin 120", layers);
    }

    private void purlins() {
        Framing framing = new Framing(file, roofLevel);
        Section hollow = new Section(file.profiles().hollow(PURLIN_DEPTH, 0.06, 0.004), PURLIN_DEPTH, BUILD_UP);
        for (Side side : SIDES) {
            String prefix = "Purlin " + side.name().charAt(5);
            for (int line = 0; line < LINES.size(); line++) {
                double v = LINES.get(line);
                double from = side.left() * Side.hip(v) + SHORT;
                double to = side.eave() - side.right() * Side.hip(v) - SHORT;
                framing.purlin(prefix + (line + 1), side.frame(), hollow, v, from, to);
            }
        }
    }

    private void hipsAndRidges() {
        StepRef section = file.profiles().rectangle(-0.05, -0.2, 0.05, 0);
        Vec west = top(5, 5);
        Vec east = top(19.2, 5);
        Vec north = top(5, 17);
        bar("IFCMEMBER", "Hip 1", "RAFTER", section, at(0, 0), west);
        bar("IFCMEMBER", "Hip 2", "RAFTER", section, at(24.2, 0), east);
        bar("IFCMEMBER", "Hip 3", "RAFTER", section, at(24.2, 10), east);
        bar("IFCMEMBER", "Hip 4", "RAFTER", section, at(10, 22), north);
        bar("IFCMEMBER", "Hip 5", "RAFTER", section, at(0, 22), north);
        bar("IFCMEMBER", "Valley 1", "RAFTER", section, at(10, 10), west);
        bar("IFCBEAM", "Ridge beam 1", "BEAM", section, west, east);
        bar("IFCBEAM", "Ridge beam 2", "BEAM", section, west, north);
    }

    private static Vec top(double x, double y) {
        return new Vec(x, y, EAVE_LEVEL + HALF * SLOPE);
    }

    /** A bar under a line on the skin, low enough for the purlins to pass above it. */
    private void bar(String entity, String name, String type, StepRef section, Vec from, Vec to) {
        Vec along = to.minus(from).unit();
        Vec sectionUp = along.cross(Vec.Z.cross(along).unit());
        Vec start = from.minus(Vec.Z.times((BUILD_UP + PURLIN_DEPTH) / StrictMath.cos(PITCH)));
        double length = to.minus(from).length();
        file.element(entity, name)
                .predefinedType(type)
                .frame(Frame.bar(start, along, sectionUp))
                .body(file.bodies().extrusion(section, Frame.WORLD, length))
                .addTo(roofLevel);
    }

    private void walls() {
        Framing framing = new Framing(file, ground);
        framing.wall("Wall A", 0.4, 0.4, 23.8, 0.7, 2.9);
        framing.wall("Wall B", 23.5, 0.7, 23.8, 9.3, 2.9);
        framing.wall("Wall C", 9.6, 9.3, 23.8, 9.6, 2.9);
        framing.wall("Wall D", 9.3, 9.3, 9.6, 21.6, 2.9);
        framing.wall("Wall E", 0.7, 21.3, 9.3, 21.6, 2.9);
        framing.wall("Wall F", 0.4, 0.7, 0.7, 21.6, 2.9);
    }
}
