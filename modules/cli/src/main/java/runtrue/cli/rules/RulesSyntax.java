package runtrue.cli.rules;

import static runtrue.cli.words.Options.given;
import static runtrue.cli.words.Options.option;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import runtrue.cli.words.Options;

/** Words of {@code runtrue rules}: its options and help, and the values given. */
final class RulesSyntax {
    private final PositionalParamSpec paths = PositionalParamSpec.builder()
            .paramLabel("PATH")
            .arity("0..*")
            .type(List.class)
            .auxiliaryTypes(Path.class)
            .description("Of a finding: the model files of its drop, or the folder that holds them. Else a folder whose"
                    + " runtrue.yaml says which rule set, roof system and settings are meant.")
            .build();

    private final OptionSpec rules = option(
            Path.class, "FILE", "Rule set. Default: as the drop's settings say, else the one in rules/.", "--rules");

    private final OptionSpec system = option(
            String.class, "NAME|FILE", "Roof system whose values are shown. Default: as the settings say.", "--system");

    private final OptionSpec settings =
            option(Path.class, "FILE", "Settings. Default: runtrue.yaml in PATH, where there is one.", "--settings");

    private final OptionSpec overrides = Options.overrides();

    private final OptionSpec test = OptionSpec.builder("--test")
            .type(boolean.class)
            .description("Try all examples of the rule set, and name the rules that lack one of an outcome.")
            .build();

    private final OptionSpec rule = option(
            String.class,
            "ID",
            "Explain one rule: what it reads, its definitions, tables and limits with their values, its examples.",
            "--rule");

    private final OptionSpec finding = option(
            String.class,
            "ID",
            "Explain one finding of the drop in PATH step by step: every expression with its value, every fact with where"
                    + " it comes from. The drop is read and judged again; give the options that it was checked with.",
            "--finding");

    private final OptionSpec ids = option(
            Path.class,
            "FILE",
            "Write what the rule set needs from models as an Information Delivery Specification (IDS 1.0).",
            "--ids");

    CommandSpec addTo(CommandSpec spec) {
        spec.addPositional(paths);
        for (OptionSpec option : List.of(rules, system, settings, overrides, test, rule, finding, ids)) {
            spec.addOption(option);
        }
        UsageMessageSpec usage = spec.usageMessage();
        usage.sortOptions(false);
        usage.customSynopsis("runtrue rules [OPTION]... [PATH]...");
        usage.header("List, test and explain the rules that drops are judged by.");
        usage.description(
                "",
                "Without --test, --rule, --finding or --ids, lists the rules in force: what each is for, what it asks,"
                        + " where its limit comes from, and the file and line it stands at. The rule set is checked in any"
                        + " case; all that is wrong with it is told with file, line and column.",
                "");
        usage.optionListHeading("%nOptions:%n");
        usage.exitCodeListHeading("%nExit codes:%n");
        usage.exitCodeList(exitCodes());
        usage.footer(
                "",
                "Examples:",
                "  runtrue rules",
                "  runtrue rules --test --rules ours.yaml",
                "  runtrue rules --rule minimum-pitch",
                "  runtrue rules --ids needed.ids",
                "  runtrue rules --finding internal-span-589a201a17 sample-models/kiln-hall");
        return spec;
    }

    private static Map<String, String> exitCodes() {
        Map<String, String> codes = new LinkedHashMap<>();
        codes.put(String.valueOf(RulesCommand.DONE), "the rule set is sound; with --test, all its examples hold");
        codes.put(String.valueOf(RulesCommand.FAILED), "the program failed, or a file could not be written");
        codes.put(
                String.valueOf(RulesCommand.USAGE),
                "the rule set or another file is wrong, or the command cannot be carried out as given");
        codes.put(String.valueOf(RulesCommand.EXAMPLE_FAILS), "with --test: an example does not hold");
        codes.put(
                String.valueOf(RulesCommand.EXAMPLE_LACKING),
                "with --test: all examples hold, but a rule lacks one of an outcome");
        return codes;
    }

    RulesRequest request() {
        return new RulesRequest(
                Optional.ofNullable(rules.getValue()),
                Optional.ofNullable(system.getValue()),
                Optional.ofNullable(settings.getValue()),
                given(overrides, Map.<String, String>of()),
                given(paths, List.<Path>of()));
    }

    boolean test() {
        return given(test, false);
    }

    Optional<String> rule() {
        return Optional.ofNullable(rule.getValue());
    }

    Optional<String> finding() {
        return Optional.ofNullable(finding.getValue());
    }

    Optional<Path> ids() {
        return Optional.ofNullable(ids.getValue());
    }
}
