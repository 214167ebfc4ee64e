package runtrue.wind;

/** A zone with the pressure on it. */
public record ZonePressure(WindZone zone, LoadedPressure pressure) {}
