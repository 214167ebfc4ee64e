package runtrue.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import runtrue.drop.Drop;
import runtrue.drop.DropException;
import runtrue.drop.Drops;

/** {@code runtrue check}: finds the drops, has each one checked, prints the table, gives the exit code. */
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_THREADS = 512;

    private final DropCheck.Factory factory;
    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    private final CheckSyntax given = new CheckSyntax();

    CheckCommand(DropCheck.Factory factory) {
        this.factory = factory;
    }

    CommandSpec spec() {
        return given.addTo(spec);
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Set<FailOn> failing = failing();
        int threads = given.threads();
        if (threads < 1 || threads > MOST_THREADS) {
            throw usage("--threads is " + threads + "; allowed 1 to " + MOST_THREADS + ".");
        }
        List<String> passedOver = new ArrayList<>();
        try {
            List<Drop> drops = Drops.find(given.paths(), passedOver::add);
            if (!given.quiet()) {
                passedOver.forEach(err::println);
            }
            OutputFolder folder = OutputFolder.open(outputFolder());
            DropCheck check = factory.with(options());
            List<DropReport> reports = new Batch(check, folder, threads, style(), err).run(drops);
            print(reports);
            return Verdict.of(reports, !passedOver.isEmpty(), failing);
        } catch (DropException | CheckException | OutputException e) {
            err.println(e.getMessage());
            err.flush();
            return ExitCode.USAGE;
        }
    }

    private Set<FailOn> failing() {
        List<FailOn> failOn = given.failOn();
        if (failOn.isEmpty()) {
            return EnumSet.complementOf(EnumSet.of(FailOn.NEVER));
        }
        if (failOn.contains(FailOn.NEVER) && failOn.stream().distinct().count() > 1) {
            throw usage("--fail-on: 'never' cannot be combined with other outcomes.");
        }
        return EnumSet.copyOf(failOn);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private CheckOptions options() {
        return new CheckOptions(
                given.rules(),
                given.system(),
                given.settings(),
                given.overrides(),
                given.rates(),
                given.since(),
                home(),
                given.threads(),
                given.geometry(),
                given.geometryProgram(),
                given.issues(),
                given.issuesBy());
    }

    /** Set by the launcher; without it the program is at home where it was started. */
    private static Path home() {
        return Path.of(System.getProperty("runtrue.home", ""));
    }

    private Path outputFolder() {
        return given.output().orElseGet(() -> home().resolve("output"));
    }

    /** The launcher says whether standard error is a terminal: it can tell, and Java cannot on every version. */
    private ProgressDisplay.Style style() {
        if (given.quiet()) {
            return ProgressDisplay.Style.NONE;
        }
        return Boolean.getBoolean("runtrue.terminal") ? ProgressDisplay.Style.BAR : ProgressDisplay.Style.LINES;
    }

    private void print(List<DropReport> reports) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(OutcomeTable.of(reports));
        if (reports.stream().anyMatch(r -> r.checked().isPresent())) {
            out.println("Results: " + outputFolder());
        }
        out.flush();
    }
}
