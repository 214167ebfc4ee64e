package runtrue.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import runtrue.cli.rules.RulesCommand;

/** The command {@code runtrue} itself: names its sub-commands and does nothing else. */
final class RuntrueCommand implements Callable<Integer> {
    private final CommandSpec spec = CommandSyntax.addStandardOptions(CommandSpec.wrapWithoutInspection(this));

    private RuntrueCommand() {
        spec.name("runtrue");
        spec.usageMessage().header("Checks profiled metal roofs in IFC models and takes off what to order for them.");
        spec.usageMessage().synopsisSubcommandLabel("COMMAND");
        spec.usageMessage().footer("", "Try it:  runtrue check sample-models", "More:    runtrue help check");
    }

    /** The whole command line; the factory makes what checks the drops. */
    static CommandLine commandLine(DropCheck.Factory factory) {
        CommandSpec root = new RuntrueCommand().spec;
        root.addSubcommand("check", new CheckCommand(factory).spec());
        root.addSubcommand(
                "rules", CommandSyntax.addStandardOptions(new RulesCommand(new RulesOfFiles(factory)).spec()));
        root.addSubcommand("completion", new CompletionCommand().spec());
        root.addSubcommand("help", new HelpCommand().spec());
        CommandLine line = new CommandLine(root);
        line.setExpandAtFiles(false); // a file name may start with @
        line.setParameterExceptionHandler(RuntrueCommand::explain);
        line.setExecutionExceptionHandler((e, command, result) -> {
            FaultReport.print(command.getErr(), String.join(" ", result.originalArgs()), e);
            return ExitCode.FAILED;
        });
        return line;
    }

    private static int explain(ParameterException e, String[] args) {
        CommandLine line = e.getCommandLine();
        PrintWriter err = line.getErr();
        err.println(e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
        err.println("See: " + line.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return ExitCode.USAGE;
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "No command given.");
    }
}
