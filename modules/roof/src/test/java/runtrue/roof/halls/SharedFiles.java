package runtrue.roof.halls;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** Test data kept beside the repository; tests that need it are skipped where it is missing. */
public final class SharedFiles {
    private SharedFiles() {}

    public static Path folder(String name) {
        String shared = System.getProperty("rt.shared");
        Path root = shared != null
                ? Path.of(shared)
                : Path.of(System.getProperty("runtrue.root", ".")).resolve("../shared");
        Path folder = root.resolve(name).normalize();
        Assumptions.assumeTrue(Files.isDirectory(folder), "skipped: no folder " + folder);
        return folder;
    }
}
