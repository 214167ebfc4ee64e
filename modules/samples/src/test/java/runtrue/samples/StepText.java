package runtrue.samples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Just enough of a reader to look over the writer's shoulder; shares no code with it. */
final class StepText {
    private static final Pattern INSTANCE = Pattern.compile("#(\\d+)=([A-Z0-9]+)\\((.*)\\);");
    private static final Pattern STRING = Pattern.compile("'(?:[^']|'')*'");
    private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");
    private static final Pattern ROOTED = Pattern.compile("'([^']{22})',(?:#\\d+|\\$),.*");

    /**
     * An instance.
     *
     * @param attributes as they stand in the file, without the outer parentheses
     */
    record Instance(String number, String entity, String attributes) {
        /** The attributes with every string emptied. */
        String skeleton() {
            return STRING.matcher(attributes).replaceAll("''");
        }

        List<String> references() {
            List<String> found = new ArrayList<>();
            Matcher matcher = REFERENCE.matcher(skeleton());
            while (matcher.find()) {
                found.add(matcher.group(1));
            }
            return found;
        }

        /** GlobalId of a rooted instance: 22 characters, then an owner history or none. */
        Optional<String> globalId() {
            Matcher matcher = ROOTED.matcher(attributes);
            return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
        }
    }

    private StepText() {}

    /** Instances by number; fails on a line of the data section that is not one whole instance with a new number. */
    static Map<String, Instance> instances(String file) {
        int from = file.indexOf("DATA;\n") + "DATA;\n".length();
        int to = file.indexOf("ENDSEC;\nEND-ISO-10303-21;\n", from);
        Map<String, Instance> instances = new LinkedHashMap<>();
        for (String line : file.substring(from, to).split("\n", -1)) {
            Matcher matcher = INSTANCE.matcher(line);
            if (matcher.matches()) {
                Instance instance = new Instance(matcher.group(1), matcher.group(2), matcher.group(3));
                if (instances.put(instance.number(), instance) != null) {
                    throw new AssertionError("number used twice: " + line);
                }
            } else if (!line.isEmpty()) {
                throw new AssertionError("not an instance: " + line);
            }
        }
        return instances;
    }
}
