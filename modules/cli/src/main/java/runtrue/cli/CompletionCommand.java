package runtrue.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "completion",
        header = "Print a completion script for bash or zsh.",
        description = {
            "",
            "Let the shell complete options and their values. For this shell only:",
            "",
            "  source <(runtrue completion)",
            "",
            "For every shell, add that line to ~/.bashrc or ~/.zshrc."
        })
final class CompletionCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    @Override
    public void run() {
        var out = spec.commandLine().getOut();
        out.print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
        out.flush();
    }
}
