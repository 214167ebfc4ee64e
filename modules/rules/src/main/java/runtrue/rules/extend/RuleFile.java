package runtrue.rules.extend;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.rules.RuleException;
import runtrue.rules.read.Bundled;
import runtrue.rules.yaml.YamlFile;

/**
 * A file of a rule set, and where it looks for those that it names.
 *
 * @param path empty for a file that comes inside the program
 * @param folder rule sets of the program's folder, where people may edit them; empty when there is none
 */
public record RuleFile(YamlFile yaml, Optional<Path> path, Optional<Path> folder) {
    private static final String BUNDLED = "rule-sets";
    private static final String EXAMPLES = "examples";

    /**
     * A file on disk.
     *
     * @throws RuleException when it cannot be read
     */
    public static RuleFile of(Path path, Optional<Path> folder) {
        return new RuleFile(YamlFile.read(path), Optional.of(path), folder);
    }

    /**
     * One that comes with the program.
     *
     * @throws RuleException when there is none of that name
     */
    public static RuleFile bundled(String name) {
        return new RuleFile(Bundled.file(BUNDLED, name), Optional.empty(), Optional.empty());
    }

    /** The file that this one names: beside it, or else among the program's. */
    public Optional<RuleFile> named(String name) {
        Optional<Path> found = Stream.concat(
                        path.map(p -> p.resolveSibling(name)).stream(), folder.map(f -> f.resolve(name)).stream())
                .filter(Files::isRegularFile)
                .findFirst();
        return found.map(p -> of(p, folder))
                .or(() -> Bundled.find(BUNDLED, name.replaceFirst("\\.ya?ml$", ""))
                        .map(yaml -> new RuleFile(yaml, Optional.empty(), folder)));
    }

    /** The file of the same name in the folder {@code examples} beside this one. */
    public Optional<YamlFile> examples() {
        if (path.isPresent()) {
            Path file = path.get()
                    .resolveSibling(EXAMPLES)
                    .resolve(String.valueOf(path.get().getFileName()));
            return Optional.of(file).filter(Files::isRegularFile).map(YamlFile::read);
        }
        String name = yaml.name().substring(yaml.name().lastIndexOf('/') + 1).replaceFirst("\\.yaml$", "");
        return Bundled.find(BUNDLED + "/" + EXAMPLES, name);
    }

    /** Tells a file from others, however it was named. */
    String identity() {
        return path.map(p -> p.toAbsolutePath().normalize().toString()).orElse(yaml.name());
    }
}
