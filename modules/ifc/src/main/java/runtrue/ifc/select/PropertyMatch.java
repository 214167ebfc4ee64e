package runtrue.ifc.select;

import java.util.regex.Pattern;

/**
 * A condition on a property.
 *
 * @param property {@code Set.Property}, as in {@link runtrue.ifc.Element#properties()}
 * @param pattern found anywhere in the value's text
 */
public record PropertyMatch(String property, Pattern pattern) {}
