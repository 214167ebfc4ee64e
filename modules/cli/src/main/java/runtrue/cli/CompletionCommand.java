package runtrue.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;

/** {@code runtrue completion}: prints what makes a shell complete this program's words. */
final class CompletionCommand implements Callable<Integer> {
    private final CommandSpec spec = CommandSyntax.addStandardOptions(CommandSpec.wrapWithoutInspection(this));

    CommandSpec spec() {
        spec.usageMessage().header("Print a completion script for bash or zsh.");
        spec.usageMessage()
                .description(
                        "",
                        "Let the shell complete options and their values. For this shell only:",
                        "",
                        "  source <(runtrue completion)",
                        "",
                        "For every shell, add that line to ~/.bashrc or ~/.zshrc.");
        return spec;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
        out.flush();
        return ExitCode.CONFORMING;
    }
}
