package runtrue.report.page.data;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import runtrue.report.drawing.svg.Figures;
import runtrue.result.Measure;
import runtrue.result.Point;

/**
 * Writes JSON (RFC 8259) that may stand within a script element of HTML: no text can end the element or open a comment,
 * because {@code <}, {@code >} and {@code &} are written as escapes, like all else that is not plain ASCII. One row of a list
 * a line. Fails with {@link UncheckedIOException}.
 */
final class ScriptJson {
    /** Decimal digits that a double holds whatever its value, so that 0.1 is written as 0.1. */
    private static final MathContext DIGITS = new MathContext(15);

    private static final double FARTHEST = 1e9;

    private final Writer out;
    private boolean first = true;

    ScriptJson(Writer out) {
        this.out = out;
    }

    void object(Runnable fields) {
        open('{');
        fields.run();
        close('}');
    }

    void object(String name, Runnable fields) {
        name(name);
        object(fields);
    }

    <T> void list(String name, Iterable<T> items, Consumer<T> each) {
        name(name);
        list(items, each);
    }

    <T> void list(Iterable<T> items, Consumer<T> each) {
        open('[');
        items.forEach(item -> {
            comma();
            raw("\n");
            first = true;
            each.accept(item);
        });
        close(']');
    }

    /** A list of objects. */
    <T> void objects(String name, Iterable<T> items, BiConsumer<ScriptJson, T> each) {
        list(name, items, item -> object(() -> each.accept(this, item)));
    }

    void texts(String name, Iterable<String> texts) {
        name(name);
        open('[');
        texts.forEach(this::text);
        close(']');
    }

    void field(String name, String text) {
        name(name);
        text(text);
    }

    void field(String name, long number) {
        name(name);
        plain(Long.toString(number));
    }

    void field(String name, double number) {
        name(name);
        number(number);
    }

    void field(String name, boolean flag) {
        name(name);
        plain(Boolean.toString(flag));
    }

    void field(String name, OptionalDouble number) {
        number.ifPresent(n -> field(name, n));
    }

    /** A number and its unit as a pair. */
    void field(String name, Optional<Measure> measure) {
        measure.ifPresent(m -> field(name, m));
    }

    void field(String name, Measure measure) {
        name(name);
        open('[');
        number(measure.value());
        text(measure.unit());
        close(']');
    }

    /** Lengths in metres to the tenth of a millimetre, in one flat list. */
    void metres(String name, double... metres) {
        name(name);
        open('[');
        for (double length : metres) {
            short4(length);
        }
        close(']');
    }

    /** Points as one flat list of x, y, z, metres from {@code origin}. */
    void points(String name, Iterable<Point> points, Point origin) {
        name(name);
        points(points, origin);
    }

    void points(Iterable<Point> points, Point origin) {
        open('[');
        points.forEach(p -> {
            short4(p.xMetres() - origin.xMetres());
            short4(p.yMetres() - origin.yMetres());
            short4(p.zMetres() - origin.zMetres());
        });
        close(']');
    }

    void text(String text) {
        comma();
        StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '<', '>', '&' -> escape(quoted, c);
                default -> {
                    if (c < 0x20 || c > 0x7e) {
                        escape(quoted, c);
                    } else {
                        quoted.append(c);
                    }
                }
            }
        }
        raw(quoted.append('"').toString());
    }

    void number(double number) {
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            plain("null");
        } else {
            plain(
                    number == 0
                            ? "0"
                            : new BigDecimal(number)
                                    .round(DIGITS)
                                    .stripTrailingZeros()
                                    .toPlainString());
        }
    }

    private static void escape(StringBuilder out, char c) {
        String hex = Integer.toHexString(c);
        out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
    }

    /** What is no length that a roof can have is written as it is. */
    private void short4(double metres) {
        if (!(Math.abs(metres) < FARTHEST)) {
            number(metres);
            return;
        }
        String text = Figures.fixed(metres, 4);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        String kept = text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
        plain(kept.equals("-0") ? "0" : kept);
    }

    private void name(String name) {
        text(name);
        raw(":");
        first = true;
    }

    private void plain(String token) {
        comma();
        raw(token);
    }

    private void open(char bracket) {
        comma();
        raw(String.valueOf(bracket));
        first = true;
    }

    private void close(char bracket) {
        raw(String.valueOf(bracket));
        first = false;
    }

    private void comma() {
        if (!first) {
            raw(",");
        }
        first = false;
    }

    private void raw(String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
