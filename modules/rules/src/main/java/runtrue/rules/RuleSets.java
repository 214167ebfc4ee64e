package runtrue.rules;

import java.nio.file.Path;
import java.util.Optional;
import runtrue.rules.extend.RuleFile;
import runtrue.rules.read.RuleSetReader;

/** Loads rule sets. Pure: may run beside the reading of models, which hides what the expression library costs to start. */
public final class RuleSets {
    private RuleSets() {}

    /**
     * Reads, validates and compiles a rule set with those that it extends.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RuleSet load(Path file) {
        return load(file, Optional.empty());
    }

    /**
     * The same, where a rule set may extend one of a folder.
     *
     * @param folder where those of the program lie, which people may edit; those inside the program stand in for it
     */
    public static RuleSet load(Path file, Optional<Path> folder) {
        return RuleSetReader.read(RuleFile.of(file, folder));
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
