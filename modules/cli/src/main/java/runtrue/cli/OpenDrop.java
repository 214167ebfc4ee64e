package runtrue.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import runtrue.drop.ArchiveLimits;
import runtrue.drop.Drop;
import runtrue.drop.DropException;
import runtrue.drop.ModelFile;
import runtrue.drop.ModelSource;
import runtrue.drop.OpenedModels;
import runtrue.ifc.GridAxis;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.result.FileInfo;
import runtrue.roof.read.DropElements;
import runtrue.step.StepException;
import runtrue.step.StepFile;
import runtrue.step.StepNote;

/** The opened models of a drop. Files that cannot be opened are listed, and the others are read all the same. */
final class OpenDrop implements AutoCloseable {
    private final List<OpenModel> opened = new ArrayList<>();
    private final List<FileInfo> unopened = new ArrayList<>();
    private final List<String> failures = new ArrayList<>();
    private final List<AutoCloseable> open = new ArrayList<>();

    private record OpenModel(ModelFile file, IfcModel model, CompletableFuture<String> sha256) {}

    private OpenDrop() {}

    static OpenDrop open(Drop drop, Progress progress) {
        OpenDrop open = new OpenDrop();
        boolean done = false;
        try {
            for (ModelFile file : drop.files()) {
                open.open(file);
                progress.advance(1);
            }
            done = true;
            return open;
        } finally {
            if (!done) {
                open.close();
            }
        }
    }

    private void open(ModelFile file) {
        CompletableFuture<String> sha256 = CompletableFuture.supplyAsync(file::sha256);
        try {
            OpenedModels models = file.open(ArchiveLimits.DEFAULT);
            open.add(models);
            models.models().forEach(source -> open(file, source, sha256));
        } catch (DropException e) {
            addUnopened(file, file.name(), sha256, e);
        }
    }

    /** One bad entry of an archive leaves the others readable. */
    private void open(ModelFile file, ModelSource source, CompletableFuture<String> sha256) {
        try {
            StepFile step = source instanceof ModelSource.InMemory memory
                    ? StepFile.of(memory.name(), memory.content())
                    : StepFile.open(((ModelSource.OnDisk) source).path());
            open.add(step);
            opened.add(new OpenModel(file, IfcModel.of(step), sha256));
        } catch (StepException | IfcException e) {
            addUnopened(file, source.name(), sha256, e);
        }
    }

    private void addUnopened(ModelFile file, String name, CompletableFuture<String> sha256, RuntimeException why) {
        failures.add(String.valueOf(why.getMessage()));
        unopened.add(new FileInfo(
                name,
                file.size(),
                hash(sha256),
                "",
                "",
                "",
                0,
                "",
                0,
                0,
                0,
                0,
                List.of("not read: " + why.getMessage())));
    }

    /** Empty for a file that cannot be read at all, which opening it has said already. */
    private static String hash(CompletableFuture<String> sha256) {
        try {
            return sha256.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof DropException) {
                return "";
            }
            throw e;
        }
    }

    List<IfcModel> models() {
        return opened.stream().map(OpenModel::model).toList();
    }

    /** One message for each file that could not be opened. */
    List<String> failures() {
        return List.copyOf(failures);
    }

    /** Of the first file that states it. */
    OptionalDouble trueNorth() {
        return models().stream().flatMapToDouble(m -> m.trueNorth().stream()).findFirst();
    }

    List<GridAxis> gridAxes() {
        return models().stream().flatMap(m -> m.gridAxes().stream()).toList();
    }

    List<FileInfo> fileInfos(DropElements elements) {
        List<FileInfo> infos = new ArrayList<>();
        for (OpenModel model : opened) {
            infos.add(info(model, elements));
        }
        infos.addAll(unopened);
        return infos;
    }

    private static FileInfo info(OpenModel open, DropElements elements) {
        StepFile step = open.model().file();
        String name = step.name();
        List<String> notes = new ArrayList<>();
        for (StepNote note : step.notes()) {
            notes.add(note.line() > 0 ? "line " + note.line() + ": " + note.message() : note.message());
        }
        notes.addAll(open.model().notes());
        String prefix = name + ": ";
        elements.notes().stream()
                .filter(n -> n.startsWith(prefix))
                .forEach(n -> notes.add(n.substring(prefix.length())));
        return new FileInfo(
                name,
                open.file().size(),
                hash(open.sha256()),
                String.join(", ", step.header().schemas()),
                step.header().originatingSystem(),
                open.model().all("IfcProject").stream()
                        .map(p -> p.text("GlobalId"))
                        .findFirst()
                        .orElse(""),
                open.model().units().length(),
                step.header().timeStamp(),
                step.size(),
                (int) elements.roofs().stream()
                        .filter(e -> e.element().file().equals(name))
                        .count(),
                (int) elements.members().stream()
                        .filter(e -> e.element().file().equals(name))
                        .count(),
                (int) elements.unread().stream()
                        .filter(e -> e.element().file().equals(name))
                        .count(),
                notes);
    }

    @Override
    public void close() {
        for (int i = open.size() - 1; i >= 0; i--) {
            try {
                open.get(i).close();
            } catch (RuntimeException e) {
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException("a model could not be closed", e);
            }
        }
    }
}
