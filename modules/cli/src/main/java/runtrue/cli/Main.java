package runtrue.cli;

/** Where the program starts. Plugs the check into the command line and hands the exit code to the shell. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(RuntrueCommand.commandLine(Main::check).execute(args));
    }

    private static DropCheck check(CheckOptions options) {
        throw CheckException.ofOptions(
                "This build does not check yet: the stages are not plugged in.", new IllegalStateException());
    }
}
