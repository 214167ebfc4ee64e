package runtrue.cli;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Where the program starts. Plugs the check into the command line and hands the exit code to the shell. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(RuntrueCommand.commandLine(Main::check).execute(args));
    }

    private static DropCheck check(CheckOptions options) {
        return ModelCheck.with(options, runStamp());
    }

    /** Now, to the second; or the time that SOURCE_DATE_EPOCH asks for, so that a run can be repeated byte for byte. */
    private static Instant runStamp() {
        String epoch = System.getenv("SOURCE_DATE_EPOCH");
        return epoch != null && epoch.matches("\\d{1,11}")
                ? Instant.ofEpochSecond(Long.parseLong(epoch))
                : Instant.now().truncatedTo(ChronoUnit.SECONDS);
    }
}
