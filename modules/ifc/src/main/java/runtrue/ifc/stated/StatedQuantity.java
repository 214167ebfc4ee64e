package runtrue.ifc.stated;

/**
 * A pitch, area, length or thickness as the model states it.
 *
 * @param meaning which area it is by its name; {@link AreaMeaning#NONE} for other kinds
 * @param source set and property, for example {@code Pset_SlabCommon.PitchAngle}
 * @param value in SI by the unit that the file gives it, or by the file's unit for such values where it gives none
 * @param raw the number as written in the file
 * @param unitStated whether measure and unit assignment (or a unit of its own) give the value its unit
 * @param inherited whether it came from the type object
 */
public record StatedQuantity(
        StatedKind kind,
        AreaMeaning meaning,
        String source,
        double value,
        double raw,
        boolean unitStated,
        boolean inherited) {}
