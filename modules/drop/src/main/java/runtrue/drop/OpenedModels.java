package runtrue.drop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The models of one file: one, or the entries of an archive by name. Close when the models are no longer used; that
 * removes what was unpacked to disc.
 */
public final class OpenedModels implements AutoCloseable {
    private final List<ModelSource> models;
    private final Optional<Path> unpacked;

    OpenedModels(List<ModelSource> models, Optional<Path> unpacked) {
        this.models = List.copyOf(models);
        this.unpacked = unpacked;
    }

    public List<ModelSource> models() {
        return models;
    }

    @Override
    public void close() {
        unpacked.ifPresent(OpenedModels::remove);
    }

    static void remove(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot remove the unpacked models in " + folder, e);
        }
    }
}
