package runtrue.samples;

import java.util.ArrayList;
import java.util.List;
import runtrue.samples.ifc.Body;
import runtrue.samples.ifc.Element;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.StepRef;
import runtrue.samples.ifc.Vec;

/** Members under a roof plane, placed so that their top faces lie in the underside of its build-up. */
final class Framing {
    private final IfcFile file;
    private final Place place;

    Framing(IfcFile file, Place place) {
        this.file = file;
        this.place = place;
    }

    /**
     * A section and how it hangs.
     *
     * @param depth of the section, metres
     * @param below distance of its top under the skin, square to the plane, metres
     */
    record Section(StepRef profile, double depth, double below) {}

    /**
     * A member across the fall.
     *
     * @param v distance of the section's centre from the plane's origin up the fall
     * @param from lesser end across the fall
     */
    Place purlin(String name, Frame plane, Section section, double v, double from, double to) {
        return purlinElement(name, plane, section, v, from, to).addTo(place);
    }

    /** The same, not yet added. */
    Element purlinElement(String name, Frame plane, Section section, double v, double from, double to) {
        Body body = file.bodies().extrusion(section.profile(), Frame.WORLD, to - from);
        return purlin(name, plane, section, v, from, body);
    }

    /** The same with a body that lies along its own z from 0, not yet added. */
    Element purlin(String name, Frame plane, Section section, double v, double from, Body body) {
        Frame own = Frame.bar(plane.point(from, v, -section.below() - section.depth() / 2), plane.x(), plane.z());
        return file.element("IFCMEMBER", name)
                .objectType("Purlin")
                .predefinedType("PURLIN")
                .frame(own)
                .body(body);
    }

    /** A member up the fall. */
    void rafter(String name, Frame plane, Section section, double u, double from, double to) {
        Frame own = Frame.bar(plane.point(u, from, -section.below() - section.depth() / 2), plane.y(), plane.z());
        file.element("IFCBEAM", name)
                .objectType("Rafter")
                .predefinedType("BEAM")
                .frame(own)
                .body(file.bodies().extrusion(section.profile(), Frame.WORLD, to - from))
                .addTo(place);
    }

    /** An upright from level 0 to just under a rafter. */
    void column(String name, StepRef profile, double x, double y, double top) {
        file.element("IFCCOLUMN", name)
                .objectType("Column")
                .predefinedType("COLUMN")
                .frame(Frame.at(new Vec(x, y, 0)))
                .body(file.bodies().extrusion(profile, Frame.WORLD, top))
                .addTo(place);
    }

    /** A wall as an upright block between two corners. */
    void wall(String name, double x0, double y0, double x1, double y1, double top) {
        file.element("IFCWALL", name)
                .body(file.bodies().extrusion(file.profiles().rectangle(x0, y0, x1, y1), Frame.WORLD, top))
                .addTo(place);
    }

    /** Running sum: the first value, then each step added to the one before. */
    static List<Double> positions(double first, double... steps) {
        List<Double> positions = new ArrayList<>(List.of(first));
        double at = first;
        for (double step : steps) {
            at += step;
            positions.add(Math.rint(at * 1e6) / 1e6);
        }
        return List.copyOf(positions);
    }
}
