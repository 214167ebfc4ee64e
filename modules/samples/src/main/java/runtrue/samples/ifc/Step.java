package runtrue.samples.ifc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Text of attribute values by ISO 10303-21. The same value always gives the same text: reals are rounded to a
 * fixed number of digits and never use an exponent.
 */
final class Step {
    /** An attribute without a value. */
    static final Token UNSET = new Token("$");

    /** An attribute that a subtype derives. */
    static final Token DERIVED = new Token("*");

    /** Digits that survive the way to a double and back; also the most decimals, so that rounding noise is 0. */
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private Step() {}

    /** Text that stands for itself. */
    record Token(String text) {}

    /** A value with its defined type: {@code IFCLABEL('x')}. */
    record Typed(String type, Object value) {}

    static Token enumeration(String name) {
        return new Token("." + name + ".");
    }

    /**
     * Text of one attribute.
     *
     * @throws IllegalArgumentException for a kind of value that has no place in an attribute
     */
    static String text(Object value) {
        if (value instanceof StepRef ref) {
            return ref.toString();
        } else if (value instanceof Token token) {
            return token.text();
        } else if (value instanceof String string) {
            return "'" + encode(string) + "'";
        } else if (value instanceof Double real) {
            return real(real);
        } else if (value instanceof Integer integer) {
            return Integer.toString(integer);
        } else if (value instanceof Boolean bool) {
            return bool ? ".T." : ".F.";
        } else if (value instanceof Typed typed) {
            return typed.type() + "(" + text(typed.value()) + ")";
        } else if (value instanceof List<?> list) {
            return list.stream().map(Step::text).collect(Collectors.joining(",", "(", ")"));
        }
        throw new IllegalArgumentException("no attribute value: " + value.getClass());
    }

    private static String real(double value) {
        BigDecimal rounded = new BigDecimal(value)
                .setScale(DIGITS.getPrecision(), RoundingMode.HALF_EVEN)
                .round(DIGITS)
                .stripTrailingZeros();
        if (rounded.signum() == 0) {
            return "0.";
        }
        String plain = rounded.toPlainString();
        return plain.contains(".") ? plain : plain + ".";
    }

    private static String encode(String string) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < string.length(); i++) {
            char c = string.charAt(i);
            if (c == '\'' || c == '\\') {
                text.append(c).append(c);
            } else if (c >= ' ' && c <= '~') {
                text.append(c);
            } else {
                text.append(String.format(Locale.ROOT, "\\X2\\%04X\\X0\\", (int) c));
            }
        }
        return text.toString();
    }
}
