package runtrue.samples.ifc;

/** Plane angle unit of a file. */
public enum AngleUnit {
    RADIAN,
    DEGREE;

    /** Radians to this unit. */
    double of(double radians) {
        return this == RADIAN ? radians : Math.rint(StrictMath.toDegrees(radians) * 1e9) / 1e9;
    }
}
