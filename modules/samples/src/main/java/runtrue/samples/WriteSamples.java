package runtrue.samples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes the sample files below a folder, {@code sample-models} when none is named. */
public final class WriteSamples {
    private WriteSamples() {}

    /**
     * Writes all samples.
     *
     * @param arguments the folder, or nothing
     * @throws IOException when a file cannot be written; its message names the file
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "sample-models");
        for (Map.Entry<String, String> file : SampleModels.all().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.resolveSibling(""));
            Files.write(path, file.getValue().getBytes(StandardCharsets.US_ASCII));
        }
    }
}
