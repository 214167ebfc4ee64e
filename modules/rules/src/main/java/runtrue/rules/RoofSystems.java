package runtrue.rules;

import java.nio.file.Path;
import runtrue.rules.read.Bundled;
import runtrue.rules.read.SystemReader;
import runtrue.rules.yaml.YamlFile;

/** Loads roof systems. */
public final class RoofSystems {
    private RoofSystems() {}

    /**
     * Reads and validates a roof system.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RoofSystem load(Path file) {
        return SystemReader.read(YamlFile.read(file));
    }

    /**
     * A roof system that comes with the program.
     *
     * @throws RuleException when there is none of that name
     */
    public static RoofSystem bundled(String name) {
        return SystemReader.read(Bundled.file("systems", name));
    }
}
