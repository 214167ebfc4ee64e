package runtrue.step.internal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import runtrue.step.StepException;
import runtrue.step.StepValue;

/** Decodes the list of attributes of one record from a copy of its bytes. For one use by one thread. */
final class RecordReader {
    /** Lists and typed values within each other; real schemas need four. */
    static final int DEEPEST = 100;

    private static final StepValue OMITTED = new StepValue.Omitted();
    private static final StepValue DERIVED = new StepValue.Derived();

    /** Makes the exception for a record: what is wrong, and the line ends between its start and the place. */
    interface Complaint {
        StepException about(String what, int linesBelow);
    }

    private final byte[] bytes;
    private final Complaint complaint;
    private int at;
    private int depth;

    RecordReader(byte[] bytes, int at, Complaint complaint) {
        this.bytes = bytes;
        this.at = at;
        this.complaint = complaint;
    }

    int position() {
        return at;
    }

    /** The name at the present place, in upper case. */
    String name() {
        skipBlank();
        int from = at;
        if (peek() == '!') {
            at++;
        }
        skipName();
        return upperCase(from, at);
    }

    /** Passes over {@code #12 = NAME} up to the list. */
    void toList() {
        while (peek() != '=') {
            at++;
            skipBlank();
        }
        at++;
        name();
    }

    /** All attributes, with the brackets around them and the semicolon behind. */
    List<StepValue> attributes() {
        List<StepValue> values = list();
        endStatement();
        return values;
    }

    void endStatement() {
        if (next() != ';') {
            throw unexpected("a semicolon");
        }
        at++;
    }

    /** Passes over attributes; false when the list has no such attribute. */
    boolean toAttribute(int index) {
        open();
        if (next() == ')') {
            return false;
        }
        for (int i = 0; i < index; i++) {
            skipValue();
            if (next() == ')') {
                return false;
            }
            comma();
        }
        return true;
    }

    /** Hands on the references in the value at the present place, those in lists too. */
    void references(IntConsumer target) {
        int open = 0;
        do {
            byte b = next();
            if (b == '#') {
                target.accept(reference());
            } else if (b == '\'') {
                skipString();
            } else if (b == '(') {
                open++;
                at++;
            } else if (b == ')') {
                open--;
                at++;
            } else {
                at++;
            }
            if (open > 0 && next() == ';') {
                throw unexpected("a closing bracket");
            }
        } while (open > 0 || !atDelimiter());
    }

    /** The numbers of a list, lists in it row by row; null when there is anything but numbers. */
    double @Nullable [] numbers() {
        if (next() != '(') {
            return null;
        }
        double[] found = new double[8];
        int count = 0;
        int open = 0;
        do {
            byte b = next();
            if (b == '(') {
                open++;
                at++;
            } else if (b == ')') {
                open--;
                at++;
            } else if (b == ',') {
                at++;
            } else if (numberBegins(b)) {
                if (count == found.length) {
                    found = Arrays.copyOf(found, count * 2);
                }
                found[count++] = real(number());
            } else {
                return null;
            }
        } while (open > 0);
        return Arrays.copyOf(found, count);
    }

    private boolean atDelimiter() {
        byte b = next();
        return b == ',' || b == ')' || b == ';';
    }

    private List<StepValue> list() {
        open();
        List<StepValue> values = new ArrayList<>();
        if (next() == ')') {
            at++;
        } else {
            boolean more;
            do {
                values.add(value());
                more = next() == ',';
                if (!more && peek() != ')') {
                    throw unexpected("a comma or a closing bracket");
                }
                at++;
            } while (more);
        }
        depth--;
        return values;
    }

    private void open() {
        if (next() != '(') {
            throw unexpected("an opening bracket");
        }
        if (++depth > DEEPEST) {
            throw fail("lists are nested more than " + DEEPEST + " deep");
        }
        at++;
    }

    private void comma() {
        if (next() != ',') {
            throw unexpected("a comma or a closing bracket");
        }
        at++;
    }

    private StepValue value() {
        byte b = next();
        return switch (b) {
            case '$' -> single(OMITTED);
            case '*' -> single(DERIVED);
            case '#' -> new StepValue.Reference(reference());
            case '\'' -> new StepValue.Text(string());
            case '(' -> new StepValue.ListOf(list());
            case '"' -> binary();
            case '.' -> numberBegins(b) ? numeric() : enumeration();
            default -> other(b);
        };
    }

    private StepValue single(StepValue value) {
        at++;
        return value;
    }

    private StepValue other(byte b) {
        if (NumberText.mayBegin(b)) {
            return numeric();
        }
        if (b == '!' || Statements.isNameByte(b)) {
            return typed();
        }
        throw unexpected("a value");
    }

