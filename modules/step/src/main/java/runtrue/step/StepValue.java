package runtrue.step;

import java.util.List;

/** One attribute value of a STEP record, as ISO 10303-21 writes it. */
public sealed interface StepValue {
    /** {@code $}: no value. */
    record Omitted() implements StepValue {}

    /** {@code *}: the value is derived by the schema. */
    record Derived() implements StepValue {}

    record Whole(long value) implements StepValue {}

    record Real(double value) implements StepValue {}

    /** A string with all escapes resolved. */
    record Text(String value) implements StepValue {}

    /** {@code .NAME.}, without the dots, upper case. */
    record Enumeration(String name) implements StepValue {}

    /** {@code "0F3"}: the hexadecimal digits as written. */
    record Binary(String digits) implements StepValue {}

    /** {@code #12}. */
    record Reference(int id) implements StepValue {}

    /** {@code IFCLENGTHMEASURE(1.5)}; the keyword is upper case. */
    record Typed(String keyword, StepValue value) implements StepValue {}

    record ListOf(List<StepValue> items) implements StepValue {
        public ListOf {
            items = List.copyOf(items);
        }
    }
}
