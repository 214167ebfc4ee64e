package runtrue.step;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds the shared reference data; tests that need it are skipped where it is missing. */
final class SharedFiles {
    private SharedFiles() {}

    /** All IFC files below a folder of the shared data: property {@code rt.shared} when set, else beside the repository. */
    static List<Path> ifcBelow(String relative) throws IOException {
        String given = System.getProperty("rt.shared");
        Path shared = given != null ? Path.of(given) : Path.of(System.getProperty("runtrue.root", "."), "..", "shared");
        Path folder = shared.resolve(relative).normalize();
        assumeTrue(Files.isDirectory(folder), "shared test data is missing: " + relative);
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".ifc"))
                    .sorted()
                    .toList();
        }
    }
}
