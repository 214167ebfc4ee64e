package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that were looked over once; {@code -Dupdate.golden} writes them anew, and the difference is to be reviewed. */
final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/runtrue/report/golden");

    private Golden() {}

    static void assertMatches(String name, String actual) throws IOException {
        Path file = FOLDER.resolve(name);
        if (System.getProperty("update.golden") != null) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, actual);
        }
        assertThat(actual).isEqualTo(Files.readString(file));
    }
}
