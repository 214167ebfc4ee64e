package runtrue.rules.buildup;

import java.nio.file.Path;
import runtrue.rules.RuleException;
import runtrue.rules.read.Bundled;
import runtrue.rules.yaml.YamlFile;

/** Loads build-ups. Pure: may run beside the reading of models. */
public final class BuildUps {
    private BuildUps() {}

    /**
     * Reads, validates and compiles a build-up.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static BuildUp load(Path file) {
        return BuildUpReader.read(YamlFile.read(file));
    }

    /**
     * A build-up that comes with the program, for example {@code single-skin}.
     *
     * @throws RuleException when there is none of that name
     */
    public static BuildUp bundled(String name) {
        return BuildUpReader.read(Bundled.file("build-ups", name));
    }
}
