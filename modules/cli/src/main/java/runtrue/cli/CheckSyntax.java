package runtrue.cli;

import static runtrue.cli.words.Options.given;
import static runtrue.cli.words.Options.option;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import runtrue.cli.words.Options;
import runtrue.geometryserver.EngineUse;
import runtrue.report.bcf.BcfVersion;
import runtrue.report.bcf.IssueGrouping;

/**
 * Words of {@code runtrue check}: its options and help, and the values given. Built by hand and not from annotations,
 * whose reading by reflection would take tens of milliseconds at every start.
 */
final class CheckSyntax {
    private static final Map<String, String> EXIT_CODES = CommandSyntax.ordered(
            "0", "everything was read and judged, and conforms",
            "1", "the program failed, results could not be written, or no drop could be read",
            "2", "the command cannot be carried out as given; nothing was checked",
            "3", "something does not conform",
            "4", "nothing is known not to conform, but something was not read or not assessed");

    private final PositionalParamSpec paths = PositionalParamSpec.builder()
            .paramLabel("PATH")
            .arity("1..*")
            .type(List.class)
            .auxiliaryTypes(Path.class)
            .description("Model files, or folders that hold some.")
            .build();

    private final OptionSpec rules =
            option(Path.class, "FILE", "Rule set. Default: the one in rules/ that comes with the program.", "--rules");

    private final OptionSpec system = option(
            String.class,
            "NAME|FILE",
            "Roof system: one of those in rules/, or a file of your own with its maker's values. Default: as the"
                    + " drop's settings say.",
            "--system");

    private final OptionSpec settings = option(
            Path.class,
            "FILE",
            "Settings for all drops. Default: runtrue.yaml beside the models, where there is one.",
            "--settings");

    private final OptionSpec overrides = Options.overrides();

    private final OptionSpec rates = option(
            Path.class,
            "FILE",
            "Rates for the quantities, .csv or .xlsx with the columns item, unit, rate, currency. Default: rates.csv or"
                    + " rates.xlsx beside the models, where there is one.",
            "--rates");

    private final OptionSpec since = option(
            Path.class,
            "FOLDER",
            "Results of an earlier check, to tell what is new, changed or gone since then: a folder that was written by"
                    + " --output, or the result.json of one drop. It may be the folder that is written to now.",
            "--since");

    private final OptionSpec output = option(
            Path.class, "FOLDER", "Where the results go. Default: output/ beside the program.", "-o", "--output");

    private final OptionSpec failOn = OptionSpec.builder("--fail-on")
            .paramLabel("OUTCOME")
            .type(List.class)
            .auxiliaryTypes(FailOn.class)
            .converters(new FailOn.Words())
            .completionCandidates(new FailOn.Words())
            .splitRegex(",")
            .description(
                    "Outcomes that make the exit code 3 or 4: non-conforming, not-assessed, unread (an element or a"
                            + " file), several with commas, or never. Default: non-conforming,not-assessed,unread.")
            .build();

    private final OptionSpec geometry = OptionSpec.builder("--geometry")
            .paramLabel("WHICH")
            .type(EngineUse.class)
            .converters(new EngineWords())
            .completionCandidates(new EngineWords())
            .description(
                    "Who reads shapes. built-in: the built-in reader alone. fill-in: IfcOpenShell, a native program"
                            + " that is started for it, where the built-in reader cannot (IFC2X3). second: IfcOpenShell"
                            + " for all elements. compare: as fill-in, and elements on which the two differ are listed."
                            + " Default: fill-in.")
            .build();

    private final OptionSpec geometryProgram = option(
            Path.class,
            "FILE",
            "IfcGeomServer executable of IfcOpenShell to start instead of the one that comes along, which knows IFC2X3"
                    + " alone. It must speak the protocol of version 0.5.",
            "--geometry-program");

    private final OptionSpec issues = OptionSpec.builder("--bcf")
            .paramLabel("VERSION")
            .type(BcfVersion.class)
            .converters(new BcfWords())
            .completionCandidates(new BcfWords())
            .description("Version of the BIM Collaboration Format that issues.bcf is written in: 2.1 or 3.0."
                    + " Default: 2.1, which most programs read.")
            .build();

    private final OptionSpec issuesBy = OptionSpec.builder("--issues-by")
            .paramLabel("WHAT")
            .type(IssueGrouping.class)
            .converters(new GroupingWords())
            .completionCandidates(new GroupingWords())
            .description("What makes one topic of issues.bcf: each finding, or all of one rule or of one plane."
                    + " Default: finding.")
            .build();

