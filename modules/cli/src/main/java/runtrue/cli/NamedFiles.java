package runtrue.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.drop.Drop;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;

/**
 * The rule set, roof system and settings that the options name, or those that come with the program. What is named but is
 * not there, or is wrong, ends in a {@link RuleException} that says so.
 */
record NamedFiles(CheckOptions options) {
    private static final String DEFAULT_RULES = "long-run-sheets";

    RuleSet ruleSet() {
        return options.rules()
                .map(file -> RuleSets.load(present(file)))
                .orElseGet(() -> ofProgram("rule-sets", DEFAULT_RULES)
                        .map(file -> RuleSets.load(file).shownAs(shown(file)))
                        .orElseGet(() -> RuleSets.bundled(DEFAULT_RULES)));
    }

    DropSettings settings(Drop drop) {
        Optional<Path> file = options.settings().map(NamedFiles::present).or(drop::settingsFile);
        return SettingsFiles.load(Optional.empty(), file, options.overrides());
    }

    RoofSystem system(DropSettings settings) {
        String nameOrFile = options.system().orElse(settings.system());
        if (nameOrFile.endsWith(".yaml") || nameOrFile.endsWith(".yml")) {
            return RoofSystems.load(present(Path.of(nameOrFile)));
        }
        return ofProgram("systems", nameOrFile)
                .map(file -> RoofSystems.load(file).shownAs(shown(file)))
                .orElseGet(() -> bundledSystem(nameOrFile));
    }

    /** Files of the program are told from its folder on, so that results do not depend on where it lies. */
    private String shown(Path file) {
        return options.home().relativize(file).toString().replace('\\', '/');
    }

    private RoofSystem bundledSystem(String name) {
        try {
            return RoofSystems.bundled(name);
        } catch (RuleException e) {
            throw new RuleException(
                    name + ": no roof system of that name." + knownSystems()
                            + " A file of your own is given with its ending, .yaml.",
                    e);
        }
    }

    private String knownSystems() {
        Path folder = rules().resolve("systems");
        if (!Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.substring(0, name.length() - ".yaml".length()))
                    .sorted()
                    .collect(Collectors.joining(", ", " Known: ", "."));
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be listed", e);
        }
    }

    private static Path present(Path file) {
        if (Files.isRegularFile(file)) {
            return file;
        }
        throw new RuleException(file + ": no such file.");
    }

    /** A file under the program's rules/, which people may edit or add to; the copy inside the program stands in for it. */
    private Optional<Path> ofProgram(String folder, String name) {
        return name.matches("[A-Za-z0-9._-]+")
                ? Optional.of(rules().resolve(folder).resolve(name + ".yaml")).filter(Files::isRegularFile)
                : Optional.empty();
    }

    private Path rules() {
        return options.home().resolve("rules");
    }
}
