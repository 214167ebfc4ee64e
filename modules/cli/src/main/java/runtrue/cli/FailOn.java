package runtrue.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What may turn the exit code from 0. */
enum FailOn {
    NEVER,
    NON_CONFORMING,
    NOT_ASSESSED,
    UNREAD;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Reads {@code non-conforming} and the like. */
    static final class Converter implements ITypeConverter<FailOn> {
        @Override
        public FailOn convert(String value) {
            return Arrays.stream(values())
                    .filter(v -> v.toString().equalsIgnoreCase(value.strip()))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + value + "' is none of " + String.join(", ", new Candidates())));
        }
    }

    /** For shell completion and the help. */
    static final class Candidates implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Arrays.stream(values()).map(FailOn::toString).iterator();
        }
    }
}
