package runtrue.ifc.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The classes of one IFC schema. A class is put together when it is first asked for: a file uses a few dozen of the
 * 650 to 880 there are, and opening a small file must not wait for the rest. Safe for use by many threads.
 */
public final class Schema {
    /** Classes that were renamed between the schemas, so that callers can ask by either name. */
    private static final Map<String, String> RENAMED = Map.of(
            "IfcBuildingElement", "IfcBuiltElement",
            "IfcBuiltElement", "IfcBuildingElement",
            "IfcSpatialElement", "IfcSpatialStructureElement");

    private final String name;
    /** Table line by upper-case name. */
    private final Map<String, String> lines;

    private final Map<String, SchemaClass> classes = new ConcurrentHashMap<>();
    private final Map<String, String> namesHere = new ConcurrentHashMap<>();

    private Schema(String name, Map<String, String> lines) {
        this.name = name;
        this.lines = lines;
    }

    /**
     * The schema that a FILE_SCHEMA entry means. Names of earlier and later releases are mapped to the release whose
     * files they can be read with: IFC2X and IFC2X2 to IFC2X3, IFC4X1 and IFC4X2 to IFC4, all IFC4X3 candidates and
     * addenda to IFC4X3.
     *
     * @return empty when it is none of these
     */
    public static Optional<Schema> of(String fileSchema) {
        return release(fileSchema.strip().toUpperCase(Locale.ROOT)).map(Schema::load);
    }

    private static Optional<String> release(String stated) {
        if (stated.startsWith("IFC2X")) {
            return Optional.of("IFC2X3");
        }
        if (stated.startsWith("IFC4X3")) {
            return Optional.of("IFC4X3");
        }
        boolean ifc4 = stated.equals("IFC4") || stated.startsWith("IFC4_");
        boolean inBetween = stated.startsWith("IFC4X1") || stated.startsWith("IFC4X2");
        return ifc4 || inBetween ? Optional.of("IFC4") : Optional.empty();
    }

    private static Schema load(String release) {
        try (InputStream in = Schema.class.getResourceAsStream(release + ".txt")) {
            if (in == null) {
                throw new IllegalStateException("table of " + release + " is missing: the build did not write it");
            }
            String table = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            Map<String, String> lines = new HashMap<>(2048);
            int start = table.indexOf('\n') + 1;
            for (int end = table.indexOf('\n', start); end >= 0; end = table.indexOf('\n', start)) {
                String line = table.substring(start, end);
                lines.put(line.substring(0, line.indexOf(' ')).toUpperCase(Locale.ROOT), line);
                start = end + 1;
            }
            return new Schema(release, lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code IFC2X3}, {@code IFC4} or {@code IFC4X3}. */
    public String name() {
        return name;
    }

    /** Number of classes. */
    public int size() {
        return lines.size();
    }

    /** The class that a keyword (any case) names, or null when the schema has none such. */
    public @Nullable SchemaClass find(String keyword) {
        SchemaClass known = classes.get(keyword);
        if (known != null) {
            return known;
        }
        String upper = keyword.toUpperCase(Locale.ROOT);
        String line = lines.get(upper);
        if (line == null) {
            return null;
        }
        SchemaClass made = parse(line);
        SchemaClass earlier = classes.putIfAbsent(upper, made);
        return earlier == null ? made : earlier;
    }

    /** The name that this schema has for a class: the given one, or what the class is called here. */
    public String nameHere(String className) {
        String known = namesHere.get(className);
        if (known != null) {
            return known;
        }
        boolean same = lines.containsKey(className.toUpperCase(Locale.ROOT));
        String here = same ? className : RENAMED.getOrDefault(className, className);
        namesHere.put(className, here);
        return here;
    }

    private SchemaClass parse(String line) {
        String[] words = line.split(" ", -1);
        SchemaClass supertype = words[1].equals("-") ? null : find(words[1]);
        List<String> attributes = new ArrayList<>();
        if (supertype != null) {
            attributes.addAll(supertype.attributes());
        }
        attributes.addAll(List.of(words).subList(2, words.length));
        return new SchemaClass(words[0], supertype, attributes);
    }
}
