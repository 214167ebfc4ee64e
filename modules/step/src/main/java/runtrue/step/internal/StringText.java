package runtrue.step.internal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/**
 * Strings of ISO 10303-21 (clause 6.4.3): doubled quotes and backslashes, {@code \X\hh}, {@code \X2\hhhh...\X0\},
 * {@code \X4\hhhhhhhh...\X0\}, {@code \S\c} on the code page that {@code \P_\} chose (A to I: ISO 8859-1 to 9, A at
 * first), {@code \N\} for a new line. Line breaks within a string belong to the file, not to the text, and are dropped.
 *
 * <p>Beyond the standard: a backslash that begins none of these stays as it is (file paths), and bytes outside ASCII are
 * read as UTF-8, or as ISO 8859-1 where a string is no valid UTF-8.
 */
final class StringText {
    private final byte[] bytes;
    private final int to;
    private final StringBuilder text;
    private Charset page = StandardCharsets.ISO_8859_1;
    private int at;

    private StringText(byte[] bytes, int from, int to) {
        this.bytes = bytes;
        this.at = from;
        this.to = to;
        this.text = new StringBuilder(to - from);
    }

    /** The text between the outer quotes. */
    static String decode(byte[] bytes, int from, int to) {
        boolean breaks = false;
        boolean escapes = false;
        boolean ascii = true;
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            breaks |= b == '\n' || b == '\r';
            escapes |= b == '\\' || b == '\'';
            ascii &= b >= 0;
        }
        if (breaks) {
            byte[] joined = withoutBreaks(bytes, from, to);
            return decode(joined, 0, joined.length);
        }
        if (!ascii) {
            byte[] unicode = asEscapes(bytes, from, to);
            return decode(unicode, 0, unicode.length);
        }
        if (!escapes) {
            return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        }
        return new StringText(bytes, from, to).decode();
    }

    private static byte[] withoutBreaks(byte[] bytes, int from, int to) {
        byte[] joined = new byte[to - from];
        int count = 0;
        for (int i = from; i < to; i++) {
            if (bytes[i] != '\n' && bytes[i] != '\r') {
                joined[count++] = bytes[i];
            }
        }
        return Arrays.copyOf(joined, count);
    }

    /** Writes characters outside ASCII in the standard's own form, so that there is one way to decode. */
    private static byte[] asEscapes(byte[] bytes, int from, int to) {
        String raw;
        try {
            raw = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, to - from))
                    .toString();
        } catch (CharacterCodingException e) {
            raw = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        }
        StringBuilder escaped = new StringBuilder(raw.length() + 16);
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c < 0x80) {
                escaped.append(c);
            } else {
                escaped.append(String.format(Locale.ROOT, "\\X2\\%04X\\X0\\", (int) c));
            }
        }
        return escaped.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private String decode() {
        while (at < to) {
            byte b = bytes[at];
            if (b == '\'') {
                text.append('\'');
                at += at + 1 < to && bytes[at + 1] == '\'' ? 2 : 1;
            } else if (b != '\\' || !escape()) {
                text.append((char) b);
                at++;
            }
        }
        return text.toString();
    }

    /** Reads the escape at the present place; false when there is none. */
    private boolean escape() {
        if (at + 1 >= to) {
            return false;
        }
        return switch (bytes[at + 1]) {
            case '\\' -> append('\\', 2);
            case 'X' -> hexadecimal();
            case 'S' -> shifted();
            case 'P' -> codePage();
            case 'N' -> isBackslash(at + 2) && append('\n', 3);
            default -> false;
        };
    }

    private boolean append(char c, int read) {
        text.append(c);
        at += read;
        return true;
    }

    private boolean hexadecimal() {
        if (isBackslash(at + 2)) {
            int code = hex(at + 3, 2);
            if (code >= 0) {
                text.append((char) code);
                at += 5;
            }
            return code >= 0;
        }
        if (isBackslash(at + 3) && (bytes[at + 2] == '2' || bytes[at + 2] == '4')) {
            return row(at + 4, bytes[at + 2] == '2' ? 4 : 8);
        }
        return false;
    }

    /** Characters of 4 or 8 digits each, up to {@code \X0\}. */
    private boolean row(int from, int digits) {
        int kept = text.length();
        int p = from;
        while (!isBackslash(p)) {
            int code = hex(p, digits);
            if (code < 0 || code > Character.MAX_CODE_POINT) {
                text.setLength(kept);
                return false;
            }
            if (digits == 4) {
                text.append((char) code);
            } else {
                text.appendCodePoint(code);
            }
            p += digits;
        }
        if (p + 3 >= to || bytes[p + 1] != 'X' || bytes[p + 2] != '0' || bytes[p + 3] != '\\') {
            text.setLength(kept);
            return false;
        }
        at = p + 4;
        return true;
    }

    private boolean shifted() {
        if (!isBackslash(at + 2) || at + 3 >= to) {
            return false;
        }
        byte[] code = {(byte) (bytes[at + 3] | 0x80)};
        text.append(new String(code, page));
        // A quote is doubled in the file here, too.
        at += bytes[at + 3] == '\'' && at + 4 < to && bytes[at + 4] == '\'' ? 5 : 4;
        return true;
    }

    private boolean codePage() {
        if (at + 3 >= to || !isBackslash(at + 3) || bytes[at + 2] < 'A' || bytes[at + 2] > 'I') {
            return false;
        }
        page = Charset.forName("ISO-8859-" + (bytes[at + 2] - 'A' + 1));
        at += 4;
        return true;
    }

    private boolean isBackslash(int index) {
        return index < to && bytes[index] == '\\';
    }

    /** The value of some hexadecimal digits, or -1. */
    private int hex(int from, int digits) {
        if (from + digits > to) {
            return -1;
        }
        long value = 0;
        for (int i = from; i < from + digits; i++) {
            int digit = Character.digit(bytes[i], 16);
            if (digit < 0) {
                return -1;
            }
            value = value * 16 + digit;
        }
        return (int) Math.min(value, Integer.MAX_VALUE);
    }
}