    private boolean numberBegins(byte b) {
        return b == '.' ? at + 1 < bytes.length && isDigit(bytes[at + 1]) : NumberText.mayBegin(b);
    }

    private StepValue typed() {
        String name = name();
        if (next() != '(') {
            throw fail("\"" + name + "\" is no value");
        }
        open();
        StepValue value = value();
        if (next() != ')') {
            throw unexpected("a closing bracket");
        }
        at++;
        depth--;
        return new StepValue.Typed(name, value);
    }

    private StepValue enumeration() {
        int from = ++at;
        skipName();
        if (at == from || peek() != '.') {
            throw unexpected("an enumeration like .NAME.");
        }
        return new StepValue.Enumeration(upperCase(from, at++));
    }

    private StepValue binary() {
        int from = ++at;
        while (Character.digit(peek(), 16) >= 0) {
            at++;
        }
        if (peek() != '"' || at == from || bytes[from] > '3') {
            throw unexpected("a binary value of hexadecimal digits, the first 0 to 3, in double quotes");
        }
        return new StepValue.Binary(new String(bytes, from, at++ - from, StandardCharsets.US_ASCII));
    }

    private int reference() {
        int from = ++at;
        long id = 0;
        while (isDigit(peek())) {
            id = Math.min(Integer.MAX_VALUE + 1L, id * 10 + bytes[at++] - '0');
        }
        if (at == from) {
            throw unexpected("an instance number");
        }
        if (id > Integer.MAX_VALUE) {
            throw fail("the instance number #" + ascii(from, at) + " is larger than " + Integer.MAX_VALUE);
        }
        return (int) id;
    }

    private StepValue numeric() {
        int from = number();
        if (NumberText.isReal(bytes, from, at)) {
            return new StepValue.Real(real(from));
        }
        try {
            return new StepValue.Whole(NumberText.whole(bytes, from, at));
        } catch (NumberFormatException e) {
            throw fail("\"" + ascii(from, at) + "\" is not a whole number of at most 64 bits");
        }
    }

    /** Moves behind the characters of a number; answers where it began. */
    private int number() {
        int from = at;
        while (at < bytes.length && NumberText.mayHold(bytes[at])) {
            at++;
        }
        return from;
    }

    private double real(int from) {
        double value;
        try {
            value = NumberText.real(bytes, from, at);
        } catch (NumberFormatException e) {
            throw fail("\"" + ascii(from, at) + "\" is not a number");
        }
        if (Double.isInfinite(value)) {
            throw fail("the number " + ascii(from, at) + " is too large");
        }
        return value;
    }

    private String string() {
        int from = at + 1;
        skipString();
        return StringText.decode(bytes, from, at - 1);
    }

    /** Moves behind the closing quote. */
    private void skipString() {
        do {
            at++;
            while (peek() != '\'') {
                at++;
                if (at >= bytes.length) {
                    throw fail("a string is not closed by a quote");
                }
            }
            at++;
        } while (peek() == '\'');
    }

    private void skipValue() {
        int open = 0;
        while (true) {
            byte b = next();
            if (b == '\'') {
                skipString();
            } else if (b == ';' || (open == 0 && (b == ',' || b == ')'))) {
                return;
            } else {
                open += b == '(' ? 1 : b == ')' ? -1 : 0;
                at++;
            }
        }
    }

    private void skipName() {
        while (at < bytes.length && Statements.isNameByte(bytes[at])) {
            at++;
        }
    }

    /** The byte at the present place; a semicolon behind the end, which ends everything. */
    private byte peek() {
        return at < bytes.length ? bytes[at] : (byte) ';';
    }

    private byte next() {
        skipBlank();
        return peek();
    }

    private void skipBlank() {
        while (at < bytes.length) {
            byte b = bytes[at];
            if (b == '/' && at + 1 < bytes.length && bytes[at + 1] == '*') {
                skipComment();
            } else if (b > ' ' || b < 0) {
                return;
            } else {
                at++;
            }
        }
    }

    private void skipComment() {
        at += 2;
        while (at + 1 < bytes.length && (bytes[at] != '*' || bytes[at + 1] != '/')) {
            at++;
        }
        at += 2;
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    private String ascii(int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }

    private String upperCase(int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] >= 'a') {
                return ascii(from, to).toUpperCase(Locale.ROOT);
            }
        }
        return ascii(from, to);
    }

    private StepException unexpected(String expected) {
        int to = Math.min(bytes.length, at + 20);
        String found = at >= bytes.length ? "the end" : "\"" + ascii(at, to).replaceAll("[^ -~]+", " ") + "\"";
        return fail(expected + " is expected, found " + found);
    }

    private StepException fail(String what) {
        int below = LineNumbers.lineEnds(bytes, Math.min(at, bytes.length), bytes.length);
        return complaint.about(what, below);
    }
}
