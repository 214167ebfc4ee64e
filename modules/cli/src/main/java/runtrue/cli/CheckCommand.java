package runtrue.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import runtrue.drop.Drop;
import runtrue.drop.DropException;
import runtrue.drop.Drops;

/** {@code runtrue check}: finds the drops, has each one checked, prints the table, gives the exit code. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        usageHelpWidth = 100,
        abbreviateSynopsis = true,
        customSynopsis = "runtrue check [OPTION]... PATH...",
        header = "Judge every roof plane of one or more model drops and take off quantities.",
        description = {
            "",
            "A drop is a set of model files issued together, in common coordinates; roof and steel usually come as"
                    + " separate files. Give a folder that holds a drop, a folder of such folders (each is checked as a"
                    + " drop of its own), or the files of one drop. .ifc and .ifczip files of IFC2X3, IFC4 and IFC4X3 are"
                    + " read.",
            "",
            "For each drop a folder is written: quantities.xlsx (what to order), non-conformances.xlsx (what does not"
                    + " meet the rules, and what could not be judged and why) and result.json (the same for other"
                    + " programs). A short table goes to standard output, everything else to standard error.",
            ""
        },
        parameterListHeading = "What to check:%n",
        optionListHeading = "%nOptions:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:everything was read and judged, and conforms",
            "1:the program failed, results could not be written, or no drop could be read",
            "2:the command cannot be carried out as given; nothing was checked",
            "3:something does not conform",
            "4:nothing is known not to conform, but something was not read or not assessed"
        },
        footer = {
            "",
            "Where several apply, the first of 2, 1, 3, 4 is given. --fail-on chooses which of 3 and 4 count.",
            "",
            "Examples:",
            "  runtrue check sample-models",
            "      a folder of drops; results in output/, one folder for each",
            "  runtrue check roof.ifc steel.ifc --output checks/2026-03",
            "      two files as one drop",
            "  runtrue check drops --system rules/systems/ours.yaml --fail-on non-conforming",
            "      your own roof system; gaps in the model do not change the exit code",
            "  runtrue check hall --set rolling.length=60m",
            "      one setting changed for this run"
        })
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_THREADS = 512;

    private final DropCheck.Factory factory;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    @Parameters(paramLabel = "PATH", arity = "1..*", description = "Model files, or folders that hold some.")
    private List<Path> paths = new ArrayList<>();

    @Option(
            names = "--rules",
            paramLabel = "FILE",
            description = "Rule set. Default: the one in rules/ that comes with the program.")
    private @Nullable Path rules;

    @Option(
            names = "--system",
            paramLabel = "NAME|FILE",
            description = "Roof system: one of those in rules/, or a file of your own with its maker's values."
                    + " Default: as the drop's settings say.")
    private @Nullable String system;

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "Settings for all drops. Default: runtrue.yaml beside the models, where there is one.")
    private @Nullable Path settings;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "One setting, over those of the settings file. May be given more than once.")
    private Map<String, String> overrides = new LinkedHashMap<>();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "Where the results go. Default: output/ beside the program.")
    private @Nullable Path output;

    @Option(
            names = "--fail-on",
            paramLabel = "OUTCOME",
            split = ",",
            converter = FailOn.Converter.class,
            completionCandidates = FailOn.Candidates.class,
            description =
                    "Outcomes that make the exit code 3 or 4: non-conforming, not-assessed, unread (an element or a"
                            + " file), several with commas, or never. Default: non-conforming,not-assessed,unread.")
    private List<FailOn> failOn = new ArrayList<>();

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Threads to work with. Results are the same with any number. Default: one for each processor.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = {"-q", "--quiet"},
            description = "No progress and no notes; only errors and the table.")
    private boolean quiet;

    CheckCommand(DropCheck.Factory factory) {
        this.factory = factory;
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Set<FailOn> failing = failing();
        if (threads < 1 || threads > MOST_THREADS) {
            throw usage("--threads is " + threads + "; allowed 1 to " + MOST_THREADS + ".");
        }
        List<String> passedOver = new ArrayList<>();
        try {
            List<Drop> drops = Drops.find(paths, passedOver::add);
            if (!quiet) {
                passedOver.forEach(err::println);
            }
            OutputFolder folder = OutputFolder.open(outputFolder());
            DropCheck check = factory.with(options());
            List<DropReport> reports = new Batch(check, folder, threads, style(), err).run(drops);
            print(reports);
            return Verdict.of(reports, !passedOver.isEmpty(), failing);
        } catch (DropException | CheckException | OutputException e) {
            err.println(e.getMessage());
            err.flush();
            return ExitCode.USAGE;
        }
    }

    private Set<FailOn> failing() {
        if (failOn.isEmpty()) {
            return EnumSet.complementOf(EnumSet.of(FailOn.NEVER));
        }
        if (failOn.contains(FailOn.NEVER) && failOn.stream().distinct().count() > 1) {
            throw usage("--fail-on: 'never' cannot be combined with other outcomes.");
        }
        return EnumSet.copyOf(failOn);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private CheckOptions options() {
        return new CheckOptions(
                Optional.ofNullable(rules),
                Optional.ofNullable(system),
                Optional.ofNullable(settings),
                overrides,
                home(),
                threads);
    }

    /** Set by the launcher; without it the program is at home where it was started. */
    private static Path home() {
        return Path.of(System.getProperty("runtrue.home", ""));
    }

    private Path outputFolder() {
        return output == null ? home().resolve("output") : output;
    }

    /** The launcher says whether standard error is a terminal: it can tell, and Java cannot on every version. */
    private ProgressDisplay.Style style() {
        if (quiet) {
            return ProgressDisplay.Style.NONE;
        }
        return Boolean.getBoolean("runtrue.terminal") ? ProgressDisplay.Style.BAR : ProgressDisplay.Style.LINES;
    }

    private void print(List<DropReport> reports) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(OutcomeTable.of(reports));
        if (reports.stream().anyMatch(r -> r.checked().isPresent())) {
            out.println("Results: " + outputFolder());
        }
        out.flush();
    }
}