    private final OptionSpec threads = option(
            Integer.class,
            "N",
            "Threads to work with. Results are the same with any number. Default: one for each processor.",
            "--threads");

    private final OptionSpec quiet = OptionSpec.builder("-q", "--quiet")
            .type(boolean.class)
            .description("No progress and no notes; only errors and the table.")
            .build();

    CommandSpec addTo(CommandSpec spec) {
        spec.addPositional(paths);
        for (OptionSpec option : List.of(
                rules,
                system,
                settings,
                overrides,
                rates,
                since,
                output,
                failOn,
                geometry,
                geometryProgram,
                issues,
                issuesBy,
                threads,
                quiet)) {
            spec.addOption(option);
        }
        CommandSyntax.addStandardOptions(spec);
        UsageMessageSpec usage = spec.usageMessage();
        usage.sortOptions(false);
        usage.customSynopsis("runtrue check [OPTION]... PATH...");
        usage.header("Judge every roof plane of one or more model drops and take off quantities.");
        usage.description(DESCRIPTION);
        usage.parameterListHeading("What to check:%n");
        usage.optionListHeading("%nOptions:%n");
        usage.exitCodeListHeading("%nExit codes:%n");
        usage.exitCodeList(EXIT_CODES);
        usage.footer(FOOTER);
        return spec;
    }

    List<Path> paths() {
        return given(paths, List.<Path>of());
    }

    Optional<Path> rules() {
        return Optional.ofNullable(rules.getValue());
    }

    Optional<String> system() {
        return Optional.ofNullable(system.getValue());
    }

    Optional<Path> settings() {
        return Optional.ofNullable(settings.getValue());
    }

    Map<String, String> overrides() {
        return given(overrides, Map.<String, String>of());
    }

    Optional<Path> rates() {
        return Optional.ofNullable(rates.getValue());
    }

    Optional<Path> since() {
        return Optional.ofNullable(since.getValue());
    }

    Optional<Path> output() {
        return Optional.ofNullable(output.getValue());
    }

    /** Empty when not given. */
    List<FailOn> failOn() {
        return given(failOn, List.<FailOn>of());
    }

    EngineUse geometry() {
        return given(geometry, EngineUse.FILL_IN);
    }

    Optional<Path> geometryProgram() {
        return Optional.ofNullable(geometryProgram.getValue());
    }

    BcfVersion issues() {
        return given(issues, BcfVersion.V2_1);
    }

    IssueGrouping issuesBy() {
        return given(issuesBy, IssueGrouping.FINDING);
    }

    int threads() {
        return given(threads, Runtime.getRuntime().availableProcessors());
    }

    boolean quiet() {
        return given(quiet, false);
    }

    private static final String[] DESCRIPTION = {
        "",
        "A drop is a set of model files issued together, in common coordinates; roof and steel usually come as"
                + " separate files. Give a folder that holds a drop, a folder of such folders (each is checked as a"
                + " drop of its own), or the files of one drop. .ifc and .ifczip files of IFC2X3, IFC4 and IFC4X3 are"
                + " read.",
        "",
        "For each drop a folder is written: report.html (a page to start with: outcome, worst finding, plan and 3D),"
                + " quantities.xlsx (what to order), non-conformances.xlsx (what does not meet the rules, and what could"
                + " not be judged and why), non-conformances.pdf (the same, a page each, to be sent out), issues.bcf (to be"
                + " opened beside the model), roof-plan-1.svg and so on (a drawing of each roof to scale), set-out.dxf (the"
                + " roofs in true place and size, for setting out) and result.json, findings.csv, quantities.csv and"
                + " test-cases.xml (the same for other programs). A short table goes to standard output, everything else to"
                + " standard error.",
        ""
    };

    private static final String[] FOOTER = {
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
        "  runtrue check drops --since checks/2026-02 --output checks/2026-03",
        "      and what became of each finding and quantity since the check before",
        "  runtrue check hall --set rolling_limit=60m",
        "      one setting changed for this run"
    };

    /** {@code fill-in} and the like. */
    private static final class BcfWords extends OptionWords<BcfVersion> {
        BcfWords() {
            super(BcfVersion.values());
        }
    }

    private static final class GroupingWords extends OptionWords<IssueGrouping> {
        GroupingWords() {
            super(IssueGrouping.values());
        }
    }

    private static final class EngineWords extends OptionWords<EngineUse> {
        EngineWords() {
            super(EngineUse.values());
        }
    }
}
