package runtrue.result;

/** A point in world axes, Z up. */
public record Point(double xMetres, double yMetres, double zMetres) {}
