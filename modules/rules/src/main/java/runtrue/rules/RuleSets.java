package runtrue.rules;

import java.nio.file.Path;
import java.util.Optional;
import runtrue.rules.extend.Layers;
import runtrue.rules.extend.RuleFile;
import runtrue.rules.read.RuleSetReader;
import runtrue.rules.yaml.YamlFile;

/** Loads rule sets. Pure: may run beside the reading of models, which hides what the expression library costs to start. */
public final class RuleSets {
    private RuleSets() {}

    /**
     * Reads, validates and compiles a rule set with those that it extends.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RuleSet load(Path file) {
        return load(RuleFile.of(file, Optional.empty()), Optional.empty());
    }

    /**
     * The rule set of a file, changed by what the settings of a drop say of it.
     *
     * @param settings the drop's file; empty when it changes nothing
     */
    public static RuleSet load(RuleFile file, Optional<Path> settings) {
        return RuleSetReader.read(
                settings.map(s -> Layers.read(file, YamlFile.read(s))).orElseGet(() -> Layers.read(file)));
    }

    /**
     * A rule set that comes with the program, for example {@code long-run-sheets}.
     *
     * @throws RuleException when there is none of that name
     */
    public static RuleSet bundled(String name) {
        return RuleSetReader.read(RuleFile.bundled(name));
    }
}
