package runtrue.ifc;

import java.util.OptionalDouble;

/**
 * A property or quantity as the model states it.
 *
 * @param text the value as text, list items joined with {@code "; "}
 * @param number the value in SI units where it is a number and its measure (or its quantity class) tells the unit
 * @param measure measure type or quantity class in upper case, for example {@code IFCPLANEANGLEMEASURE}; empty when none
 * @param inherited whether it came from the type object
 */
public record PropertyValue(String text, OptionalDouble number, String measure, boolean inherited) {}
