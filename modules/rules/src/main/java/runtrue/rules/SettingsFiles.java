package runtrue.rules;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.read.Bundled;
import runtrue.rules.read.SettingsReader;
import runtrue.rules.yaml.YamlFile;

/** Loads settings. */
public final class SettingsFiles {
    /** Name of a drop's settings file, beside its models. */
    public static final String NAME = "runtrue.yaml";

    private SettingsFiles() {}

    /**
     * Settings of one drop.
     *
     * @param defaults to start from; empty for those that come with the program
     * @param drop the drop's own file, if it has one
     * @param commandLine by dotted name, for example {@code uplift.edge} to {@code 1.2 kPa}
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static DropSettings load(Optional<Path> defaults, Optional<Path> drop, Map<String, String> commandLine) {
        List<YamlFile> files = new ArrayList<>();
        files.add(defaults.map(YamlFile::read).orElseGet(() -> Bundled.file("settings", "defaults")));
        drop.map(YamlFile::read).ifPresent(files::add);
        return SettingsReader.read(files, commandLine, drop.map(Path::toString).orElse(""));
    }
}
