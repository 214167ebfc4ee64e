package runtrue.geometryserver;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.ifcopenshell.IfcGeomServerClient;

/**
 * The executable: the one for this platform in the binding's library, or one that the user names. The former is unpacked
 * into a folder of its own in the system's folder for temporary files, which only this user may enter.
 */
final class Program {
    private final Optional<Path> named;

    private Program(Optional<Path> named) {
        this.named = named;
    }

    static Program bundled() {
        return new Program(Optional.empty());
    }

    static Program named(Path path) {
        return new Program(Optional.of(path.toAbsolutePath()));
    }

    boolean isBundled() {
        return named.isEmpty();
    }

    /** For results. */
    String engine() {
        return named.map(path -> "geometry program " + path.getFileName()).orElse("IfcOpenShell 0.5.0-dev");
    }

    /** A new folder, in which {@link #command} puts what is to be started. */
    static Path folder() throws ProgramException {
        try {
            // On POSIX systems Java makes it accessible to its owner alone; elsewhere the user's own folder holds it.
            Path folder = Files.createTempDirectory("runtrue-geometry-");
            if (folder.toString().chars().anyMatch(Character::isWhitespace)) {
                remove(folder);
                throw new ProgramException(
                        "cannot be started from " + folder
                                + ", because there is a blank in it; name another folder with RUNTRUE_OPTS=-Djava.io.tmpdir=FOLDER");
            }
            return folder;
        } catch (IOException e) {
            throw new ProgramException("cannot be unpacked: " + e.getMessage(), e);
        }
    }

    /**
     * What to start; the binding takes a single word.
     *
     * @param megabytes of address space that it may take
     * @throws ProgramException when there is none for this platform, or the one named cannot be started
     */
    String command(Path folder, int megabytes, long seconds) throws ProgramException {
        try {
            Path executable = named.isPresent() ? usable(named.get()) : unpacked(folder);
            return isWindows() ? executable.toString() : bounded(executable, folder, megabytes, seconds);
        } catch (IOException e) {
            throw new ProgramException("cannot be unpacked: " + e.getMessage(), e);
        }
    }

    private static Path usable(Path path) throws ProgramException {
        if (!Files.isRegularFile(path)) {
            throw new ProgramException("cannot be started: there is no file " + path);
        }
        if (!Files.isExecutable(path)) {
            throw new ProgramException("cannot be started: " + path + " is not executable");
        }
        return path;
    }

    private static Path unpacked(Path folder) throws IOException, ProgramException {
        String resource = resource(System.getProperty("os.name", ""), System.getProperty("os.arch", ""))
                .orElseThrow(() -> new ProgramException(
                        "does not come for " + System.getProperty("os.name") + " on " + System.getProperty("os.arch")));
        try (InputStream in = IfcGeomServerClient.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new ProgramException("is missing from its library: no " + resource);
            }
            Path executable = folder.resolve(resource.substring(resource.lastIndexOf('/') + 1));
            Files.copy(in, executable);
            if (!executable.toFile().setExecutable(true, true)) {
                throw new ProgramException("cannot be made executable in " + folder);
            }
            return executable;
        }
    }

    /** Where the library keeps the executable for a platform; empty when it has none. */
    static Optional<String> resource(String os, String architecture) {
        String name = os.toLowerCase(Locale.ROOT);
        boolean intel64 = List.of("amd64", "x86_64").contains(architecture);
        boolean intel32 = List.of("x86", "i386", "i686").contains(architecture);
        if (name.startsWith("linux") && (intel64 || intel32)) {
            return Optional.of("/exe/" + (intel64 ? 64 : 32) + "/linux/IfcGeomServer");
        } else if (name.startsWith("windows") && (intel64 || intel32)) {
            return Optional.of("/exe/" + (intel64 ? 64 : 32) + "/win/IfcGeomServer.exe");
        } else if (name.startsWith("mac") && intel64) {
            return Optional.of("/exe/64/osx/IfcGeomServer");
        }
        return Optional.empty();
    }

    /**
     * A shell script that sets bounds and becomes the program: what the shell cannot bound stays unbounded. The processor
     * time ends a program that hangs when this one is killed before it can end it. What it says on standard error nobody
     * would read, and a full pipe would stop it.
     */
    private static String bounded(Path executable, Path folder, int megabytes, long seconds) throws IOException {
        Path script = folder.resolve("start");
        Files.writeString(
                script,
                String.format(Locale.ROOT, """
                        #!/bin/sh
                        ulimit -c 0
                        ulimit -v %d 2>/dev/null
                        ulimit -t %d 2>/dev/null
                        cd '%s'
                        exec '%s' 2>/dev/null
                        """, megabytes * 1024L, seconds, quoted(folder), quoted(executable)));
        if (!script.toFile().setExecutable(true, true)) {
            throw new IOException(script + " cannot be made executable");
        }
        return script.toString();
    }

    private static String quoted(Path path) {
        return path.toString().replace("'", "'\\''");
    }

    private static boolean isWindows() {
        return System.getProperty("os.name", "").startsWith("Windows");
    }

    /** Removes a folder with what is in it. */
    static void remove(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be removed; delete it by hand.", e);
        }
    }
}
