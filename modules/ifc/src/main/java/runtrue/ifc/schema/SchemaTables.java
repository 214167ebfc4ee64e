package runtrue.ifc.schema;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Build step: writes one table for each schema from the EXPRESS files in the buildingsmartlibrary artifact, a line for
 * each entity: name, supertype (or {@code -}), own attributes. Same input, same bytes.
 */
public final class SchemaTables {
    private static final Map<String, String> EXPRESS_FILES = new TreeMap<>(Map.of(
            "IFC2X3", "schema/IFC2X3_TC1.exp", "IFC4", "schema/IFC4_ADD2.exp", "IFC4X3", "schema/IFC4X3_ADD2.exp"));

    private SchemaTables() {}

    /** Takes the folder to write to. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.createDirectories(folder);
        for (Map.Entry<String, String> schema : EXPRESS_FILES.entrySet()) {
            String table = table(schema.getValue(), ExpressReader.read(express(schema.getValue())));
            Files.writeString(folder.resolve(schema.getKey() + ".txt"), table, StandardCharsets.US_ASCII);
        }
    }

    static String table(String source, List<ExpressEntity> entities) {
        StringBuilder lines = new StringBuilder()
                .append("# Names of entities and attributes from ")
                .append(source)
                .append(", (C) buildingSMART International Limited\n");
        Map<String, ExpressEntity> byName = new TreeMap<>();
        entities.forEach(entity -> byName.put(entity.name(), entity));
        for (ExpressEntity entity : byName.values()) {
            lines.append(entity.name()).append(' ').append(entity.supertype().isEmpty() ? "-" : entity.supertype());
            entity.attributes().forEach(name -> lines.append(' ').append(name));
            lines.append('\n');
        }
        return lines.toString();
    }

    private static String express(String resource) throws IOException {
        ClassLoader loader = Thread.currentThread().getContextClassLoader();
        try (InputStream in = loader.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException(resource + " is not on the class path: is buildingsmartlibrary a dependency?");
            }
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
