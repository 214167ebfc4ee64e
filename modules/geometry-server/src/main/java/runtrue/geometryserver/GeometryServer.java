package runtrue.geometryserver;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;

/**
 * Meshes from the program: start with {@link #bundled} or {@link #named}. Nothing is unpacked or started before the first
 * element is asked for; after a failure the program is started again for what is missing, in halves, so that one element
 * that it cannot stand costs no other. Whatever goes wrong is part of the answer. One caller at a time.
 */
public final class GeometryServer implements AutoCloseable {
    private final Program program;
    private final Limits limits;
    private @Nullable Path folder;
    private @Nullable String command;

    /** Why nothing more is tried; empty as long as it may work. */
    private String broken = "";

    private @Nullable Thread cleaner;

    GeometryServer(Program program, Limits limits) {
        this.program = program;
        this.limits = limits;
    }

    /** The executable that comes with the binding: it knows IFC2X3 alone. */
    public static GeometryServer bundled() {
        return new GeometryServer(Program.bundled(), Limits.standard());
    }

    /** An executable of the user's that speaks the same protocol; it is asked about models of any schema. */
    public static GeometryServer named(Path executable) {
        return new GeometryServer(Program.named(executable), Limits.standard());
    }

    /** Name and version for results. */
    public String engine() {
        return program.engine();
    }

    /** Whether it makes sense to ask: it would drop what it does not know without a word. */
    boolean reads(IfcModel model) {
        return !program.isBundled() || model.schema().equals("IFC2X3");
    }

    /**
     * What it gave.
     *
     * @param meshes by instance number
     * @param missing of every other element asked for: why not, a clause that follows the engine's name
     * @param trouble failures of the program itself, likewise
     */
    record Answer(Map<Integer, ProgramMesh> meshes, Map<Integer, String> missing, List<String> trouble) {}

    /** Meshes of elements of one model; each is in the answer one way or the other. */
    synchronized Answer meshes(IfcModel model, List<IfcEntity> products) {
        Answer answer = new Answer(new TreeMap<>(), new TreeMap<>(), new ArrayList<>());
        if (broken.isEmpty()) {
            try {
                new Run(model, command(), answer).over(products);
            } catch (ProgramException e) {
                broken = e.clause();
            }
        }
        if (!broken.isEmpty()) {
            answer.trouble().add(broken);
        }
        for (IfcEntity product : products) {
            if (!answer.meshes().containsKey(product.id())) {
                answer.missing().putIfAbsent(product.id(), broken.isEmpty() ? "gave no shape for it" : broken);
            }
        }
        return answer;
    }

    private String command() throws ProgramException {
        String made = command;
        if (made == null) {
            Path fresh = Program.folder();
            folder = fresh;
            cleaner = new Thread(this::removeFolder, "geometry-cleaner");
            Runtime.getRuntime().addShutdownHook(cleaner);
            made = program.command(
                    fresh, limits.memoryMegabytes(), limits.total().toSeconds() + 60);
            command = made;
        }
        return made;
    }

    /** One question: the elements of one model, in as many runs of the program as it takes. */
    private final class Run {
        private final IfcModel model;
        private final String command;
        private final Answer answer;
        private final Voids voids;
        private final long end = System.nanoTime() + limits.total().toNanos();
        private final Deque<List<IfcEntity>> open = new ArrayDeque<>();

        /** Elements that the program failed at when they were the last one: once may be by chance. */
        private final Set<Integer> suspects = new HashSet<>();

        private int failures;

        Run(IfcModel model, String command, Answer answer) {
            this.model = model;
            this.command = command;
            this.answer = answer;
            this.voids = new Voids(model);
        }

        void over(List<IfcEntity> products) throws ProgramException {
            open.add(products);
            while (!open.isEmpty()) {
                List<IfcEntity> batch = open.remove();
                List<IfcEntity> given = new ArrayList<>();
                ReducedFile file = file(batch, given);
                if (!given.isEmpty()) {
                    run(given, file.bytes());
                }
            }
        }

        /** As many of a batch as fit; the rest is put back. */
        private ReducedFile file(List<IfcEntity> batch, List<IfcEntity> given) throws ProgramException {
            ReducedFile file = new ReducedFile(model, voids, limits.fileBytes());
            for (int i = 0; i < batch.size(); i++) {
                IfcEntity product = batch.get(i);
                try {
                    if (file.add(product)) {
                        given.add(product);
                    } else if (given.isEmpty()) {
                        answer.missing().put(product.id(), "is not given it: it is too large");
                    } else {
                        open.addFirst(batch.subList(i, batch.size()));
                        return file;
                    }
                } catch (ProgramException e) {
                    answer.missing().put(product.id(), "is not given it: " + e.clause());
                }
            }
            return file;
        }

        private void run(List<IfcEntity> given, byte[] file) throws ProgramException {
            Map<Integer, IfcEntity> wanted = new LinkedHashMap<>();
            given.forEach(product -> wanted.put(product.id(), product));
            Duration left = Duration.ofNanos(end - System.nanoTime());
            if (left.isNegative()) {
                giveUp(wanted, "was ended after " + limits.total().toSeconds() + " seconds");
                return;
            }
            try {
                new Session(command, limits, left).run(file, mesh -> take(mesh, wanted));
            } catch (Session.Failure e) {
                answer.trouble().add(String.valueOf(e.getMessage()));
                failures++;
                retry(wanted, e);
            }
        }

        private void take(ProgramMesh mesh, Map<Integer, IfcEntity> wanted) {
            IfcEntity product = wanted.remove(mesh.stepId());
            if (product == null) {
                // Openings and wholes are in the file for the sake of the elements, and come back too.
                return;
            }
            if (product.text("GlobalId").equals(mesh.globalId())) {
                answer.meshes().put(mesh.stepId(), mesh);
            } else {
                answer.missing().put(mesh.stepId(), "gave it with the GlobalId " + mesh.globalId());
            }
        }

        /** What was not given yet, in halves; the last one left is the one that the program cannot stand. */
        private void retry(Map<Integer, IfcEntity> wanted, Session.Failure failure) throws ProgramException {
            List<IfcEntity> left = new ArrayList<>(wanted.values());
            if (failures > limits.restarts()) {
                giveUp(wanted, failure.getMessage() + ", and was started again " + limits.restarts() + " times before");
            } else if (!failure.started && failures > 1 && answer.meshes().isEmpty()) {
                throw new ProgramException(String.valueOf(failure.getMessage()), failure);
            } else if (left.size() == 1
                    && failure.started
                    && !suspects.add(left.get(0).id())) {
                giveUp(wanted, failure.getMessage() + " at it");
            } else if (!left.isEmpty()) {
                int half = failure.started ? (left.size() + 1) / 2 : left.size();
                open.add(left.subList(0, half));
                if (half < left.size()) {
                    open.add(left.subList(half, left.size()));
                }
            }
        }

        private void giveUp(Map<Integer, IfcEntity> wanted, String why) {
            wanted.keySet().forEach(id -> answer.missing().put(id, why));
        }
    }

    private void removeFolder() {
        Path made = folder;
        if (made != null) {
            Program.remove(made);
            folder = null;
            command = null;
        }
    }

    /** Removes the unpacked executable. Otherwise that is done when Java ends. */
    @Override
    public synchronized void close() {
        removeFolder();
        if (cleaner != null) {
            Runtime.getRuntime().removeShutdownHook(cleaner);
            cleaner = null;
        }
    }
}
