package runtrue.rules.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import runtrue.rules.RuleException;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;

/** Files of the rules folder that come with the program. */
public final class Bundled {
    private Bundled() {}

    /**
     * A YAML file that comes with the program.
     *
     * @throws RuleException when there is none of that name
     */
    public static YamlFile file(String folder, String name) {
        return find(folder, name)
                .orElseThrow(() ->
                        new RuleException("rules/" + folder + "/" + name + ".yaml does not come with the program"));
    }

    /** The same, where there may be none. */
    public static Optional<YamlFile> find(String folder, String name) {
        String path = folder + "/" + name + ".yaml";
        return text(path).map(text -> new YamlFile("rules/" + path, text));
    }

    /**
     * Checks a file against a schema, unless it is, letter for letter, one that came with the program: those were
     * checked by a test when it was built, and the validator takes longer to start than everything else here.
     */
    public static void validate(YamlFile file, YamlValue value, String folder, String schema, Problems problems) {
        String name = file.name()
                .substring(Math.max(file.name().lastIndexOf('/'), file.name().lastIndexOf('\\')) + 1);
        if (!text(folder + "/" + name).equals(Optional.of(file.text()))) {
            SchemaCheck.check(value, schema(schema), problems);
        }
    }

    /** The text of a JSON Schema that comes with the program. */
    public static String schema(String name) {
        return text("schemas/" + name + ".schema.json")
                .orElseThrow(() -> new IllegalStateException("schema " + name + " is missing from the program"));
    }

    private static Optional<String> text(String path) {
        try (InputStream in = Bundled.class.getResourceAsStream("/runtrue/rules/bundled/" + path)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path + " from the program", e);
        }
    }
}
