package runtrue.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What the help and options of all commands have in common. */
final class CommandSyntax {
    private static final int HELP_WIDTH = 100;

    private CommandSyntax() {}

    static CommandSpec addStandardOptions(CommandSpec spec) {
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this help message and exit.")
                .build());
        spec.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Print version information and exit.")
                .build());
        spec.versionProvider(new Version());
        spec.usageMessage().width(HELP_WIDTH);
        return spec;
    }

    /** Keys and values in turn; {@code Map.of} would not keep their order. */
    static Map<String, String> ordered(String... keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }
}
