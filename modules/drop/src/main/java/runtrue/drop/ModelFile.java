package runtrue.drop;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One model file on disc, not opened yet.
 *
 * @param name file name, for people
 * @param path as it was found: relative when the path given was
 * @param size on disc, in bytes
 * @param kind told by the ending of the name
 */
public record ModelFile(String name, Path path, long size, Kind kind) {
    private static final int CHUNK_BYTES = 1 << 18;

    /** What the ending of a file's name promises. */
    public enum Kind {
        /** ISO 10303-21 text. */
        IFC,
        /** A zip archive of {@link #IFC} files. */
        IFCZIP;

        /** Empty for names that end in neither {@code .ifc} nor {@code .ifczip}, in any case. */
        public static Optional<Kind> of(String fileName) {
            String name = fileName.toLowerCase(Locale.ROOT);
            if (name.endsWith(".ifc")) {
                return Optional.of(IFC);
            }
            return name.endsWith(".ifczip") ? Optional.of(IFCZIP) : Optional.empty();
        }
    }

    /**
     * Makes the models in this file available. Nothing is read of an {@link Kind#IFC} file; an archive is unpacked
     * within the limits. Throws {@link DropException} for an archive that is damaged, over a limit, or holds no model.
     */
    public OpenedModels open(ArchiveLimits limits) {
        return switch (kind) {
            case IFC -> new OpenedModels(List.of(new ModelSource.OnDisk(name, path)), Optional.empty());
            case IFCZIP -> new IfcZip(this, limits, Path.of(System.getProperty("java.io.tmpdir"))).unpack();
        };
    }

    /** SHA-256 of the file on disc (of the archive, not of what it holds), as 64 lower-case hexadecimal digits. */
    public String sha256() {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            ByteBuffer buffer = ByteBuffer.allocate(CHUNK_BYTES);
            while (channel.read(buffer) >= 0) {
                digest.update(buffer.flip());
                buffer.clear();
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            throw new DropException(path + ": cannot be read (" + Reason.of(e) + "). Check that it may be read.", e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
