package runtrue.result;

/** A unit vector in world axes, Z up. */
public record Direction(double x, double y, double z) {}
