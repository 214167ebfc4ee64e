package runtrue.samples;

import runtrue.samples.ifc.Body;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Vec;

/** Curved roofs of the dye works, 6 long, without purlins: one curved too tightly, one too flat, one hollow. */
final class DyeWorksCurves {
    private static final double LENGTH = 6;

    private DyeWorksCurves() {}

    static void add(IfcFile file, Place storey) {
        barrel(file, storey, "Tight barrel", new Vec(50, 0, 3), 8, StrictMath.toRadians(22));
        barrel(file, storey, "Flat barrel", new Vec(60, 0, 3), 60, StrictMath.toRadians(2.5));
        trough(file, storey, "Trough", new Vec(70, 0, 3), 60, StrictMath.toRadians(2.5));
    }

    /** A strip turned about an axis below it; the skin is its outside. */
    private static void barrel(IfcFile file, Place storey, String name, Vec eave, double radius, double half) {
        double cos = StrictMath.cos(half);
        double sin = StrictMath.sin(half);
        Frame start = new Frame(Vec.ZERO, Vec.X, new Vec(0, -cos, sin));
        Body body = file.bodies()
                .revolution(file.profiles().rectangle(0, radius - DyeWorks.BUILD_UP, LENGTH, radius), start, 2 * half);
        add(file, storey, name, eave.plus(new Vec(0, radius * sin, -radius * cos)), body);
    }

    /** A strip turned about an axis above it; the skin is its inside. */
    private static void trough(IfcFile file, Place storey, String name, Vec edge, double radius, double half) {
        double cos = StrictMath.cos(half);
        double sin = StrictMath.sin(half);
        Frame start = new Frame(Vec.ZERO, Vec.X, new Vec(0, cos, -sin));
        Body body = file.bodies()
                .revolution(file.profiles().rectangle(0, radius, LENGTH, radius + DyeWorks.BUILD_UP), start, 2 * half);
        add(file, storey, name, edge.plus(new Vec(0, radius * sin, radius * cos)), body);
    }

    private static void add(IfcFile file, Place storey, String name, Vec axis, Body body) {
        file.element("IFCSLAB", name)
                .predefinedType("ROOF")
                .frame(Frame.at(axis))
                .body(body)
                .addTo(storey);
    }
}
