package runtrue.ifc.internal;

/** SI value = value times factor, plus offset (which only temperatures have). */
record UnitFactor(double factor, double offset) {
    static final UnitFactor ONE = new UnitFactor(1, 0);

    double toSi(double value) {
        return value * factor + offset;
    }
}
