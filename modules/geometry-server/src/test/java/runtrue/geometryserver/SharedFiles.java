package runtrue.geometryserver;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

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
}
