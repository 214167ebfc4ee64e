package runtrue.rules.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runtrue.rules.Quantity;

/** Quantities as people write them: {@code 1200 mm}, {@code 2 deg}, {@code 12e-6 1/K}. */
public final class Quantities {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");
    private static final Pattern LITERAL = Pattern.compile("(" + NUMBER.pattern() + ")\\s*(.*)");
    private static final int LEAST_DIGITS = 3;
    private static final int MOST_DECIMALS = 9;

    /** m/s: 3.6 m of rain in an hour. */
    private static final double FASTEST_RAIN = 1e-3;

    private Quantities() {}

    /** A number alone, which is what a person writes who forgot the unit. */
    public static boolean isBareNumber(String text) {
        return NUMBER.matcher(text.strip()).matches();
    }

    /** Whether the text is a number followed by a known unit, and so no expression. */
    public static boolean isLiteral(String text) {
        Matcher matcher = LITERAL.matcher(text.strip());
        return matcher.matches() && Unit.find(matcher.group(4).strip()).isPresent();
    }

    /** Whether the text starts like a quantity (number, blank, word), be its unit known or not. */
    public static boolean looksLikeLiteral(String text) {
        Matcher matcher = LITERAL.matcher(text.strip());
        return matcher.matches() && matcher.group(4).matches("[\\p{L}°%µ][\\p{L}\\d²³/]*");
    }

    /**
     * Reads a quantity.
     *
     * @throws IllegalArgumentException when there is no number, no unit, an unknown unit, or more than a double
     *     holds; the message says which
     */
    public static Quantity parse(String text) {
        Matcher matcher = LITERAL.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no quantity; write a number and a unit, for example 1200 mm");
        }
        String symbol = matcher.group(4).strip();
        if (symbol.isEmpty()) {
            throw new IllegalArgumentException("\"" + text + "\" has no unit; known units: " + Unit.symbols());
        }
        Unit unit = Unit.of(symbol);
        double si = Double.parseDouble(matcher.group(1)) * unit.inSi();
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("\"" + text + "\" is too large");
        }
        return new Quantity(si, unit.symbol());
    }

    /** As {@link #parse(String)}, and refuses other dimensions. */
    public static Quantity parse(String text, Dimension wanted) {
        Quantity quantity = parse(text);
        Dimension got = Unit.of(quantity.unit()).dimension();
        if (!got.equals(wanted)) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is of dimension " + got.label() + "; wanted is " + wanted.label());
        }
        return quantity;
    }

    /** The number in the quantity's own unit. */
    public static double number(Quantity quantity) {
        return quantity.si() / Unit.of(quantity.unit()).inSi();
    }

    /** For people: {@code 1.43 deg}, {@code 2450 mm}; never in exponents, no trailing zeros. */
    public static String text(Quantity quantity) {
        return text(quantity, decimals(quantity));
    }

    /**
     * Both with as many decimals as it takes to see that they differ, so that a value just off its limit is never shown
     * as equal to it.
     */
    public static String text(Quantity quantity, Quantity apartFrom) {
        for (int decimals = decimals(quantity); decimals < MOST_DECIMALS; decimals++) {
            String text = text(quantity, decimals);
            if (!text.equals(text(apartFrom, decimals))) {
                return text;
            }
        }
        return text(quantity);
    }

    private static String text(Quantity quantity, int decimals) {
        String symbol = quantity.unit().equals("1") ? "" : " " + quantity.unit();
        double number = number(quantity);
        if (!Double.isFinite(number)) {
            return number + symbol;
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
        BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return plain.toPlainString() + symbol;
    }

    private static int decimals(Quantity quantity) {
        double size = Math.abs(number(quantity));
        int usual = Unit.of(quantity.unit()).decimals();
        if (size == 0 || !Double.isFinite(size)) {
            return usual;
        }
        int digits = LEAST_DIGITS - 1 - (int) Math.floor(Math.log10(size));
        return Math.min(MOST_DECIMALS, Math.max(usual, digits));
    }

    /** A value of this dimension as people read it; rain and wind are both velocities, but no one takes one for the other. */
    public static String text(double si, Dimension dimension) {
        boolean rain = dimension.equals(Dimension.VELOCITY) && Math.abs(si) < FASTEST_RAIN;
        return text(new Quantity(si, (rain ? Unit.MILLIMETRE_PER_HOUR : usualUnit(dimension)).symbol()));
    }

    /** The unit that people read a value of this dimension in when nothing else is said; the first SI one if none is usual. */
    public static Unit usualUnit(Dimension dimension) {
        if (dimension.equals(Dimension.ANGLE)) {
            return Unit.DEGREE;
        } else if (dimension.equals(Dimension.PRESSURE)) {
            return Unit.KILOPASCAL;
        } else if (dimension.equals(Dimension.FORCE)) {
            return Unit.KILONEWTON;
        } else if (dimension.equals(Dimension.FLOW)) {
            return Unit.LITRE_PER_SECOND;
        }
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension().equals(dimension) && unit.inSi() == 1)
                .findFirst()
                .orElse(Unit.ONE);
    }
}
