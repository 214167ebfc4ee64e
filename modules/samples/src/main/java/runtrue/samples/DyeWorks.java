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
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.Vec;

/**
 * Roofs that break the rules which the other samples keep: water, penetrations, metals, fixings, things on the sheets, and
 * curves. IFC4, metres, degrees. A dye house with a copper-clad boiler house that spills on to it; a store below a loft;
 * two barrels and a trough.
 */
final class DyeWorks {
    static final double BUILD_UP = 0.12;
    static final double WIDTH = 12.1;
    static final double STORE_WIDTH = 8;
    private static final double DEPTH = 0.16;
    private static final double PITCH = StrictMath.toRadians(3.4);
    private static final double BOILER_PITCH = StrictMath.toRadians(6);
    private static final double STORE_PITCH = StrictMath.toRadians(5);
    private static final double PLAN = 10;
    private static final double BOILER_PLAN = 12;
    private static final double STORE_PLAN = 4;

    /** How far an upper roof's eave stands out over the roof below. */
    private static final double OVER = 0.2;

    private static final List<Double> LINES = Framing.positions(0.25, 1.5, 1.6, 1.6, 1.6, 1.55, 1.55);
    private static final List<Double> BOILER_LINES = Framing.positions(0.3, 1.5, 1.4, 1.4, 1.4, 1.4, 1.4, 1.4, 1.5);
    private static final List<Double> STORE_LINES = Framing.positions(0.25, 1.95, 1.6);
    private static final List<Double> LOFT_LINES = Framing.positions(0.25, 1.2, 1.2, 1.1);

    /** Of steel, thin and narrow; the others are timber. */
    private static final int STEEL_LINE = 3;

    /** Of two pieces that lap too little. */
    private static final int LAPPED_LINE = 5;

    private final IfcFile file;
    private final Bodies bodies;
    private final Framing framing;
    private final Place storey;
    private final Section timber;

    private final Frame dyeHouse = Frame.roof(new Vec(0, 0, 4), Vec.Y, PITCH);
    private final Frame boilerHouse = Frame.roof(new Vec(0, PLAN - OVER, 6.3), Vec.Y, BOILER_PITCH);
    private final Frame store = Frame.roof(new Vec(30, 0, 3), Vec.Y, STORE_PITCH);
    private final Frame loft = Frame.roof(new Vec(30, STORE_PLAN - OVER, 4.2), Vec.Y, STORE_PITCH);

    private DyeWorks() {
        file = new IfcFile(
                "dye-works.ifc", Schema.IFC4, LengthUnit.METRE, AngleUnit.DEGREE, "Dye Works", OptionalDouble.empty());
        bodies = file.bodies();
        storey = file.storey(file.building("Dye Works", Frame.at(new Vec(300, 40, 0))), "Ground floor", 0);
        framing = new Framing(file, storey);
        timber = new Section(file.profiles().rectangle(-0.04, -DEPTH / 2, 0.04, DEPTH / 2), DEPTH, BUILD_UP);
    }

    static String write() {
        DyeWorks model = new DyeWorks();
        model.dyeHouse();
        model.boilerHouse();
        model.store();
        model.loft();
        model.solarDevices();
        model.upright();
        DyeWorksCurves.add(model.file, model.storey);
        return model.file.text();
    }

    private void dyeHouse() {
        Place slab = slab("Dye house roof", dyeHouse, WIDTH, PLAN / StrictMath.cos(PITCH), "Zinc-coated steel sheet");
        opening(slab, "Hatch", 0.2, 5.3, 1.4, 6.2);
        opening(slab, "Vent", 6.0, 0.6, 6.8, 1.4);
        Section steel = new Section(file.profiles().channel(DEPTH, 0.05, 0.0012, 0.015), DEPTH, BUILD_UP);
        for (int line = 0; line < LINES.size(); line++) {
            String name = "Purlin D" + (line + 1);
            double v = LINES.get(line);
            if (line == STEEL_LINE) {
                file.attachments()
                        .material(List.of(framing.purlin(name, dyeHouse, steel, v, 0, WIDTH)), name, "S350GD+Z275");
            } else if (line == LAPPED_LINE) {
                timber(name + " west", dyeHouse, timber, v - 0.04, 0, 6.2);
                timber(name + " east", dyeHouse, timber, v + 0.04, 5.9, WIDTH);
            } else {
                timber(name, dyeHouse, timber, v, 0, WIDTH);
            }
        }
    }

