package runtrue.samples;

import java.util.List;
import java.util.OptionalDouble;
import runtrue.samples.Framing.Section;
import runtrue.samples.ifc.AngleUnit;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.LengthUnit;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Profiles;
import runtrue.samples.ifc.Schema;
import runtrue.samples.ifc.StepRef;

/** The engineer's file of the kiln hall: columns, rafters and purlins. IFC2X3, metres, radians. */
final class KilnHallStructure {
    /** Left out on purpose: the fifth line from the south eave, between grids C and D. */
    private static final String MISSING = "Purlin S5 C-D";

    /** Set too low on purpose: the seventh line from the north eave, between grids D and E. */
    private static final String LOW = "Purlin N7 D-E";

    private static final double TOO_LOW = 0.012;

    /** Of a plate laid on the purlins over their joint, where it keeps the sheets off them. */
    private static final double PLATE = 0.008;

    private static final double PURLIN_DEPTH = 0.2;
    private static final double RAFTER_DEPTH = 0.4;
    private static final double LEAN_TO_RAFTER_DEPTH = 0.3;

    private final IfcFile file;
    private final Framing framing;
    private final Profiles profiles;
    private final Place storey;

    private KilnHallStructure() {
        file = new IfcFile(
                "kiln-hall-structure.ifc",
                Schema.IFC2X3,
                LengthUnit.METRE,
                AngleUnit.RADIAN,
                "Kiln Hall, structure",
                OptionalDouble.empty());
        Place building = file.building("Kiln Hall", KilnHall.SITE);
        storey = file.storey(building, "Steel frame", 0);
        framing = new Framing(file, storey);
        profiles = file.profiles();
    }

    static String write() {
        KilnHallStructure model = new KilnHallStructure();
        model.purlins();
        model.rafters();
        model.columns();
        model.splicePlate();
        return model.file.text();
    }

    private void purlins() {
        Section zed = new Section(profiles.zed(PURLIN_DEPTH, 0.065, 0.002), PURLIN_DEPTH, KilnHall.BUILD_UP);
        Section channel =
                new Section(profiles.channel(PURLIN_DEPTH, 0.065, 0.002, 0.02), PURLIN_DEPTH, KilnHall.BUILD_UP);
        lines("S", KilnHall.south(), zed, KilnHall.LINES, 0, 6, KilnHall.LENGTH);
        lines("N", KilnHall.north(), zed, KilnHall.LINES, 0, 6, KilnHall.LENGTH);
        lines("L", KilnHall.leanTo(), channel, KilnHall.LEAN_TO_LINES, 1, 5, KilnHall.LEAN_TO_LENGTH);
    }

    /** One piece a bay; joints of 10 mm on the grid lines, the outer ends flush with the verges. */
    private void lines(
            String prefix, Frame plane, Section section, List<Double> lines, int first, int last, double length) {
        boolean northward = plane.x().x() > 0;
        for (int line = 0; line < lines.size(); line++) {
            for (int bay = first; bay < last; bay++) {
                double west = bay == first ? 0 : 0.15 + (bay - first) * KilnHall.BAY + 0.005;
                double east = bay == last - 1 ? length : 0.15 + (bay - first + 1) * KilnHall.BAY - 0.005;
                String name =
                        "Purlin " + prefix + (line + 1) + " " + KilnHall.letter(bay) + "-" + KilnHall.letter(bay + 1);
                if (!name.equals(MISSING)) {
                    double from = northward ? west : length - east;
                    double to = northward ? east : length - west;
                    double below = section.below() + (name.equals(LOW) ? TOO_LOW : 0);
                    Section hung = new Section(section.profile(), section.depth(), below);
                    framing.purlin(name, plane, hung, lines.get(line), from, to);
                }
            }
        }
    }

    /** Over the joint of the fourth line from the north eave at grid B, 0.2 by 0.06, flat on the flanges. */
    private void splicePlate() {
        Frame north = KilnHall.north();
        double u = KilnHall.LENGTH - (0.15 + KilnHall.BAY);
        Frame own = new Frame(north.point(u, KilnHall.LINES.get(3), -KilnHall.BUILD_UP), north.x(), north.z());
        file.element("IFCPLATE", "Splice plate N4 B")
                .objectType("Splice plate")
                .frame(own)
                .body(file.bodies().extrusion(profiles.rectangle(-0.1, -0.03, 0.1, 0.03), Frame.WORLD, PLATE))
                .addTo(storey);
    }

    private void rafters() {
        double below = KilnHall.BUILD_UP + PURLIN_DEPTH;
        Section main = new Section(profiles.eye(RAFTER_DEPTH, 0.18, 0.009, 0.014), RAFTER_DEPTH, below);
        Section small =
                new Section(profiles.eye(LEAN_TO_RAFTER_DEPTH, 0.15, 0.007, 0.011), LEAN_TO_RAFTER_DEPTH, below);
        double atGrid = 0.35 / StrictMath.cos(KilnHall.PITCH);
        double ridge = KilnHall.run() - 0.05;
        for (int axis = 0; axis <= 6; axis++) {
            String letter = KilnHall.letter(axis);
            double u = 0.15 + axis * KilnHall.BAY;
            framing.rafter("Rafter south " + letter, KilnHall.south(), main, u, atGrid, ridge);
            framing.rafter("Rafter north " + letter, KilnHall.north(), main, KilnHall.LENGTH - u, atGrid, ridge);
            if (axis >= 1 && axis <= 5) {
                double across = 30.15 - axis * KilnHall.BAY;
                framing.rafter("Rafter lean-to " + letter, KilnHall.leanTo(), small, across, 0.35, 6.1);
            }
        }
    }

    private void columns() {
        StepRef main = profiles.eye(0.4, 0.18, 0.01, 0.016);
        StepRef small = profiles.eye(0.2, 0.2, 0.008, 0.012);
        double top = KilnHall.south().point(0, 0.35, -0.36).z();
        double leanToTop = KilnHall.leanTo().point(0, 0.35, -0.66).z();
        for (int axis = 0; axis <= 6; axis++) {
            String letter = KilnHall.letter(axis);
            framing.column("Column " + letter + "1", main, axis * KilnHall.BAY, 0, top);
            framing.column("Column " + letter + "3", main, axis * KilnHall.BAY, 24, top);
            if (axis >= 1 && axis <= 5) {
                framing.column("Column " + letter + "4", small, axis * KilnHall.BAY, 30, leanToTop);
            }
        }
    }
}
