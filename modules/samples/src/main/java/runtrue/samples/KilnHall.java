package runtrue.samples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.Vec;

/**
 * Dimensions of the kiln hall, a duo-pitch portal-frame hall with a lean-to on its north side, in the building's axes:
 * x along the ridge from grid A, y from grid 1 to grid 4, metres.
 */
final class KilnHall {
    /** Sheet 50 mm, insulation 100 mm, liner 10 mm. */
    static final double BUILD_UP = 0.16;

    static final double PITCH = StrictMath.toRadians(6);
    static final double LEAN_TO_PITCH = StrictMath.toRadians(1);
    static final double BAY = 6;
    static final double LENGTH = 36.3;
    static final double PLAN = 12.35;
    static final double LEAN_TO_LENGTH = 24.3;
    static final double LEAN_TO_PLAN = 6.2;
    static final double EAVE_LEVEL = 6;
    static final double LEAN_TO_HEAD_LEVEL = 4.5;

    /** The building stands turned on its site, the same in both files. */
    static final Frame SITE = Frame.turned(new Vec(120, 80, 0), StrictMath.toRadians(15));

    /** Positions of the support lines up the fall. */
    static final List<Double> LINES = Framing.positions(0.25, 1.25, 1.35, 1.35, 1.35, 1.35, 1.35, 1.35, 1.35, 1.25);

    static final List<Double> LEAN_TO_LINES = Framing.positions(0.25, 1, 1.25, 1.25, 1.25, 1);

    private KilnHall() {}

    static Frame south() {
        return Frame.roof(new Vec(-0.15, -0.35, EAVE_LEVEL), Vec.Y, PITCH);
    }

    static Frame north() {
        return Frame.roof(new Vec(36.15, 24.35, EAVE_LEVEL), Vec.Y.times(-1), PITCH);
    }

    static Frame leanTo() {
        double eave = LEAN_TO_HEAD_LEVEL - LEAN_TO_PLAN * StrictMath.tan(LEAN_TO_PITCH);
        return Frame.roof(new Vec(30.15, 30.35, eave), Vec.Y.times(-1), LEAN_TO_PITCH);
    }

    static double run() {
        return PLAN / StrictMath.cos(PITCH);
    }

    static Map<String, Double> lettered() {
        Map<String, Double> axes = new LinkedHashMap<>();
        for (int i = 0; i <= 6; i++) {
            axes.put(letter(i), i * BAY);
        }
        return axes;
    }

    static Map<String, Double> numbered() {
        Map<String, Double> axes = new LinkedHashMap<>();
        axes.put("1", 0.0);
        axes.put("2", 12.0);
        axes.put("3", 24.0);
        axes.put("4", 30.0);
        return axes;
    }

    static String letter(int axis) {
        return String.valueOf((char) ('A' + axis));
    }
}
