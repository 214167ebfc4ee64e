package runtrue.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code runtrue} itself: names its sub-commands and does nothing else. */
@Command(
        name = "runtrue",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Checks profiled metal roofs in IFC models and takes off what to order for them.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Try it:  runtrue check sample-models", "More:    runtrue help check"})
final class RuntrueCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    /** The whole command line; the factory makes what checks the drops. */
    static CommandLine commandLine(DropCheck.Factory factory) {
        CommandLine line = new CommandLine(new RuntrueCommand());
        line.addSubcommand("check", new CommandLine(new CheckCommand(factory)));
        line.addSubcommand("completion", new CommandLine(new CompletionCommand()));
        line.addSubcommand("help", new CommandLine(new HelpCommand()));
        line.setUsageHelpAutoWidth(false).setUsageHelpWidth(100);
        line.setExpandAtFiles(false); // a file name may start with @
        line.setParameterExceptionHandler((e, args) -> {
            e.getCommandLine().getErr().println(e.getMessage());
            CommandLine.UnmatchedArgumentException.printSuggestions(
                    e, e.getCommandLine().getErr());
            e.getCommandLine()
                    .getErr()
                    .println("See: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
            e.getCommandLine().getErr().flush();
            return ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler((e, command, result) -> {
            FaultReport.print(command.getErr(), String.join(" ", result.originalArgs()), e);
            return ExitCode.FAILED;
        });
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command given.");
    }
}
