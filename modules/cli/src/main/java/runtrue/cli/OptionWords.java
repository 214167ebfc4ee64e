package runtrue.cli;

import java.util.Arrays;
import java.util.Iterator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The words of an option with fixed values: reads them whatever their case, and lists them for completion and the help. */
abstract class OptionWords<E> implements ITypeConverter<E>, Iterable<String> {
    private final E[] values;

    OptionWords(E[] values) {
        this.values = values.clone();
    }

    @Override
    public E convert(String value) {
        return Arrays.stream(values)
                .filter(v -> v.toString().equalsIgnoreCase(value.strip()))
                .findFirst()
                .orElseThrow(
                        () -> new TypeConversionException("'" + value + "' is none of " + String.join(", ", this)));
    }

    @Override
    public Iterator<String> iterator() {
        return Arrays.stream(values).map(Object::toString).iterator();
    }
}
