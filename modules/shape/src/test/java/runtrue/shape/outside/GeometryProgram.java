package runtrue.shape.outside;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.bimserver.plugins.renderengine.RenderEngineException;
import org.ifcopenshell.IfcGeomServerClient;
import org.ifcopenshell.IfcGeomServerClientEntity;

/**
 * Runs the executable over one file. It reads IFC2X3 only, gives no log and drops in silence what it cannot build, and it
 * can hang for ever: so it is killed after a time limit, and the caller has to see for itself what is missing.
 */
final class GeometryProgram {
    private static final String EXECUTABLE = "/exe/64/linux/IfcGeomServer";

    private static final long LIMIT_SECONDS = 120;

    private GeometryProgram() {}

    static boolean runsHere() {
        return System.getProperty("os.name", "").startsWith("Linux")
                && System.getProperty("os.arch", "").equals("amd64");
    }

    /**
     * Meshes by GlobalId.
     *
     * @param metresPerUnit of the file: the executable gives its own length unit
     * @param folder for the executable
     */
    static Map<String, TriangleMesh> meshes(Path file, double metresPerUnit, Path folder)
            throws IOException, RenderEngineException {
        Path executable = executable(folder);
        List<Long> others =
                ProcessHandle.current().children().map(ProcessHandle::pid).toList();
        IfcGeomServerClient client = new IfcGeomServerClient(executable.toString());
        // The client hides its process, and closing it from outside would wait for an answer that never comes.
        CompletableFuture<Void> watchdog = CompletableFuture.runAsync(
                () -> ProcessHandle.current()
                        .children()
                        .filter(child -> !others.contains(child.pid()))
                        .forEach(ProcessHandle::destroyForcibly),
                CompletableFuture.delayedExecutor(LIMIT_SECONDS, TimeUnit.SECONDS));
        try (client;
                InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            client.loadModel(in);
            Map<String, TriangleMesh> meshes = new HashMap<>();
            while (client.hasNext()) {
                IfcGeomServerClientEntity entity = client.getNext();
                if (entity != null) {
                    meshes.put(
                            entity.getGuid(),
                            TriangleMesh.of(
                                    entity.getPositions(), entity.getIndices(), entity.getMatrix(), metresPerUnit));
                }
            }
            return meshes;
        } finally {
            watchdog.cancel(false);
        }
    }

    private static Path executable(Path folder) throws IOException {
        Path executable = folder.resolve("IfcGeomServer");
        try (InputStream in = IfcGeomServerClient.class.getResourceAsStream(EXECUTABLE)) {
            if (in == null) {
                throw new IOException("no " + EXECUTABLE + " in the jar of the binding");
            }
            Files.copy(in, executable, StandardCopyOption.REPLACE_EXISTING);
        }
        if (!executable.toFile().setExecutable(true)) {
            throw new IOException(executable + " cannot be made executable");
        }
        return executable;
    }
}
