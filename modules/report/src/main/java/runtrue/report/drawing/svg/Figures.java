package runtrue.report.drawing.svg;

/** Numbers as a drawing writes them: a point for decimals and no grouping, in every country. */
public final class Figures {
    private static final long[] POWERS = {1, 10, 100, 1000, 10_000};

    private Figures() {}

    /** With exactly so many decimals, at most four; halves are rounded up. */
    public static String fixed(double value, int decimals) {
        long scaled = Math.round(value * POWERS[decimals]);
        long whole = Math.abs(scaled) / POWERS[decimals];
        String sign = scaled < 0 ? "-" : "";
        if (decimals == 0) {
            return sign + whole;
        }
        String fraction = Long.toString(Math.abs(scaled) % POWERS[decimals]);
        return sign + whole + "." + "0".repeat(decimals - fraction.length()) + fraction;
    }

    /** A length in metres to the centimetre. */
    public static String metres(double metres) {
        return fixed(metres, 2);
    }

    /** A position on paper to a hundredth of a millimetre, as short as it can be written. */
    static String position(double millimetres) {
        String text = fixed(millimetres, 2);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        if (text.charAt(end - 1) == '.') {
            end--;
        }
        String kept = text.substring(0, end);
        return kept.equals("-0") ? "0" : kept;
    }
}
