package runtrue.step.internal;

import java.nio.charset.StandardCharsets;

/**
 * Numbers as ISO 10303-21 writes them, and as programs write them: the point may be missing before an exponent, and
 * digits may be missing on one side of the point.
 */
final class NumberText {
    private static final int EXACT_DIGITS = 18;
    private static final long EXACT_MANTISSA = 1L << 53;
    /** Powers of ten that a double holds exactly. */
    private static final double[] TENS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private NumberText() {}

    static boolean mayBegin(byte b) {
        return (b >= '0' && b <= '9') || b == '-' || b == '+' || b == '.';
    }

    /** Whether a byte may belong to a number; letters are taken in so that a wrong number is shown whole. */
    static boolean mayHold(byte b) {
        return mayBegin(b) || Statements.isNameByte(b) || b == '#';
    }

    static boolean isReal(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] == '.' || bytes[i] == 'E' || bytes[i] == 'e') {
                return true;
            }
        }
        return false;
    }

    static long whole(byte[] bytes, int from, int to) {
        return Long.parseLong(new String(bytes, from, to - from, StandardCharsets.ISO_8859_1));
    }

    /**
     * The double nearest to the decimal number; infinite when it is too large.
     *
     * <p>Up to 18 digits whose value is below 2^53, scaled by a power of ten up to 22, need one exact multiplication or
     * division (Clinger 1990, from memory); the rest is left to {@link Double#parseDouble}.
     *
     * @throws NumberFormatException when the text is anything else
     */
    static double real(byte[] bytes, int from, int to) {
        int p = from;
        boolean minus = p < to && bytes[p] == '-';
        if (p < to && (minus || bytes[p] == '+')) {
            p++;
        }
        long mantissa = 0;
        int digits = 0;
        int scale = 0;
        boolean point = false;
        for (; p < to; p++) {
            byte b = bytes[p];
            if (b >= '0' && b <= '9') {
                mantissa = digits < EXACT_DIGITS ? mantissa * 10 + b - '0' : mantissa;
                digits++;
                scale -= point ? 1 : 0;
            } else if (b == '.' && !point) {
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            throw new NumberFormatException();
        }
        int exponent = p < to ? exponent(bytes, p, to) : 0;
        int power = scale + exponent;
        if (digits > EXACT_DIGITS || mantissa > EXACT_MANTISSA || power < -22 || power > 22) {
            return Double.parseDouble(new String(bytes, from, to - from, StandardCharsets.ISO_8859_1));
        }
        double size = power < 0 ? mantissa / TENS[-power] : mantissa * TENS[power];
        return minus ? -size : size;
    }

    private static int exponent(byte[] bytes, int at, int to) {
        if (bytes[at] != 'E' && bytes[at] != 'e') {
            throw new NumberFormatException();
        }
        int p = at + 1;
        boolean minus = p < to && bytes[p] == '-';
        if (p < to && (minus || bytes[p] == '+')) {
            p++;
        }
        if (p == to) {
            throw new NumberFormatException();
        }
        int value = 0;
        for (; p < to; p++) {
            if (bytes[p] < '0' || bytes[p] > '9') {
                throw new NumberFormatException();
            }
            value = Math.min(1_000_000, value * 10 + bytes[p] - '0');
        }
        return minus ? -value : value;
    }
}
