package runtrue.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;

/** {@code runtrue help COMMAND}: the same as {@code runtrue COMMAND --help}. */
final class HelpCommand implements Callable<Integer> {
    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    private final PositionalParamSpec command = PositionalParamSpec.builder()
            .paramLabel("COMMAND")
            .arity("0..1")
            .type(String.class)
            .description("The command to explain.")
            .build();

    CommandSpec spec() {
        spec.helpCommand(true).addPositional(command);
        spec.usageMessage().header("Explain a command.");
        return spec;
    }

    @Override
    public Integer call() {
        CommandLine root = spec.root().commandLine();
        @Nullable String name = command.getValue();
        CommandLine line = name == null ? root : root.getSubcommands().get(name);
        if (line == null) {
            throw new ParameterException(
                    root,
                    "No command '" + name + "'; there are "
                            + String.join(", ", root.getSubcommands().keySet()) + ".");
        }
        line.usage(root.getOut());
        return ExitCode.CONFORMING;
    }
}
