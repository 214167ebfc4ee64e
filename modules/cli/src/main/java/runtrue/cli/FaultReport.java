package runtrue.cli;

import java.io.PrintWriter;

/** What is said of a fault of the program itself: unlike a person's mistake it comes with all that a report needs. */
final class FaultReport {
    private FaultReport() {}

    static void print(PrintWriter err, String input, Throwable fault) {
        err.println("Runtrue failed on " + input + ".");
        err.println(
                "This is a fault of the program, not of the model. Please report it with the lines below and, if you"
                        + " may, the model.");
        err.println("  Runtrue " + Version.number() + ", Java " + System.getProperty("java.version") + " ("
                + System.getProperty("java.vendor") + "), " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch"));
        fault.printStackTrace(err);
        err.flush();
    }
}
