package runtrue.cli.rules;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which rules are meant, and with which values. Empty means: as the drop's settings say, else the default.
 *
 * @param rules rule set
 * @param system name of a roof system, or the path of its file
 * @param settings used instead of the settings file beside a drop's models
 * @param overrides single settings by key
 * @param paths model files, or folders that hold some; may be empty
 */
public record RulesRequest(
        Optional<Path> rules,
        Optional<String> system,
        Optional<Path> settings,
        Map<String, String> overrides,
        List<Path> paths) {
    public RulesRequest {
        overrides = Map.copyOf(overrides);
        paths = List.copyOf(paths);
    }
}
