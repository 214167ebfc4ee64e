package runtrue.samples.ifc;

/** Length unit of a file. Areas and volumes go with it, except that millimetre files use square and cubic metres. */
public enum LengthUnit {
    METRE(1),
    MILLIMETRE(0.001),
    /** International foot, 0.3048 m exactly. */
    FOOT(0.3048);

    private final double metres;

    LengthUnit(double metres) {
        this.metres = metres;
    }

    /** Metres to this unit, rounded to a millionth of a millimetre so that sums of metres give plain figures. */
    double of(double lengthMetres) {
        double scaled = lengthMetres / metres;
        return Math.rint(scaled * 1e9) / 1e9;
    }

    double metres() {
        return metres;
    }
}
