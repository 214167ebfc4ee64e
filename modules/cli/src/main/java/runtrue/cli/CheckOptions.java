package runtrue.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import runtrue.geometryserver.EngineUse;
import runtrue.report.bcf.BcfVersion;
import runtrue.report.bcf.IssueGrouping;

/**
 * What the command line asks of every drop. Empty means: as the drop's own settings say, else the default.
 *
 * @param rules rule set
 * @param system name of a roof system, or the path of its file
 * @param settings used instead of the settings file beside a drop's models
 * @param overrides single settings by key; they win over any settings file
 * @param rates rate file, used instead of one beside a drop's models
 * @param since results of an earlier check to compare with
 * @param home folder of the program, where {@code rules/} lies
 * @param threads at least 1
 * @param geometry what the second geometry engine is asked for
 * @param geometryProgram executable of that engine in place of the one that comes along
 * @param issues version of the format that the issue file is written in
 * @param issuesBy what makes one topic of it
 */
record CheckOptions(
        Optional<Path> rules,
        Optional<String> system,
        Optional<Path> settings,
        Map<String, String> overrides,
        Optional<Path> rates,
        Optional<Path> since,
        Path home,
        int threads,
        EngineUse geometry,
        Optional<Path> geometryProgram,
        BcfVersion issues,
        IssueGrouping issuesBy) {
    CheckOptions {
        overrides = Map.copyOf(overrides);
    }
}