    private Place slab(String name, Frame plane, double width, double run, String sheet) {
        Body body = bodies.extrusion(
                file.profiles().rectangle(0, 0, width, run), Frame.at(Vec.Z.times(-BUILD_UP)), BUILD_UP);
        Place slab = file.element("IFCSLAB", name)
                .predefinedType("ROOF")
                .frame(plane)
                .body(body)
                .addTo(storey);
        Map<String, Double> layers = new LinkedHashMap<>();
        layers.put(sheet, 0.04);
        layers.put("Mineral wool", 0.08);
        file.attachments().layers(List.of(slab), name, layers);
        return slab;
    }

    /** A hole with nothing in it. */
    private void opening(Place slab, String name, double u0, double v0, double u1, double v1) {
        Frame under = Frame.at(Vec.Z.times(-BUILD_UP - 0.05));
        file.attachments()
                .opening(
                        slab, name, bodies.extrusion(file.profiles().rectangle(u0, v0, u1, v1), under, BUILD_UP + 0.1));
    }

    private Place timber(String name, Frame plane, Section section, double v, double from, double to) {
        Place purlin = framing.purlin(name, plane, section, v, from, to);
        file.attachments().material(List.of(purlin), name, "Timber C24");
        return purlin;
    }

    private void boilerHouse() {
        slab("Boiler house roof", boilerHouse, WIDTH, BOILER_PLAN / StrictMath.cos(BOILER_PITCH), "Copper sheet");
        for (int line = 0; line < BOILER_LINES.size(); line++) {
            timber("Purlin B" + (line + 1), boilerHouse, timber, BOILER_LINES.get(line), 0, WIDTH);
        }
        framing.wall("Boiler house wall", 0, PLAN, WIDTH, PLAN + 0.2, 6);
    }

    /** Its purlins hang 30 mm lower than the stated build-up; its thickness and a purlin's length are stated wrong. */
    private void store() {
        Place slab = slab(
                "Store roof", store, STORE_WIDTH, STORE_PLAN / StrictMath.cos(STORE_PITCH), "Zinc-coated steel sheet");
        file.attachments().statedLength(slab, "Store roof", "Qto_SlabBaseQuantities", "Width", 0.2);
        Section low = new Section(timber.profile(), DEPTH, BUILD_UP + 0.03);
        for (int line = 0; line < STORE_LINES.size(); line++) {
            Place purlin = timber("Purlin S" + (line + 1), store, low, STORE_LINES.get(line), 0, STORE_WIDTH);
            if (line == 0) {
                file.attachments().statedLength(purlin, "Purlin S1", "Qto_MemberBaseQuantities", "Length", 7);
            }
        }
    }

    /** Drawn as a surface, with its sheet's material alone. */
    private void loft() {
        double run = STORE_PLAN / StrictMath.cos(STORE_PITCH);
        List<Vec> skin = List.of(
                loft.origin(), loft.point(STORE_WIDTH, 0, 0), loft.point(STORE_WIDTH, run, 0), loft.point(0, run, 0));
        Place roof = file.element("IFCSLAB", "Loft roof")
                .predefinedType("ROOF")
                .body(bodies.triangulatedFaceSet(List.of(skin)))
                .addTo(storey);
        file.attachments().material(List.of(roof), "Loft roof", "Aluminium-zinc coated steel sheet");
        for (int line = 0; line < LOFT_LINES.size(); line++) {
            timber("Purlin L" + (line + 1), loft, timber, LOFT_LINES.get(line), 0, STORE_WIDTH);
        }
    }

    /** Two panels of 1 by 1.6, clamped 80 mm off the skin. */
    private void solarDevices() {
        solarDevice("Panel 1", 0.5, 2);
        solarDevice("Panel 2", 9, 4);
    }

    private void solarDevice(String name, double u, double v) {
        Body body =
                bodies.extrusion(file.profiles().rectangle(u, v, u + 1, v + 1.6), Frame.at(Vec.Z.times(0.08)), 0.04);
        Place panel = file.element("IFCSOLARDEVICE", name)
                .predefinedType("SOLARPANEL")
                .frame(dyeHouse)
                .body(body)
                .addTo(storey);
        file.attachments().material(List.of(panel), name, "Aluminium frame");
    }

    /** Typed as a roof, but standing upright. */
    private void upright() {
        Body body = bodies.extrusion(file.profiles().rectangle(0, 0, 6, 0.1), Frame.WORLD, 1);
        file.element("IFCSLAB", "Fascia")
                .predefinedType("ROOF")
                .frame(Frame.at(new Vec(30, -3, 3)))
                .body(body)
                .addTo(storey);
    }
}
