package runtrue.samples;

import java.nio.file.Path;
import java.util.Objects;

/** Finds files of the repository from a test. */
final class Repository {
    private Repository() {}

    static Path root() {
        return Path.of(Objects.requireNonNull(System.getProperty("runtrue.root"), "runtrue.root is set by the build"));
    }
}
