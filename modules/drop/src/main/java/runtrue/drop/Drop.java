package runtrue.drop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Model files issued together, in common coordinates.
 *
 * @param name unique within one {@link Drops#find} without regard to case, and safe as the name of an output folder
 * @param folder where the files lie; the folder of the first when they come from several
 * @param files at least one, no file twice, in the order of their names
 * @param settingsFile {@value Drops#SETTINGS} beside the files; empty when there is none or the files come from
 *     several folders
 * @param concessionsFile {@value Drops#CONCESSIONS}, likewise
 */
public record Drop(
        String name, Path folder, List<ModelFile> files, Optional<Path> settingsFile, Optional<Path> concessionsFile) {
    public Drop {
        files = List.copyOf(files);
        if (files.isEmpty()) {
            throw new IllegalArgumentException("drop " + name + " has no files");
        }
    }

    /** Size of all files on disc, in bytes. */
    public long size() {
        return files.stream().mapToLong(ModelFile::size).sum();
    }
}
