package runtrue.ifc.internal;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import runtrue.step.StepValue;

/** What a raw value says as a number or as text, typed values unwrapped. */
final class Values {
    private Values() {}

    static StepValue unwrap(StepValue value) {
        StepValue inner = value;
        while (inner instanceof StepValue.Typed typed) {
            inner = typed.value();
        }
        return inner;
    }

    /** Empty when it is not a number. */
    static OptionalDouble number(StepValue value) {
        StepValue inner = unwrap(value);
        if (inner instanceof StepValue.Real real) {
            return OptionalDouble.of(real.value());
        }
        return inner instanceof StepValue.Whole whole
                ? OptionalDouble.of((double) whole.value())
                : OptionalDouble.empty();
    }

    /** All numbers in a list, nested lists flattened; what is not a number is left out. */
    static double[] numbers(StepValue value) {
        StepValue inner = unwrap(value);
        if (inner instanceof StepValue.ListOf list) {
            return list.items().stream()
                    .flatMapToDouble(item -> Arrays.stream(numbers(item)))
                    .toArray();
        }
        return number(inner).stream().toArray();
    }

    /** Lists joined with {@code "; "}, logicals spelt out, whole reals without a fraction; empty when omitted. */
    static String text(StepValue value) {
        StepValue inner = unwrap(value);
        if (inner instanceof StepValue.Text text) {
            return text.value();
        }
        if (inner instanceof StepValue.Whole whole) {
            return Long.toString(whole.value());
        }
        if (inner instanceof StepValue.Real real) {
            return plain(real.value());
        }
        if (inner instanceof StepValue.Enumeration literal) {
            return logical(literal.name());
        }
        if (inner instanceof StepValue.Binary binary) {
            return binary.digits();
        }
        if (inner instanceof StepValue.ListOf list) {
            StringJoiner joined = new StringJoiner("; ");
            list.items().forEach(item -> joined.add(text(item)));
            return joined.toString();
        }
        return "";
    }

    private static String plain(double value) {
        double size = Math.abs(value);
        if (size < 1e15 && value == Math.rint(value)) {
            return Long.toString((long) value);
        }
        boolean exponent = size < 1e-3 || size >= 1e7;
        boolean readable = size >= 1e-6 && size < 1e15;
        return exponent && readable ? BigDecimal.valueOf(value).toPlainString() : Double.toString(value);
    }

    private static String logical(String literal) {
        return switch (literal) {
            case "T" -> "TRUE";
            case "F" -> "FALSE";
            case "U" -> "UNKNOWN";
            default -> literal;
        };
    }
}
