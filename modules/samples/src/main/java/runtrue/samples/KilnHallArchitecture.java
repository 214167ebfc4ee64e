package runtrue.samples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
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

/** The architect's file of the kiln hall: roofs, rooflights, walls and grid. IFC4, millimetres, degrees. */
final class KilnHallArchitecture {
    private final IfcFile file;
    private final Bodies bodies;
    private final Profiles profiles;
    private final Place building;
    private final Place ground;
    private final Place roofLevel;

    private KilnHallArchitecture() {
        file = new IfcFile(
                "kiln-hall-architecture.ifc",
                Schema.IFC4,
                LengthUnit.MILLIMETRE,
                AngleUnit.DEGREE,
                "Kiln Hall, architecture",
                OptionalDouble.empty());
        bodies = file.bodies();
        profiles = file.profiles();
        building = file.building("Kiln Hall", KilnHall.SITE);
        ground = file.storey(building, "Ground floor", 0);
        roofLevel = file.storey(building, "Roof level", KilnHall.EAVE_LEVEL);
    }

    static String write() {
        KilnHallArchitecture model = new KilnHallArchitecture();
        model.hallRoof();
        model.leanToRoof();
        model.walls();
        model.file.attachments().grid(model.ground, KilnHall.lettered(), KilnHall.numbered());
        return model.file.text();
    }

    private void hallRoof() {
        Place roof = file.element("IFCROOF", "Hall roof")
                .predefinedType("GABLE_ROOF")
                .frame(Frame.at(Vec.Z.times(KilnHall.EAVE_LEVEL)))
                .addTo(roofLevel);
        Place south = slab("Hall roof south", KilnHall.south(), squareBody());
        Place north = slab("Hall roof north", KilnHall.north(), plumbBody());
        file.aggregate(roof, "Hall roof", List.of(south, north));
        file.attachments().statedPitch(List.of(south, north), "Hall roof", KilnHall.PITCH);
        file.attachments().layers(List.of(south, north), "Double skin 160", layers());
        rooflight(south, "Rooflight B-C", 8.5);
        rooflight(south, "Rooflight E-F", 26.5);
    }

    private Place slab(String name, Frame plane, Body body) {
        return file.element("IFCSLAB", name)
                .predefinedType("ROOF")
                .frame(plane)
                .body(body)
                .addAsPart(roofLevel);
    }

    /** Swept square to the plane, up to the skin. */
    private Body squareBody() {
        Frame underside = Frame.at(Vec.Z.times(-KilnHall.BUILD_UP));
        return bodies.extrusion(
                profiles.rectangle(0, 0, KilnHall.LENGTH, KilnHall.run()), underside, KilnHall.BUILD_UP);
    }

    /** Swept plumb, so that it ends plumb at the ridge; drawn half a metre long at the eave and cut back there. */
    private Body plumbBody() {
        double cos = StrictMath.cos(KilnHall.PITCH);
        double sin = StrictMath.sin(KilnHall.PITCH);
        double depth = KilnHall.BUILD_UP / cos;
        Vec plumb = new Vec(0, sin, cos);
        Body body = bodies.extrusion(
                profiles.rectangle(0, -0.5, KilnHall.LENGTH, KilnHall.run()),
                Frame.at(plumb.times(-depth)),
                plumb,
                depth);
        return bodies.cutAbove(body, new Frame(Vec.ZERO, Vec.X, new Vec(0, -cos, sin)));
    }

    private void rooflight(Place slab, String name, double u) {
        Frame under = Frame.at(Vec.Z.times(-KilnHall.BUILD_UP - 0.05));
        Body hole = bodies.extrusion(profiles.rectangle(u, 8.4, u + 1, 9.4), under, KilnHall.BUILD_UP + 0.1);
        Body light =
                bodies.extrusion(profiles.rectangle(u + 0.01, 8.41, u + 0.99, 9.39), Frame.at(Vec.Z.times(-0.1)), 0.08);
        file.attachments().rooflight(slab, name, hole, light, 1, 1);
    }

    /** Its section, cut plumb at both ends, swept level along the eave. */
    private void leanToRoof() {
        Place roof = file.element("IFCROOF", "Lean-to roof")
                .predefinedType("SHED_ROOF")
                .frame(Frame.at(Vec.Z.times(KilnHall.EAVE_LEVEL)))
                .addTo(roofLevel);
        Frame plane = KilnHall.leanTo();
        double plan = KilnHall.LEAN_TO_PLAN;
        double rise = plan * StrictMath.tan(KilnHall.LEAN_TO_PITCH);
        double depth = KilnHall.BUILD_UP / StrictMath.cos(KilnHall.LEAN_TO_PITCH);
        Body body = bodies.extrusion(
                profiles.outline(0, -depth, plan, rise - depth, plan, rise, 0, 0),
                Frame.WORLD,
                KilnHall.LEAN_TO_LENGTH);
        Frame section = new Frame(plane.origin(), Vec.Y.times(-1), plane.x());
        Place slab = slab("Lean-to roof slab", section, body);
        file.aggregate(roof, "Lean-to roof", List.of(slab));
        file.attachments().layers(List.of(slab), "Double skin 160 lean-to", layers());
    }

    private static Map<String, Double> layers() {
        Map<String, Double> layers = new LinkedHashMap<>();
        layers.put("Profiled steel sheet", 0.05);
        layers.put("Mineral wool", 0.1);
        layers.put("Liner sheet", 0.01);
        return layers;
    }

    private void walls() {
        Framing framing = new Framing(file, ground);
        framing.wall("Wall south", 0, -0.15, 36, 0, 5.5);
        framing.wall("Wall north", 0, 24, 36, 24.15, 5.5);
        gable("Wall west", -0.15);
        gable("Wall east", 36);
        framing.wall("Lean-to wall north", 6, 30, 30, 30.15, 3.8);
        framing.wall("Lean-to wall west", 5.85, 24.15, 6, 30.15, 3.8);
        framing.wall("Lean-to wall east", 30, 24.15, 30.15, 30.15, 3.8);
        file.element("IFCSLAB", "Ground slab")
                .predefinedType("BASESLAB")
                .frame(Frame.at(Vec.Z.times(-0.25)))
                .body(bodies.extrusion(profiles.rectangle(0, 0, 36, 30), Frame.WORLD, 0.25))
                .addTo(ground);
    }

    /** A gable wall, its top edges 0.5 m plumb below the skin. */
    private void gable(String name, double x) {
        double low = KilnHall.EAVE_LEVEL + 0.35 * StrictMath.tan(KilnHall.PITCH) - 0.5;
        double high = KilnHall.EAVE_LEVEL + KilnHall.PLAN * StrictMath.tan(KilnHall.PITCH) - 0.5;
        Body body = bodies.extrusion(profiles.outline(0, 0, 24, 0, 24, low, 12, high, 0, low), Frame.WORLD, 0.15);
        file.element("IFCWALL", name)
                .frame(new Frame(new Vec(x, 0, 0), Vec.Y, Vec.X))
                .body(body)
                .addTo(ground);
    }
}
