package runtrue.ifc;

import java.util.OptionalDouble;

/** One layer of a material layer set, or a plain material without thickness. Thickness in metres. */
public record MaterialLayer(String material, OptionalDouble thickness) {}
