package runtrue.wind;

/** Pressure on a zone by the size of what it loads: small areas see higher peaks. */
@FunctionalInterface
public interface LoadedPressure {
    /** Pressure on a loaded area of so many square metres, above 0. */
    Pressure at(double area);
}
