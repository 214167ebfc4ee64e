package runtrue.cli;

import java.util.Arrays;
import java.util.Iterator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import runtrue.geometryserver.EngineUse;

/** {@link EngineUse} as the command line writes it. */
final class GeometryChoice {
    private GeometryChoice() {}

    /** Reads {@code fill-in} and the like. */
    static final class Converter implements ITypeConverter<EngineUse> {
        @Override
        public EngineUse convert(String value) {
            return Arrays.stream(EngineUse.values())
                    .filter(use -> use.toString().equalsIgnoreCase(value.strip()))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + value + "' is none of " + String.join(", ", new Candidates())));
        }
    }

    /** For shell completion and the help. */
    static final class Candidates implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Arrays.stream(EngineUse.values()).map(EngineUse::toString).iterator();
        }
    }
}
