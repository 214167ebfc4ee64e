package runtrue.step.internal;

import java.nio.ByteBuffer;
import java.util.Locale;

/**
 * The plain, complete way through the text of an exchange structure: comments, strings, statements. A place that is not
 * finished within the bytes at hand is answered with a negative number, for there may be another piece.
 */
final class Statements {
    static final int UNFINISHED = -1;

    /** What is wrong at a place; the reader of the file turns it into a message with name and line. */
    interface Complaint {
        RuntimeException at(int offset, String what);
    }

    private final ByteBuffer bytes;
    private final int limit;
    private final Complaint complaint;

    Statements(ByteBuffer bytes, Complaint complaint) {
        this.bytes = bytes;
        this.limit = bytes.limit();
        this.complaint = complaint;
    }

    /** Next place that is neither white space nor comment, or the limit; {@code ~place} of a comment that is not finished. */
    int skipBlank(int from) {
        int p = from;
        while (p < limit) {
            byte b = bytes.get(p);
            if (b == '/' && (p + 1 == limit || bytes.get(p + 1) == '*')) {
                int end = endOfComment(p);
                if (end < 0) {
                    return ~p;
                }
                p = end;
            } else if (b > ' ' || b < 0) {
                return p;
            } else {
                p++;
            }
        }
        return p;
    }

    /** Behind the semicolon that ends a statement in which no {@code =} can occur, or {@link #UNFINISHED}. */
    int endOfStatement(int from) {
        return end(from, false);
    }

    /** The same for sections whose statements have an {@code =}. */
    int endOfAnyStatement(int from) {
        return end(from, true);
    }

    private int end(int from, boolean assignments) {
        int p = from;
        while (p < limit) {
            byte b = bytes.get(p);
            if (b == ';') {
                return p + 1;
            } else if (b == '\'') {
                p = endOfString(p);
            } else if (b == '/' && (p + 1 == limit || bytes.get(p + 1) == '*')) {
                p = endOfComment(p);
            } else if (b == '=' && !assignments) {
                throw complaint.at(p, "a record begins before the one above is ended by a semicolon");
            } else {
                p++;
            }
            if (p < 0) {
                return UNFINISHED;
            }
        }
        return UNFINISHED;
    }

    /** Behind the last character of a word, which is letters, digits, {@code _} and {@code -}. */
    int endOfWord(int from) {
        int p = from;
        while (p < limit && isWord(bytes.get(p))) {
            p++;
        }
        return p;
    }

    String text(int from, int to) {
        StringBuilder text = new StringBuilder(to - from);
        for (int p = from; p < to; p++) {
            text.append((char) (bytes.get(p) & 0xFF));
        }
        return text.toString();
    }

    String upperCase(int from, int to) {
        return text(from, to).toUpperCase(Locale.ROOT);
    }

    private static boolean isWord(byte b) {
        return isNameByte(b) || b == '-';
    }

    static boolean isNameByte(int b) {
        return (b >= 'A' && b <= 'Z') || (b >= 'a' && b <= 'z') || (b >= '0' && b <= '9') || b == '_';
    }

    private int endOfComment(int from) {
        for (int p = from + 2; p + 1 < limit; p++) {
            if (bytes.get(p) == '*' && bytes.get(p + 1) == '/') {
                return p + 2;
            }
        }
        return UNFINISHED;
    }

    /**
     * Behind the closing quote. A doubled quote ends one string and begins the next, which comes to the same here. A
     * string that goes on over a line which begins like a record was not closed: going on would lose records in it.
     */
    private int endOfString(int from) {
        for (int p = from + 1; p < limit; p++) {
            byte b = bytes.get(p);
            if (b == '\'') {
                return p + 1;
            }
            if ((b == '\n' || b == '\r') && beginsRecord(p + 1)) {
                throw complaint.at(from, "a string is not closed by a quote");
            }
        }
        return UNFINISHED;
    }

    private boolean beginsRecord(int from) {
        int p = skipSpace(from);
        if (p >= limit || bytes.get(p) != '#') {
            return false;
        }
        int digits = p + 1;
        p = digits;
        while (p < limit && bytes.get(p) >= '0' && bytes.get(p) <= '9') {
            p++;
        }
        int sign = skipSpace(p);
        return p > digits && sign < limit && bytes.get(sign) == '=';
    }

    private int skipSpace(int from) {
        int p = from;
        while (p < limit && bytes.get(p) >= 0 && bytes.get(p) <= ' ') {
            p++;
        }
        return p;
    }
}
