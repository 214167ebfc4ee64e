package runtrue.samples;

import java.util.ArrayList;
import java.util.Arrays;
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
 * A deep store whose south slope is too long for one unlapped sheet, its north slope not. IFC4, metres, degrees. Shapes are
 * mapped: three roof panels and all purlins share one each; the north slope is a triangulated face set.
 */
final class RopeWalk {
    private static final double PITCH = StrictMath.toRadians(2.5);
    private static final double WIDTH = 36;
    private static final double PIECE = 12;
    private static final double SOUTH_PLAN = 75;
    private static final double NORTH_PLAN = 30;
    private static final double EAVE_LEVEL = 6;
    private static final double BUILD_UP = 0.18;
    private static final double PURLIN_DEPTH = 0.2;
    private static final double RAFTER_DEPTH = 0.6;

    private final IfcFile file;
    private final Bodies bodies;
    private final Place ground;
    private final Place roofLevel;
    private final Frame south;
    private final Frame north;

    private RopeWalk() {
        file = new IfcFile(
                "rope-walk.ifc", Schema.IFC4, LengthUnit.METRE, AngleUnit.DEGREE, "Rope Walk", OptionalDouble.empty());
        bodies = file.bodies();
        Place building = file.building("Rope Walk", Frame.at(new Vec(200, 0, 0)));
        ground = file.storey(building, "Ground floor", 0);
        roofLevel = file.storey(building, "Roof level", EAVE_LEVEL);
        double northEave = EAVE_LEVEL + (SOUTH_PLAN - NORTH_PLAN) * StrictMath.tan(PITCH);
        south = Frame.roof(new Vec(0, 0, EAVE_LEVEL), Vec.Y, PITCH);
        north = Frame.roof(new Vec(WIDTH, SOUTH_PLAN + NORTH_PLAN, northEave), Vec.Y.times(-1), PITCH);
    }

    static String write() {
        RopeWalk model = new RopeWalk();
        model.roof();
        model.purlins();
        model.frames();
        model.grid();
        return model.file.text();
    }

    private static double run(double plan) {
        return plan / StrictMath.cos(PITCH);
    }

    private void roof() {
        Place roof = file.element("IFCROOF", "Store roof")
                .predefinedType("GABLE_ROOF")
                .frame(Frame.at(Vec.Z.times(EAVE_LEVEL)))
                .addTo(roofLevel);
        StepRef panel = bodies.map(bodies.extrusion(
                file.profiles().rectangle(0, 0, PIECE, run(SOUTH_PLAN)), Frame.at(Vec.Z.times(-BUILD_UP)), BUILD_UP));
        List<Place> slabs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            slabs.add(slab("Roof south panel " + (i + 1), south, bodies.mapped(panel, Vec.X.times(i * PIECE))));
        }
        file.attachments().type("IFCSLABTYPE", "Roof panel", "ROOF", panel, slabs);
        slabs.add(slab("Roof north", Frame.WORLD, northBody()));
        file.aggregate(roof, "Store roof", slabs);
        file.attachments().statedPitch(slabs, "Store roof", PITCH);
        Map<String, Double> layers = new LinkedHashMap<>();
        layers.put("Profiled steel sheet", 0.05);
        layers.put("Mineral wool", 0.12);
        layers.put("Liner sheet", 0.01);
        file.attachments().layers(slabs, "Double skin 180", layers);
    }

    private Body northBody() {
        double run = run(NORTH_PLAN);
        List<Vec> skin =
                List.of(north.origin(), north.point(WIDTH, 0, 0), north.point(WIDTH, run, 0), north.point(0, run, 0));
        return bodies.triangulatedFaceSet(Bodies.plumbPrism(skin, BUILD_UP / StrictMath.cos(PITCH)));
    }

    private Place slab(String name, Frame frame, Body body) {
        return file.element("IFCSLAB", name)
                .predefinedType("ROOF")
                .frame(frame)
                .body(body)
                .addAsPart(roofLevel);
    }

    private void purlins() {
        Section zed = new Section(file.profiles().zed(PURLIN_DEPTH, 0.065, 0.002), PURLIN_DEPTH, BUILD_UP);
        StepRef map = bodies.map(bodies.extrusion(zed.profile(), Frame.WORLD, PIECE));
        List<Place> purlins = new ArrayList<>();
        purlins.addAll(lines("S", south, zed, map, 48));
        purlins.addAll(lines("N", north, zed, map, 18));
        file.attachments().type("IFCMEMBERTYPE", "Purlin Z200", "PURLIN", map, purlins);
    }

    /** Lines at 0.25 m, after an end span of 1.25 m, so many internal spans of 1.5 m, and an end span of 1.25 m. */
    private List<Place> lines(String prefix, Frame plane, Section section, StepRef map, int internalSpans) {
        double[] steps = new double[internalSpans + 2];
        Arrays.fill(steps, 1.5);
        steps[0] = 1.25;
        steps[internalSpans + 1] = 1.25;
        List<Double> lines = Framing.positions(0.25, steps);
        Framing framing = new Framing(file, roofLevel);
        List<Place> pieces = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            for (int piece = 0; piece < 3; piece++) {
                String name = "Purlin " + prefix + (line + 1) + "." + (piece + 1);
                Body body = bodies.mapped(map, Vec.ZERO);
                pieces.add(framing.purlin(name, plane, section, lines.get(line), piece * PIECE, body)
                        .addTo(roofLevel));
            }
        }
        return pieces;
    }

    private void frames() {
        Framing framing = new Framing(file, ground);
        double below = BUILD_UP + PURLIN_DEPTH;
        Section rafter = new Section(file.profiles().eye(RAFTER_DEPTH, 0.22, 0.012, 0.019), RAFTER_DEPTH, below);
        for (int axis = 0; axis <= 3; axis++) {
            String letter = KilnHall.letter(axis);
            double x = axis * PIECE;
            framing.rafter("Rafter south " + letter, south, rafter, x, 0.3, 74.9);
            framing.rafter("Rafter north " + letter, north, rafter, WIDTH - x, 0.3, 29.9);
            for (int row = 0; row < 6; row++) {
                double y = 1 + row * 14.6;
                double top = south.point(0, y / StrictMath.cos(PITCH), -below - RAFTER_DEPTH)
                        .z();
                framing.column("Column " + letter + (row + 1), rafter.profile(), x, y, top);
            }
            double top = north.point(0, 1, -below - RAFTER_DEPTH).z();
            framing.column("Column " + letter + "7", rafter.profile(), x, 104, top);
        }
    }

    private void grid() {
        Map<String, Double> lettered = new LinkedHashMap<>();
        for (int axis = 0; axis <= 3; axis++) {
            lettered.put(KilnHall.letter(axis), axis * PIECE);
        }
        Map<String, Double> numbered = new LinkedHashMap<>();
        for (int row = 0; row < 6; row++) {
            numbered.put(Integer.toString(row + 1), 1 + row * 14.6);
        }
        numbered.put("7", 104.0);
        file.attachments().grid(ground, lettered, numbered);
    }
}
