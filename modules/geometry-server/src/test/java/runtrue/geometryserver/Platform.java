package runtrue.geometryserver;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What can be started where the tests run. */
final class Platform {
    private Platform() {}

    /** Skips the test where the executable of the binding does not run. */
    static void assumeExecutable() {
        assumeTrue(
                System.getProperty("os.name", "").startsWith("Linux")
                        && System.getProperty("os.arch", "").equals("amd64"),
                "the geometry program that comes along was tried on Linux x86-64 only");
    }

    /** An executable shell script that stands for a geometry program. */
    static Path script(Path folder, String text) {
        assumeTrue(Files.exists(Path.of("/bin/sh")), "there is no shell to stand in for the geometry program");
        try {
            Path script = folder.resolve("stand-in");
            Files.writeString(script, "#!/bin/sh\n" + text);
            if (!script.toFile().setExecutable(true)) {
                throw new IllegalStateException(script + " cannot be made executable");
            }
            return script;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
