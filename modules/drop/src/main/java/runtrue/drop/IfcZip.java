package runtrue.drop;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Unpacks the {@code .ifc} entries of an archive. Entry names never become paths: what goes to disc gets names of our
 * own in a folder of our own.
 */
final class IfcZip {
    private static final int CHUNK_BYTES = 1 << 16;
    /** Below this a high ratio harms nobody, and short repetitive models do reach one. */
    private static final long RATIO_APPLIES_FROM_BYTES = 1 << 20;

    private final ModelFile file;
    private final ArchiveLimits limits;
    private final Path scratch;
    private final List<ModelSource> models = new ArrayList<>();
    private long totalBytes;
    private Optional<Path> folder = Optional.empty();

    /** What goes to disc goes to a new folder below {@code scratch}. */
    IfcZip(ModelFile file, ArchiveLimits limits, Path scratch) {
        this.file = file;
        this.limits = limits;
        this.scratch = scratch;
    }

    OpenedModels unpack() {
        boolean done = false;
        try (ZipFile zip = new ZipFile(file.path().toFile(), StandardCharsets.UTF_8)) {
            for (ZipEntry entry : modelEntries(zip)) {
                unpack(zip, entry);
            }
            done = true;
            return new OpenedModels(models, folder);
        } catch (ZipException e) {
            throw new DropException(file.path() + ": not a readable zip archive (" + Reason.of(e) + ").", e);
        } catch (IOException e) {
            throw new DropException(file.path() + ": cannot be unpacked (" + Reason.of(e) + ").", e);
        } finally {
            if (!done) {
                folder.ifPresent(OpenedModels::remove);
            }
        }
    }

    private List<ZipEntry> modelEntries(ZipFile zip) {
        if (zip.size() > limits.entries()) {
            throw refused("holds " + zip.size() + " entries; at most " + limits.entries() + " are read");
        }
        List<ZipEntry> found = new ArrayList<>();
        boolean xml = false;
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName().toLowerCase(Locale.ROOT);
            if (name.endsWith(".zip") || name.endsWith(".ifczip")) {
                throw refused("holds another archive, " + shown(entry) + "; unpack it first");
            }
            xml |= name.endsWith(".ifcxml") || name.endsWith(".xml");
            if (!entry.isDirectory() && name.endsWith(".ifc") && !isHidden(name)) {
                found.add(entry);
            }
        }
        if (found.isEmpty()) {
            throw refused(
                    xml
                            ? "holds IFC-XML, which is not read; export the model as STEP text (.ifc)"
                            : "holds no .ifc file");
        }
        found.sort(Comparator.comparing(ZipEntry::getName));
        return found;
    }

    private static boolean isHidden(String name) {
        return name.substring(name.lastIndexOf('/') + 1).startsWith(".") || name.startsWith("__macosx/");
    }

    private void unpack(ZipFile zip, ZipEntry entry) throws IOException {
        String name = file.name() + "/" + shown(entry);
        ByteArrayOutputStream memory = new ByteArrayOutputStream();
        try (CheckedInputStream in = new CheckedInputStream(zip.getInputStream(entry), new CRC32())) {
            copy(in, entry, memory, 0, limits.memoryBytes());
            if (startsLikeArchive(memory.toByteArray())) {
                throw refused("entry " + shown(entry) + " is itself an archive; unpack it first");
            }
            if (memory.size() <= limits.memoryBytes()) {
                models.add(new ModelSource.InMemory(name, memory.toByteArray()));
            } else {
                models.add(new ModelSource.OnDisk(name, spill(memory, in, entry)));
            }
            if (entry.getCrc() != in.getChecksum().getValue()) {
                throw refused("entry " + shown(entry) + " is damaged (its checksum differs); pack or send it again");
            }
        }
    }

    private Path spill(ByteArrayOutputStream start, InputStream in, ZipEntry entry) throws IOException {
        if (folder.isEmpty()) {
            folder = Optional.of(Files.createTempDirectory(scratch, "runtrue-"));
        }
        Path target = folder.get().resolve("model-" + models.size() + ".ifc");
        try (OutputStream out = Files.newOutputStream(target)) {
            start.writeTo(out);
            copy(in, entry, out, start.size(), Long.MAX_VALUE);
        }
        return target;
    }

    /** Copies until the end, or until more than {@code untilBytes} of the entry are through. */
    private void copy(InputStream in, ZipEntry entry, OutputStream out, long doneBytes, long untilBytes)
            throws IOException {
        byte[] chunk = new byte[CHUNK_BYTES];
        long size = doneBytes;
        int n;
        while (size <= untilBytes && (n = in.read(chunk)) >= 0) {
            size += n;
            count(n, entry, size);
            out.write(chunk, 0, n);
        }
    }

    private static boolean startsLikeArchive(byte[] content) {
        return content.length >= 4 && content[0] == 'P' && content[1] == 'K' && content[2] == 3 && content[3] == 4;
    }

    private void count(int bytes, ZipEntry entry, long entryBytes) {
        totalBytes += bytes;
        if (totalBytes > limits.totalBytes()) {
            throw refused("unpacks to more than " + limits.totalBytes() + " bytes");
        }
        // The packed size an entry states can be a lie, so the whole archive's size on disc bounds it as well.
        long packed = Math.max(1, Math.min(file.size(), entry.getCompressedSize()));
        if (entryBytes > RATIO_APPLIES_FROM_BYTES && entryBytes / packed > limits.ratio()) {
            throw refused("entry " + shown(entry) + " unpacks to more than " + limits.ratio()
                    + " times its packed size, which no model does");
        }
    }

    /** The last part of the name, without what could confuse a terminal or a sheet. */
    private static String shown(ZipEntry entry) {
        String name = entry.getName().replace('\\', '/');
        if (name.endsWith("/")) {
            name = name.substring(0, name.length() - 1);
        }
        String last = name.substring(name.lastIndexOf('/') + 1).replaceAll("\\p{C}", "?");
        return last.length() <= 120 ? last : last.substring(0, 117) + "...";
    }

    private DropException refused(String what) {
        return new DropException(file.path() + ": the archive " + what + ".");
    }
}
