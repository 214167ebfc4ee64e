package runtrue.rules.yaml;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import runtrue.rules.RuleException;

/**
 * A YAML file as read. Bounded: 1 MiB of text, 20 000 values after aliases are followed, 30 levels deep.
 *
 * @param name for messages
 * @param text as it stands in the file
 */
public record YamlFile(String name, String text) {
    private static final int MOST_BYTES = 1 << 20;

    /**
     * The file's text, not yet parsed.
     *
     * @throws RuleException when the file cannot be read or is too large
     */
    public static YamlFile read(Path path) {
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw new RuleException(path + ": is larger than 1 MiB; a file of this kind never is");
            }
            return new YamlFile(path.toString(), Files.readString(path));
        } catch (IOException e) {
            throw new RuleException(path + ": cannot be read (" + e + "); check the path and the encoding (UTF-8)", e);
        }
    }

    /** SHA-256 of the text in UTF-8, lower-case hexadecimal. */
    public String hash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The one document of the file, which must be a mapping; empty, with the reason in {@code problems}, if it is not. */
    public Optional<YamlValue.Mapping> parse(Problems problems) {
        Optional<YamlValue> root = compose(problems).flatMap(node -> new NodeReader(name, text, problems).read(node));
        if (root.isEmpty()) {
            if (!problems.any()) {
                problems.add(new Place(name, 1, 1), "the file is empty");
            }
            return Optional.empty();
        }
        if (root.get() instanceof YamlValue.Mapping mapping) {
            return Optional.of(mapping);
        }
        problems.add(root.get().place(), "expected keys and values here");
        return Optional.empty();
    }

    private Optional<Node> compose(Problems problems) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(name)
                .setUseMarks(true)
                .setParseComments(false)
                .setCodePointLimit(MOST_BYTES)
                .build();
        try {
            return new Compose(settings).composeString(text);
        } catch (MarkedYamlEngineException e) {
            Place place = e.getProblemMark()
                    .map(mark -> new Place(name, mark.getLine() + 1, mark.getColumn() + 1))
                    .orElse(new Place(name, 1, 1));
            problems.add(place, "not readable as YAML: " + e.getProblem());
        } catch (YamlEngineException e) {
            problems.add(new Place(name, 1, 1), "not readable as YAML: " + e.getMessage());
        }
        return Optional.empty();
    }
}
