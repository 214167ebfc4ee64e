package runtrue.rules.units;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every unit that a rule set, roof system or settings file may be written in, with its spellings. */
@SuppressWarnings("ImmutableEnumChecker") // records and List.of are immutable, but carry no annotation
public enum Unit {
    MILLIMETRE("mm", 1e-3, Dimension.LENGTH, 1),
    CENTIMETRE("cm", 1e-2, Dimension.LENGTH, 2),
    METRE("m", 1, Dimension.LENGTH, 3),
    INCH("in", 0.0254, Dimension.LENGTH, 2, "inch"),
    FOOT("ft", 0.3048, Dimension.LENGTH, 3, "foot", "feet"),
    SQUARE_MILLIMETRE("mm2", 1e-6, Dimension.AREA, 0, "mm²"),
    SQUARE_METRE("m2", 1, Dimension.AREA, 2, "m²"),
    SQUARE_FOOT("ft2", 0.3048 * 0.3048, Dimension.AREA, 1, "ft²", "sqft"),
    DEGREE("deg", Math.PI / 180, Dimension.ANGLE, 2, "°", "degree", "degrees"),
    RADIAN("rad", 1, Dimension.ANGLE, 4),
    ONE("1", 1, Dimension.NONE, 3),
    PIECES("pcs", 1, Dimension.NONE, 0),
    PERCENT("%", 0.01, Dimension.NONE, 2),
    PASCAL("Pa", 1, Dimension.PRESSURE, 0),
    KILOPASCAL("kPa", 1e3, Dimension.PRESSURE, 3, "kN/m2", "kN/m²"),
    POUND_PER_SQUARE_FOOT("psf", 4.4482216152605 / (0.3048 * 0.3048), Dimension.PRESSURE, 2),
    NEWTON("N", 1, Dimension.FORCE, 0),
    KILONEWTON("kN", 1e3, Dimension.FORCE, 3),
    POUND_FORCE("lbf", 4.4482216152605, Dimension.FORCE, 1),
    METRE_PER_SECOND("m/s", 1, Dimension.VELOCITY, 1),
    KILOMETRE_PER_HOUR("km/h", 1 / 3.6, Dimension.VELOCITY, 1),
    MILE_PER_HOUR("mph", 0.44704, Dimension.VELOCITY, 1),
    /** Of rain. */
    MILLIMETRE_PER_HOUR("mm/h", 1e-3 / 3600, Dimension.VELOCITY, 0),
    INCH_PER_HOUR("in/h", 0.0254 / 3600, Dimension.VELOCITY, 1),
    LITRE_PER_SECOND("l/s", 1e-3, Dimension.FLOW, 2, "L/s"),
    VOLT("V", 1, Dimension.POTENTIAL, 2),
    KILOGRAM("kg", 1, Dimension.MASS, 2),
    /** Only differences: an absolute temperature has no place in a rule. */
    KELVIN("K", 1, Dimension.TEMPERATURE, 1, "°C", "degC"),
    FAHRENHEIT_DIFFERENCE("°F", 5.0 / 9, Dimension.TEMPERATURE, 1, "degF"),
    PER_KELVIN("1/K", 1, Dimension.NONE.per(Dimension.TEMPERATURE), 7, "/K"),
    KILOGRAM_PER_SQUARE_METRE("kg/m2", 1, Dimension.MASS.per(Dimension.AREA), 2, "kg/m²"),
    KILOGRAM_PER_METRE("kg/m", 1, Dimension.MASS.per(Dimension.LENGTH), 3),
    KILOGRAM_PER_CUBIC_METRE("kg/m3", 1, Dimension.MASS.per(Dimension.AREA).per(Dimension.LENGTH), 0, "kg/m³"),
    PER_SQUARE_METRE("1/m2", 1, Dimension.NONE.per(Dimension.AREA), 2, "/m2", "1/m²");

    private final String symbol;
    private final double inSi;
    private final Dimension dimension;
    private final int decimals;
    private final List<String> aliases;

    Unit(String symbol, double inSi, Dimension dimension, int decimals, String... aliases) {
        this.symbol = symbol;
        this.inSi = inSi;
        this.dimension = dimension;
        this.decimals = decimals;
        this.aliases = List.of(aliases);
    }

    public static Optional<Unit> find(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(text) || unit.aliases.contains(text))
                .findFirst();
    }

    /**
     * The unit of that symbol or alias.
     *
     * @throws IllegalArgumentException with the list of units when there is none
     */
    public static Unit of(String text) {
        return find(text)
                .orElseThrow(
                        () -> new IllegalArgumentException("unknown unit \"" + text + "\"; known units: " + symbols()));
    }

    static String symbols() {
        return Arrays.stream(values()).map(Unit::symbol).collect(Collectors.joining(", "));
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Value in SI of one of this unit. */
    public double inSi() {
        return inSi;
    }

    /** Digits after the point that people expect, at most. */
    int decimals() {
        return decimals;
    }
}
