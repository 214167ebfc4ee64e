package runtrue.samples.ifc;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Numbers instances in the order in which they are written, starting with #1. */
final class StepWriter {
    private final StringBuilder data = new StringBuilder();
    private final Map<String, StepRef> shared = new HashMap<>();
    private int last;

    /**
     * Writes an instance.
     *
     * @param name of the entity, upper case
     * @param attributes in the schema's order; see {@link Step#text} for the kinds of value
     */
    StepRef entity(String name, Object... attributes) {
        return write(record(name, attributes));
    }

    /** Writes an instance without identity, or gives the one written before with the same attributes. */
    StepRef shared(String name, Object... attributes) {
        String record = record(name, attributes);
        StepRef known = shared.get(record);
        if (known == null) {
            known = write(record);
            shared.put(record, known);
        }
        return known;
    }

    /** The whole file, lines ended by line feeds. */
    String file(String header) {
        return "ISO-10303-21;\nHEADER;\n" + header + "ENDSEC;\nDATA;\n" + data + "ENDSEC;\nEND-ISO-10303-21;\n";
    }

    private StepRef write(String record) {
        StepRef ref = new StepRef(++last);
        data.append(ref).append('=').append(record).append(";\n");
        return ref;
    }

    private static String record(String name, Object... attributes) {
        return Arrays.stream(attributes).map(Step::text).collect(Collectors.joining(",", name + "(", ")"));
    }
}
