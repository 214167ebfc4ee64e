package runtrue.bill.count;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Test data beside the repository; tests are skipped where it is missing. */
final class SharedFiles {
    private SharedFiles() {}

    static Path folder(String name) {
        String other = System.getProperty("rt.shared");
        Path shared =
                other == null ? Path.of(System.getProperty("runtrue.root")).resolveSibling("shared") : Path.of(other);
        Path folder = shared.resolve(name);
        assumeTrue(Files.isDirectory(folder), () -> folder + " is not there: skipped");
        return folder;
    }
}
