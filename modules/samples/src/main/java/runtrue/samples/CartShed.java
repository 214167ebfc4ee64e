package runtrue.samples;

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
import runtrue.samples.ifc.Profiles;
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.Vec;

/** A mono-pitch shed falling one in twelve to the south. IFC2X3, feet. Everything in it conforms. */
final class CartShed {
    private static final double FOOT = 0.3048;
    private static final double PITCH = StrictMath.atan2(1, 12);
    private static final double LENGTH = 61 * FOOT;
    private static final double PLAN = 25 * FOOT;
    private static final double EAVE_LEVEL = 10 * FOOT;
    private static final double BUILD_UP = 0.5 * FOOT;
    private static final double PURLIN_DEPTH = 8 * FOOT / 12;
    private static final double BAY = 12 * FOOT;

    /** Feet: 0'9", then 3'9", four times 4'0", 3'9". */
    private static final List<Double> LINES = Framing.positions(0.75, 3.75, 4, 4, 4, 4, 3.75);

    private final IfcFile file;
    private final Profiles profiles;
    private final Place storey;
    private final Frame plane;

    private CartShed() {
        file = new IfcFile(
                "cart-shed.ifc", Schema.IFC2X3, LengthUnit.FOOT, AngleUnit.DEGREE, "Cart Shed", OptionalDouble.empty());
        profiles = file.profiles();
        storey = file.storey(file.building("Cart Shed", Frame.at(new Vec(60, 10, 0).times(FOOT))), "Ground floor", 0);
        plane = Frame.roof(new Vec(-0.5 * FOOT, -0.5 * FOOT, EAVE_LEVEL), Vec.Y, PITCH);
    }

    static String write() {
        CartShed model = new CartShed();
        model.roof();
        model.framing();
        model.walls();
        model.grid();
        return model.file.text();
    }

    /** The plan swept plumb and cut off above the skin and below the underside. */
    private void roof() {
        Bodies bodies = file.bodies();
        Body block = bodies.extrusion(profiles.rectangle(0, 0, LENGTH, PLAN), Frame.at(Vec.Z.times(-FOOT)), 4 * FOOT);
        Frame skin = new Frame(Vec.ZERO, plane.x(), plane.z());
        Frame underside = skin.moved(plane.z().times(-BUILD_UP));
        Body body = bodies.cutBelow(bodies.cutAbove(block, skin), underside);
        Place slab = file.element("IFCSLAB", "Shed roof")
                .predefinedType("ROOF")
                .frame(Frame.at(plane.origin()))
                .body(body)
                .addTo(storey);
        file.attachments().statedPitch(List.of(slab), "Shed roof", PITCH);
        Map<String, Double> layers = new LinkedHashMap<>();
        layers.put("Profiled steel sheet", 2 * FOOT / 12);
        layers.put("Mineral wool", 4 * FOOT / 12);
        file.attachments().layers(List.of(slab), "Single skin 6 in", layers);
    }

    private void framing() {
        Framing framing = new Framing(file, storey);
        Section channel = new Section(
                profiles.channel(PURLIN_DEPTH, 2.5 * FOOT / 12, 0.1 * FOOT / 12, 0.75 * FOOT / 12),
                PURLIN_DEPTH,
                BUILD_UP);
        Section eye = new Section(
                profiles.eye(FOOT, 6 * FOOT / 12, 0.3 * FOOT / 12, 0.45 * FOOT / 12), FOOT, BUILD_UP + PURLIN_DEPTH);
        for (int line = 0; line < LINES.size(); line++) {
            double v = LINES.get(line) * FOOT;
            for (int bay = 0; bay < 5; bay++) {
                double from = bay == 0 ? 0 : 0.5 * FOOT + bay * BAY;
                double to = bay == 4 ? LENGTH : 0.5 * FOOT + (bay + 1) * BAY;
                framing.purlin("Purlin " + (line + 1) + "." + (bay + 1), plane, channel, v, from, to);
            }
        }
        double below = (BUILD_UP + PURLIN_DEPTH + FOOT) / StrictMath.cos(PITCH);
        for (int axis = 0; axis <= 5; axis++) {
            double x = axis * BAY;
            framing.rafter("Rafter " + (axis + 1), plane, eye, x + 0.5 * FOOT, 0.5 * FOOT, 24.8 * FOOT);
            framing.column("Column A" + (axis + 1), eye.profile(), x, FOOT, level(FOOT) - below);
            framing.column("Column B" + (axis + 1), eye.profile(), x, 23 * FOOT, level(23 * FOOT) - below);
        }
    }

    /** Level of the skin above the building's y. */
    private static double level(double y) {
        return EAVE_LEVEL + (y + 0.5 * FOOT) / 12;
    }

    private void walls() {
        Framing framing = new Framing(file, storey);
        double thick = 0.5 * FOOT;
        framing.wall("Wall north", 0, 24 * FOOT - thick, 60 * FOOT, 24 * FOOT, 10 * FOOT);
        framing.wall("Wall west", 0, 0, thick, 24 * FOOT - thick, 8 * FOOT);
        framing.wall("Wall east", 60 * FOOT - thick, 0, 60 * FOOT, 24 * FOOT - thick, 8 * FOOT);
    }

    private void grid() {
        Map<String, Double> numbered = new LinkedHashMap<>();
        for (int axis = 0; axis <= 5; axis++) {
            numbered.put(Integer.toString(axis + 1), axis * BAY);
        }
        Map<String, Double> lettered = new LinkedHashMap<>();
        lettered.put("A", 0.0);
        lettered.put("B", 24 * FOOT);
        file.attachments().grid(storey, numbered, lettered);
    }
}
