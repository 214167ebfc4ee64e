package runtrue.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where results go: a folder for each drop. All files of a drop are first written beside their final names and only
 * then moved there, so that a run that fails leaves the earlier results as they were and nobody reads half a file.
 */
final class OutputFolder {
    /** Names that only this program gives. */
    private static final Pattern DRAWING = Pattern.compile("roof-plan-[0-9]+\\.svg");

    private final Path root;

    private OutputFolder(Path root) {
        this.root = root;
    }

    /** Makes the folder and tries whether files can be written there, before any work is done for them. */
    static OutputFolder open(Path root) {
        try {
            Files.createDirectories(root);
            Path trial = root.resolve(partName("trial"));
            Files.write(trial, new byte[0], StandardOpenOption.CREATE_NEW);
            Files.delete(trial);
            return new OutputFolder(root);
        } catch (IOException e) {
            throw new OutputException(
                    root + ": results cannot be written there (" + reason(e)
                            + "). Choose another folder with --output.",
                    e);
        }
    }

    Path folderOf(String drop) {
        return root.resolve(drop);
    }

    /** Writes all files or none. On return every file is complete under its own name. */
    void write(String drop, List<OutputFile> files, int threads) {
        Path folder = folderOf(drop);
        List<Path> parts =
                files.stream().map(f -> folder.resolve(partName(f.name()))).toList();
        try {
            Files.createDirectories(folder);
            writeParts(files, parts, threads);
            for (int i = 0; i < parts.size(); i++) {
                move(parts.get(i), folder.resolve(files.get(i).name()));
            }
            removeEarlierDrawings(folder, files.stream().map(OutputFile::name).collect(Collectors.toSet()));
        } catch (IOException e) {
            throw new OutputException(folder + ": results cannot be written (" + reason(e) + ").", e);
        } finally {
            parts.forEach(OutputFolder::removeLeftover);
        }
    }

    /** How many drawings there are depends on the drop; one of an earlier issue would pass for one of this. */
    private static void removeEarlierDrawings(Path folder, Set<String> written) throws IOException {
        try (DirectoryStream<Path> drawings = Files.newDirectoryStream(folder)) {
            for (Path drawing : drawings) {
                String name = drawing.getFileName().toString();
                if (DRAWING.matcher(name).matches() && !written.contains(name)) {
                    Files.delete(drawing);
                }
            }
        }
    }

    private static void writeParts(List<OutputFile> files, List<Path> parts, int threads) throws IOException {
        List<Callable<Void>> tasks = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Path part = parts.get(i);
            OutputFile.Content content = files.get(i).content();
            tasks.add(() -> {
                writePart(part, content);
                return null;
            });
        }
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, tasks.size())));
        try {
            for (Future<Void> done : pool.invokeAll(tasks)) {
                done.get();
            }
        } catch (ExecutionException e) {
            rethrow(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } finally {
            pool.shutdownNow();
        }
    }

    private static void rethrow(@Nullable Throwable cause) throws IOException {
        if (cause instanceof IOException e) {
            throw e;
        }
        if (cause instanceof RuntimeException e) {
            throw e;
        }
        if (cause instanceof Error e) {
            throw e;
        }
        throw new IllegalStateException(cause);
    }

    private static void writePart(Path part, OutputFile.Content content) throws IOException {
        part.toFile().deleteOnExit(); // for a run that is stopped from outside
        try (OutputStream out = new BufferedOutputStream(
                Files.newOutputStream(part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING))) {
            content.writeTo(out);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (AccessDeniedException e) {
            throw new IOException(target.getFileName() + " cannot be replaced; is it open in another program?", e);
        }
    }

    private static void removeLeftover(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            part.toFile().deleteOnExit();
        }
    }

    /** Hidden, and unlike that of another run into the same folder. */
    private static String partName(String name) {
        return "." + name + "." + ProcessHandle.current().pid() + ".part";
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "a file of that name is in the way";
        }
        if (e instanceof FileSystemException file && file.getReason() == null) {
            return "it cannot be made";
        }
        String message = e.getMessage();
        return message == null ? "the disc or network failed" : message;
    }
}
