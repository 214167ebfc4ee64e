package runtrue.geometryserver;

import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.util.function.Consumer;
import org.bimserver.plugins.renderengine.RenderEngineException;
import org.ifcopenshell.IfcGeomServerClient;
import org.ifcopenshell.IfcGeomServerClientEntity;

/** One run of the program over one file. */
final class Session {
    private final String command;
    private final Limits limits;
    private final Duration total;

    Session(String command, Limits limits, Duration total) {
        this.command = command;
        this.limits = limits;
        this.total = total;
    }

    /** A run that ended badly. */
    static final class Failure extends Exception {
        private static final long serialVersionUID = 1L;

        /** Whether the program got so far as to be given a file. */
        final boolean started;

        Failure(String message, boolean started, Throwable cause) {
            super(message, cause);
            this.started = started;
        }
    }

    /**
     * Hands on each element as it comes.
     *
     * @throws Failure when the program stops, hangs or speaks another language; what was handed on until then is good
     */
    void run(byte[] file, Consumer<ProgramMesh> target) throws Failure {
        boolean started = false;
        Watchdog watchdog = new Watchdog(limits.start(), total);
        try (watchdog) {
            IfcGeomServerClient client = new IfcGeomServerClient(command);
            watchdog.heard(limits.silence());
            started = true;
            client.loadModel(new ByteArrayInputStream(file));
            // The binding closes itself, without a word, when the program stops while it reads the file.
            if (!client.isRunning()) {
                throw new RenderEngineException("it stopped while it read the file");
            }
            while (client.hasNext()) {
                watchdog.heard(limits.silence());
                IfcGeomServerClientEntity entity = client.getNext();
                if (entity == null) {
                    throw new RenderEngineException("it stopped between two elements");
                }
                target.accept(ProgramMesh.of(entity));
            }
            watchdog.heard(limits.start());
            client.close();
        } catch (RenderEngineException | RuntimeException | OutOfMemoryError e) {
            // Out of memory: the binding takes any four bytes for a length and asks for as much at once.
            throw failure(watchdog, started, e);
        }
    }

    private static Failure failure(Watchdog watchdog, boolean started, Throwable e) {
        if (watchdog.hasBitten()) {
            return new Failure("did not answer in time and was ended", started, e);
        }
        if (e instanceof RenderEngineException) {
            return new Failure("stopped (" + e.getMessage() + ")", started, e);
        }
        // After a greeting that it does not know, the binding is unusable, and says so by all kinds of exceptions.
        return new Failure("does not speak the protocol of IfcOpenShell 0.5.0-dev", started, e);
    }
}
