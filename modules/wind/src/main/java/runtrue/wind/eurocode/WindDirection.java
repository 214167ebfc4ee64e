package runtrue.wind.eurocode;

import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.PlanOutline;

/**
 * The four winds of EN 1991-1-4: 0 blows on the eaves of the main plane and up its fall, each further one comes from a
 * quarter turn more to the left as seen from above. On a flat roof 0 blows along the shorter side.
 */
public enum WindDirection {
    DEGREES_0(0),
    DEGREES_90(90),
    DEGREES_180(180),
    DEGREES_270(270);

    /** Unit vector in plan that the wind blows along. */
    record Vector(double x, double y) {
        Vector left() {
            return new Vector(-y, x);
        }
    }

    private final int degrees;

    WindDirection(int degrees) {
        this.degrees = degrees;
    }

    /** As results name it. */
    public String label() {
        return "wind " + degrees + "°";
    }

    Vector vector(WindRoof roof, PlanOutline outline) {
        WindSlope main = roof.mainSlope();
        double[] axis = outline.shortAxis();
        Vector vector =
                EurocodeZones.level(main) ? new Vector(axis[0], axis[1]) : new Vector(-main.fallX(), -main.fallY());
        for (int i = 0; i < degrees / 90; i++) {
            vector = vector.left();
        }
        return vector;
    }
}
