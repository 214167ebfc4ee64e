package runtrue.report.sheet;

import java.util.regex.Pattern;

/**
 * Text from models and settings as it may stand in a cell. Nobody knows who wrote it: it must stay text, whatever it looks
 * like.
 */
public final class CellText {
    /** Longest text of a cell in the file format. */
    static final int LONGEST = 32_767;

    private static final String CUT = " … [cut]";

    /** Spreadsheet programs read {@code _x000D_} as the character with that code (ISO/IEC 29500-1, 22.9.2.19). */
    private static final Pattern CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    /** First characters of formulas; the full-width ones count, some programs read them so. */
    private static final String LIVE = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private CellText() {}

    /**
     * Without characters that XML forbids, without controls other than the line feed, without marks that turn the direction
     * of reading, and clipped to what a cell holds.
     */
    static String clean(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.replace("\r\n", "\n").codePoints().forEach(c -> append(clean, c));
        return clipped(CODE.matcher(clean).replaceAll("_x005F_"));
    }

    /**
     * Whether a spreadsheet program would take the text for a formula when it is typed again or comes back from a CSV file.
     */
    public static boolean looksLive(String text) {
        if (text.startsWith("\t") || text.startsWith("\r")) {
            return true;
        }
        String start = text.stripLeading();
        return !start.isEmpty() && LIVE.indexOf(start.charAt(0)) >= 0;
    }

    private static boolean isPlain(String text) {
        return text.length() < LONGEST && text.chars().allMatch(c -> c >= ' ' && c < 0x7F && c != '_');
    }

    private static void append(StringBuilder clean, int c) {
        if (c == '\t' || c == '\r') {
            clean.append(c == '\t' ? ' ' : '\n');
        } else if (c == '\n' || !(Character.isISOControl(c) || isForbidden(c) || turnsReading(c))) {
            clean.appendCodePoint(c);
        }
    }

    private static boolean isForbidden(int c) {
        return (c >= 0xD800 && c <= 0xDFFF) || (c & 0xFFFE) == 0xFFFE;
    }

    private static boolean turnsReading(int c) {
        return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    }

    private static String clipped(String text) {
        if (text.length() <= LONGEST) {
            return text;
        }
        int end = LONGEST - CUT.length();
        return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + CUT;
    }
}
