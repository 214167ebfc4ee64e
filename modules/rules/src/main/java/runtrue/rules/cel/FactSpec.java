package runtrue.rules.cel;

import runtrue.rules.units.Dimension;

/**
 * A fact that rules may use.
 *
 * @param name dotted, for example {@code plane.pitch}
 * @param dimension of numbers; {@link Dimension#NONE} for the others
 * @param about one phrase for people
 */
public record FactSpec(String name, FactType type, Dimension dimension, String about) {
    /** The word before the first dot. */
    String group() {
        return name.substring(0, name.indexOf('.'));
    }
}
