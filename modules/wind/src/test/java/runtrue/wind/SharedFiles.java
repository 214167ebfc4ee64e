package runtrue.wind;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Finds the shared reference data; tests that need it are skipped where it is missing. */
public final class SharedFiles {
    private SharedFiles() {}

    /** A path below the shared folder: property {@code rt.shared} when set, else beside the repository. */
    public static Path of(String relative) {
        String given = System.getProperty("rt.shared");
        Path shared = given != null ? Path.of(given) : Path.of(System.getProperty("runtrue.root", "."), "..", "shared");
        Path path = shared.resolve(relative).normalize();
        assumeTrue(Files.exists(path), "shared test data is missing: " + relative);
        return path;
    }

    /** Cells of a table of the reference data, without its first line. */
    public static List<String[]> table(String name) throws IOException {
        return Files.readAllLines(of("reference/" + name)).stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }
}
