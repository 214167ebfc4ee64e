package runtrue.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import picocli.CommandLine;

/** Runs the command line with captured writers. */
record CommandRun(int exitCode, String out, String err) {
    static CommandRun of(DropCheck.Factory factory, Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = RuntrueCommand.commandLine(factory);
        line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = args[i] instanceof Path path ? path.toString() : String.valueOf(args[i]);
        }
        int code = line.execute(words);
        return new CommandRun(
                code, out.toString().replace("\r\n", "\n"), err.toString().replace("\r\n", "\n"));
    }
}
