package runtrue.result.json;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import runtrue.result.CheckResult;
import tools.jackson.core.JacksonException;

/** Writes and reads results as JSON: UTF-8, keys in the order of the records, absent values left out. */
public final class ResultJson {
    private ResultJson() {}

    /** Writes the result; the same result gives the same bytes. */
    public static void write(CheckResult result, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            write(result, out);
        }
    }

    /** Writes the result and leaves the stream open. */
    public static void write(CheckResult result, OutputStream out) throws IOException {
        try {
            RecordWriter.write(result, out);
        } catch (JacksonException e) {
            throw new IOException("The result could not be written as JSON: " + e.getOriginalMessage(), e);
        }
    }

    /** Reads a result; a file in another format or with unknown keys is refused with the place. */
    public static CheckResult read(Path file) throws IOException {
        return RecordReader.read(file);
    }
}
