package runtrue.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version the build wrote into the program. */
final class Version implements IVersionProvider {
    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            if (in == null) {
                throw new IllegalStateException("version.txt is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {
            "Runtrue " + number(), "Java " + System.getProperty("java.version"),
        };
    }
}
