package runtrue.samples;

import java.util.List;
import java.util.OptionalDouble;
import runtrue.samples.Framing.Section;
import runtrue.samples.ifc.AngleUnit;
import runtrue.samples.ifc.Bodies;
import runtrue.samples.ifc.Body;
import runtrue.samples.ifc.Element;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.LengthUnit;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.Vec;

/**
 * Five sheds in a row, each with something wrong or missing in its data, without a storey. IFC4, metres, degrees. The file
 * is valid in its schema but for the one GlobalId used twice.
 */
final class TallySheds {
    private static final double PITCH = StrictMath.toRadians(5);
    private static final double LENGTH = 10.2;
    private static final double PLAN = 6;
    private static final double BUILD_UP = 0.12;
    private static final double PURLIN_DEPTH = 0.15;
    private static final List<Double> LINES = Framing.positions(0.25, 1.05, 1.15, 1.15, 1.15, 1.05);

    /** Barrel of shed 4: radius of the skin and half the angle it turns through. */
    private static final double RADIUS = 8;

    private static final double HALF_ANGLE = StrictMath.toRadians(22);

    private final IfcFile file;
    private final Bodies bodies;
    private final Place building;

    private TallySheds() {
        file = new IfcFile(
                "tally-sheds.ifc",
                Schema.IFC4,
                LengthUnit.METRE,
                AngleUnit.DEGREE,
                "Tally Sheds",
                OptionalDouble.empty());
        bodies = file.bodies();
        building = file.building("Tally Sheds", Frame.at(new Vec(20, 150, 0)));
    }

    static String write() {
        TallySheds model = new TallySheds();
        model.namedOnly();
        model.formulaForAName();
        model.withoutShape();
        model.barrel();
        model.withoutSupports();
        return model.file.text();
    }

    /** Sheds stand 14 m apart, each 0.4 m higher than the one before. */
    private static Frame plane(int shed) {
        return Frame.roof(new Vec(14 * (shed - 1), 0, 3 + 0.4 * (shed - 1)), Vec.Y, PITCH);
    }

    private static double run() {
        return PLAN / StrictMath.cos(PITCH);
    }

    private static List<List<Vec>> faces() {
        Frame local = Frame.roof(Vec.ZERO, Vec.Y, PITCH);
        List<Vec> skin = List.of(
                local.origin(), local.point(LENGTH, 0, 0), local.point(LENGTH, run(), 0), local.point(0, run(), 0));
        return Bodies.plumbPrism(skin, BUILD_UP / StrictMath.cos(PITCH));
    }

    /** No predefined type; only the name says roof. */
    private void namedOnly() {
        file.element("IFCSLAB", "Roof shed 1")
                .description("Schräges Dach, 5°")
                .frame(Frame.at(plane(1).origin()))
                .body(bodies.facetedBrep(faces()))
                .addTo(building);
        purlins(1, true);
    }

    /** A name that a spreadsheet would run, and a stated pitch that is not the body's. */
    private void formulaForAName() {
        Body body = bodies.extrusion(
                file.profiles().rectangle(0, 0, LENGTH, run()), Frame.at(Vec.Z.times(-BUILD_UP)), BUILD_UP);
        Place slab = file.element("IFCSLAB", "=HYPERLINK(\"http://example.invalid\",\"x\")")
                .predefinedType("ROOF")
                .frame(plane(2))
                .body(body)
                .addTo(building);
        file.attachments().statedPitch(List.of(slab), "Shed 2", StrictMath.toRadians(12));
        purlins(2, false);
    }

    private void withoutShape() {
        file.element("IFCROOF", "Roof shed 3")
                .predefinedType("SHED_ROOF")
                .frame(Frame.at(plane(3).origin()))
                .addTo(building);
    }

    /** A segment of a barrel, as a strip turned about the barrel's axis. */
    private void barrel() {
        double cos = StrictMath.cos(HALF_ANGLE);
        double sin = StrictMath.sin(HALF_ANGLE);
        Vec eave = plane(4).origin();
        Vec axis = eave.plus(new Vec(0, RADIUS * sin, -RADIUS * cos));
        Frame start = new Frame(Vec.ZERO, Vec.X, new Vec(0, -cos, sin));
        Body body = bodies.revolution(
                file.profiles().rectangle(0, RADIUS - BUILD_UP, LENGTH, RADIUS), start, 2 * HALF_ANGLE);
        file.element("IFCSLAB", "Barrel roof shed 4")
                .predefinedType("ROOF")
                .frame(Frame.at(axis))
                .body(body)
                .addTo(building);
    }

    /**
     * No purlins below, and the slab belongs to no storey and no building. Its stated area is the true one times a square
     * foot in square metres, as of a program that converts what is in square metres already.
     */
    private void withoutSupports() {
        Place slab = file.element("IFCSLAB", "Roof shed 5")
                .predefinedType("ROOF")
                .frame(Frame.at(plane(5).origin()))
                .body(bodies.facetedBrep(faces()))
                .addAsPart(building);
        file.attachments().statedGrossArea(slab, "Shed 5", 5.7074);
    }

    private void purlins(int shed, boolean repeatGlobalId) {
        Section channel =
                new Section(file.profiles().channel(PURLIN_DEPTH, 0.06, 0.002, 0.018), PURLIN_DEPTH, BUILD_UP);
        Framing framing = new Framing(file, building);
        for (int line = 0; line < LINES.size(); line++) {
            String name = "Purlin " + shed + "." + (line + 1);
            Element element = framing.purlinElement(name, plane(shed), channel, LINES.get(line), 0, LENGTH);
            if (repeatGlobalId && line == 1) {
                element.withGlobalIdOf("Purlin " + shed + ".1");
            }
            element.addTo(building);
        }
    }
}
