package runtrue.geometryserver;

import java.util.List;
import java.util.Locale;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;

/** Records as ISO 10303-21 writes them, in ASCII alone. */
final class StepText {
    private final StringBuilder out;

    StepText(StringBuilder out) {
        this.out = out;
    }

    /** One line: {@code #12=IFCSLAB(...);}. */
    void append(StepInstance instance) {
        out.append('#').append(instance.id()).append('=').append(instance.keyword());
        list(instance.attributes());
        out.append(";\n");
    }

    private void list(List<StepValue> values) {
        out.append('(');
        for (int i = 0; i < values.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            append(values.get(i));
        }
        out.append(')');
    }

    void append(StepValue value) {
        if (value instanceof StepValue.ListOf list) {
            list(list.items());
        } else if (value instanceof StepValue.Typed typed) {
            out.append(typed.keyword()).append('(');
            append(typed.value());
            out.append(')');
        } else if (value instanceof StepValue.Text text) {
            text(text.value());
        } else {
            out.append(plain(value));
        }
    }

    private static String plain(StepValue value) {
        if (value instanceof StepValue.Reference reference) {
            return "#" + reference.id();
        } else if (value instanceof StepValue.Real real) {
            // Java always writes the point that the standard asks for.
            return Double.toString(real.value());
        } else if (value instanceof StepValue.Whole whole) {
            return Long.toString(whole.value());
        } else if (value instanceof StepValue.Enumeration enumeration) {
            return "." + enumeration.name() + ".";
        } else if (value instanceof StepValue.Binary binary) {
            return "\"" + binary.digits() + "\"";
        }
        return value instanceof StepValue.Derived ? "*" : "$";
    }

    /** Clause 6.4.3 of the standard: apostrophe and backslash doubled, all beyond ASCII as \X2\ or \X4\ hexadecimal. */
    private void text(String text) {
        out.append('\'');
        text.codePoints().forEach(c -> {
            if (c == '\'' || c == '\\') {
                out.appendCodePoint(c).appendCodePoint(c);
            } else if (c >= 0x20 && c < 0x7f) {
                out.appendCodePoint(c);
            } else if (c <= 0xffff) {
                out.append("\\X2\\")
                        .append(String.format(Locale.ROOT, "%04X", c))
                        .append("\\X0\\");
            } else {
                out.append("\\X4\\")
                        .append(String.format(Locale.ROOT, "%08X", c))
                        .append("\\X0\\");
            }
        });
        out.append('\'');
    }
}
