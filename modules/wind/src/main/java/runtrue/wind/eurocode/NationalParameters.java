package runtrue.wind.eurocode;

import java.io.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import runtrue.wind.Certainty;
import runtrue.wind.WindException;
import runtrue.wind.WindSource;
import runtrue.wind.data.DataFile;
import runtrue.wind.data.DataRow;

/** What EN 1991-1-4 leaves to the national annexes, by name; units and names stand in the data file. */
public final class NationalParameters {
    private static final String FILE = "en1991-1-4-2005-national.csv";

    private static final String STANDARD = "EN 1991-1-4:2005+A1:2010";

    private record Parameter(double value, WindSource source) {}

    private final Map<String, Parameter> parameters;

    private NationalParameters(Map<String, Parameter> parameters) {
        this.parameters = parameters;
    }

    /** The recommended values. */
    public static NationalParameters recommended() {
        return new NationalParameters(read(DataFile.bundled(FILE), STANDARD, Map.of()));
    }

    /**
     * With the values of a user's file in place of those of the same name; it may add terrain categories.
     *
     * @param name of the file, printed with each value that comes from it
     * @throws WindException for a name that nothing asks for, with file and line
     */
    public NationalParameters overriddenBy(Reader text, String name) {
        Map<String, Parameter> all = new LinkedHashMap<>(parameters);
        all.putAll(read(DataFile.rows(text, name), name, parameters));
        return new NationalParameters(all);
    }

    public double value(String name) {
        return parameter(name).value();
    }

    public WindSource source(String name) {
        return parameter(name).source();
    }

    /** Roughness length z0 of a terrain category, metres. */
    public double roughness(String terrain) {
        return value(terrainKey(terrain, "z0"));
    }

    /** Height zmin of a terrain category below which the wind is taken as at it, metres. */
    public double leastHeight(String terrain) {
        return value(terrainKey(terrain, "zmin"));
    }

    String terrainKey(String terrain, String part) {
        String key = "terrain." + terrain + "." + part;
        if (!parameters.containsKey(key)) {
            String known = parameters.keySet().stream()
                    .filter(k -> k.startsWith("terrain.") && k.endsWith(".z0"))
                    .map(k -> k.substring("terrain.".length(), k.length() - ".z0".length()))
                    .collect(Collectors.joining(", "));
            throw new WindException("The terrain category is '" + terrain + "'; known are " + known + ".");
        }
        return key;
    }

    private Parameter parameter(String name) {
        Parameter parameter = parameters.get(name);
        if (parameter == null) {
            throw new WindException("No national parameter is called " + name + ".");
        }
        return parameter;
    }

    private static Map<String, Parameter> read(List<DataRow> rows, String document, Map<String, Parameter> known) {
        Map<String, Parameter> read = new LinkedHashMap<>();
        for (DataRow row : rows) {
            String name = row.text("name");
            if (!known.isEmpty() && !known.containsKey(name) && !name.startsWith("terrain.")) {
                throw new WindException(row.where() + ": no national parameter is called " + name + "; known are "
                        + new TreeSet<>(known.keySet()) + ".");
            }
            Certainty certainty = row.certainty("status");
            String place = row.optional("clause").isEmpty() ? name : row.optional("clause") + " " + name;
            read.put(
                    name,
                    new Parameter(
                            row.number("value"), new WindSource(document, place, certainty, row.optional("note"))));
        }
        return read;
    }
}
