package runtrue.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.drop.Drop;
import runtrue.report.rates.RateFiles;
import runtrue.result.build.RateList;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUps;
import runtrue.rules.example.RuleBook;
import runtrue.rules.example.RuleBooks;
import runtrue.rules.extend.RuleFile;
import runtrue.rules.yaml.YamlFile;

/**
 * The rule set, roof system, build-up, rates and settings that the options name, or those that come with the program. What is named but is
 * not there, or is wrong, ends in a {@link RuleException} that says so.
 */
record NamedFiles(CheckOptions options) {
    private static final String DEFAULT_RULES = "long-run-sheets";

    /** For systems that name none: the plainest. */
    private static final String DEFAULT_BUILD_UP = "single-skin";

    /** The usual one: that of the options, or else the program's. */
    RuleSet ruleSet() {
        return shown(RuleSets.load(usual(), Optional.empty()));
    }

    /** The rule set of a drop whose settings name one or change the usual one; empty where they do neither. */
    Optional<RuleSet> ruleSet(DropSettings settings) {
        return (settings.ruleSet().isEmpty() || options.rules().isPresent()) && !settings.changesRules()
                ? Optional.empty()
                : Optional.of(shown(RuleSets.load(ruleFile(settings), changing(settings))));
    }

    /** The rule set that holds with these settings, with its examples. */
    RuleBook ruleBook(DropSettings settings) {
        RuleBook book = RuleBooks.read(ruleFile(settings), changing(settings));
        return book.shownAs(shown(book.rules()).file());
    }

    /** The command line goes before the drop's settings. */
    private RuleFile ruleFile(DropSettings settings) {
        if (settings.ruleSet().isEmpty() || options.rules().isPresent()) {
            return usual();
        }
        Path beside = Path.of(settings.file());
        return new RuleFile(new YamlFile(settings.file(), ""), Optional.of(beside), ruleSets())
                .named(settings.ruleSet())
                .orElseThrow(() -> new RuleException(settings.origins().getOrDefault("rule_set", settings.file())
                        + ": there is no rule set \"" + settings.ruleSet()
                        + "\" beside this file or among those of the program."
                        + known("rule-sets")));
    }

    private static Optional<Path> changing(DropSettings settings) {
        return settings.changesRules() ? Optional.of(Path.of(settings.file())) : Optional.empty();
    }

    private RuleFile usual() {
        return options.rules()
                .map(NamedFiles::present)
                .or(() -> ofProgram("rule-sets", DEFAULT_RULES))
                .map(file -> RuleFile.of(file, ruleSets()))
                .orElseGet(() -> RuleFile.bundled(DEFAULT_RULES));
    }

    private Optional<Path> ruleSets() {
        return Optional.of(rules().resolve("rule-sets")).filter(Files::isDirectory);
    }

    /** Files of the program's rules are told from its folder on, so that results do not depend on where it lies. */
    private RuleSet shown(RuleSet rules) {
        return ofProgram("rule-sets", DEFAULT_RULES)
                .filter(file -> options.rules().isEmpty() && rules.file().equals(file.toString()))
                .map(file -> rules.shownAs(shown(file)))
                .orElse(rules);
    }

    DropSettings settings(Drop drop) {
        return settings(drop.settingsFile());
    }

    /**
     * Settings by the options.
     *
     * @param ofDrop the drop's own file
     */
    DropSettings settings(Optional<Path> ofDrop) {
        return SettingsFiles.load(
                Optional.empty(), options.settings().map(NamedFiles::present).or(() -> ofDrop), options.overrides());
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

    /** The build-up that the drop's settings name, or else its roof system. */
    BuildUp buildUp(DropSettings settings, RoofSystem system) {
        String name = Optional.ofNullable(settings.texts().get("build_up"))
                .or(() -> Optional.ofNullable(system.texts().get("build_up")))
                .orElse(DEFAULT_BUILD_UP);
        return ofProgram("build-ups", name)
                .map(file -> BuildUps.load(file).shownAs(shown(file)))
                .orElseGet(() -> bundledBuildUp(name));
    }

    private BuildUp bundledBuildUp(String name) {
        try {
            return BuildUps.bundled(name);
        } catch (RuleException e) {
            throw new RuleException(name + ": no build-up of that name." + known("build-ups"), e);
        }
    }

    /** The rate file that the options name, or else the one beside the models. */
    Optional<RateList> rates(Drop drop) {
        return options.rates()
                .map(NamedFiles::present)
                .or(() -> RateFiles.NAMES.stream()
                        .map(drop.folder()::resolve)
                        .filter(Files::isRegularFile)
                        .filter(file -> drop.files().stream()
                                .allMatch(f -> drop.folder().equals(f.path().getParent())))
                        .findFirst())
                .map(RateFiles::read);
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
                    name + ": no roof system of that name." + known("systems")
                            + " A file of your own is given with its ending, .yaml.",
                    e);
        }
    }

    private String known(String kind) {
        Path folder = rules().resolve(kind);
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
