package runtrue.result;

/** A geometric tolerance in force, with the reason for its value. */
public record ToleranceInfo(String name, Measure value, String reason) {}
