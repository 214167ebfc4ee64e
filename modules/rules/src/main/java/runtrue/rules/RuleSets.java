package runtrue.rules;

import java.nio.file.Path;
import runtrue.rules.read.Bundled;
import runtrue.rules.read.RuleSetReader;
import runtrue.rules.yaml.YamlFile;

/** Loads rule sets. Pure: may run beside the reading of models, which hides what the expression library costs to start. */
public final class RuleSets {
    private RuleSets() {}

    /**
     * Reads, validates and compiles a rule set.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RuleSet load(Path file) {
        return RuleSetReader.read(YamlFile.read(file));
    }

    /**
     * A rule set that comes with the program, for example {@code long-run-sheets}.
     *
     * @throws RuleException when there is none of that name
     */
    public static RuleSet bundled(String name) {
        return RuleSetReader.read(Bundled.file("rule-sets", name));
    }
}
