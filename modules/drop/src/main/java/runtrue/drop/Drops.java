package runtrue.drop;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Finds drops: start with {@link #find}.
 *
 * <ul>
 *   <li>A folder that holds {@code .ifc} or {@code .ifczip} files is one drop of these files.
 *   <li>Every folder below a given folder that holds such files is a drop of its own, so that a folder of folders is a
 *       batch.
 *   <li>Files given by name are together one drop.
 * </ul>
 *
 * <p>Hidden files and folders, and a program's lock files ({@code ~$...}), are passed over. A file or folder reached
 * twice, by links or because it was given twice, counts once.
 */
public final class Drops {
    /** Name of the settings file of a drop. */
    public static final String SETTINGS = "runtrue.yaml";

    /** Name of the file in which non-conformances of a drop are accepted. */
    public static final String CONCESSIONS = "concessions.yaml";

    private static final Comparator<Path> BY_NAME = Comparator.comparing(Drops::fileName)
            .thenComparing(path -> path.toAbsolutePath().normalize().toString());

    private final Consumer<String> notes;
    private final DropNames names = new DropNames();
    private final Set<Path> foldersSeen = new HashSet<>();
    private final Set<Path> filesSeen = new HashSet<>();
    private final List<Drop> drops = new ArrayList<>();

    private Drops(Consumer<String> notes) {
        this.notes = notes;
    }

    /**
     * Drops in a fixed order: folders as given, their sub-folders by name, and last the drop of files given by name.
     *
     * @param paths files and folders; throws {@link DropException} when one does not exist or is no model file, and
     *     when nothing at all is found
     * @param notes takes one sentence for each thing passed over that a person may have meant: a folder without
     *     models, a folder that cannot be read, an IFC-XML file
     */
    public static List<Drop> find(List<Path> paths, Consumer<String> notes) {
        return new Drops(notes).find(paths);
    }

    private List<Drop> find(List<Path> paths) {
        List<Path> files = new ArrayList<>();
        List<Path> folders = new ArrayList<>();
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                folders.add(path);
            } else {
                files.add(requireModel(path));
            }
        }
        // Files first: one that is named must not go missing because its folder was given as well.
        Optional<Drop> named = files.isEmpty() ? Optional.empty() : dropOf(files);
        for (Path folder : folders) {
            int before = drops.size();
            walk(folder, "");
            if (drops.size() == before) {
                notes.accept(folder + ": holds no .ifc or .ifczip file that is not already in another drop.");
            }
        }
        named.ifPresent(drops::add);
        if (drops.isEmpty()) {
            throw new DropException("Nothing to check: " + join(paths)
                    + " holds no .ifc or .ifczip file. Give model files, or a folder that holds some.");
        }
        return List.copyOf(drops);
    }

    private static Path requireModel(Path path) {
        if (!Files.exists(path)) {
            throw new DropException(path + ": no such file or folder.");
        }
        if (ModelFile.Kind.of(fileName(path)).isEmpty()) {
            String hint = isXml(path)
                    ? "IFC-XML is not read; export the model as STEP text (.ifc)."
                    : "Give .ifc or .ifczip files, or a folder that holds some.";
            throw new DropException(path + ": not a model file. " + hint);
        }
        return path;
    }

    private Optional<Drop> dropOf(List<Path> files) {
        List<ModelFile> models = new ArrayList<>();
        files.stream().sorted(BY_NAME).forEach(file -> add(file, models));
        if (models.isEmpty()) {
            return Optional.empty();
        }
        List<Path> parents =
                models.stream().map(m -> folderOf(m.path())).distinct().toList();
        Path folder = parents.get(0);
        String name = models.size() == 1
                ? models.get(0).name().replaceFirst("\\.[^.]*$", "")
                : parents.size() == 1 ? DropNames.of(folder) : DropNames.of(folder) + "-and-others";
        boolean together = parents.size() == 1;
        return Optional.of(new Drop(
                names.unique(name),
                folder,
                models,
                together ? fileIn(folder, SETTINGS) : Optional.empty(),
                together ? fileIn(folder, CONCESSIONS) : Optional.empty()));
    }

    /** {@code below} names the folder by the folders between it and the one given, which is itself empty. */
    private void walk(Path folder, String below) {
        List<Path> entries;
        try {
            if (!foldersSeen.add(folder.toRealPath())) {
                return;
            }
            entries = entries(folder);
        } catch (IOException e) {
            noteUnreadable(folder, e);
            return;
        }
        List<ModelFile> models = new ArrayList<>();
        for (Path entry : entries) {
            if (!Files.isDirectory(entry)) {
                addIfModel(entry, models);
            }
        }
        if (!models.isEmpty()) {
            String name = names.unique(below.isEmpty() ? DropNames.of(folder) : below);
            drops.add(new Drop(name, folder, models, fileIn(folder, SETTINGS), fileIn(folder, CONCESSIONS)));
        }
        for (Path entry : entries) {
            if (Files.isDirectory(entry)) {
                walk(entry, below.isEmpty() ? fileName(entry) : below + "-" + fileName(entry));
            }
        }
    }

    private static List<Path> entries(Path folder) throws IOException {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, entry -> !isHidden(entry))) {
            stream.forEach(entries::add);
        } catch (DirectoryIteratorException e) {
            throw new IOException(e.getMessage(), e);
        }
        entries.sort(BY_NAME);
        return entries;
    }

    private void addIfModel(Path file, List<ModelFile> models) {
        String name = fileName(file);
        if (ModelFile.Kind.of(name).isPresent()) {
            add(file, models);
        } else if (name.toLowerCase(Locale.ROOT).endsWith(".ifcxml")) {
            notes.accept(file + ": passed over, IFC-XML is not read; export the model as STEP text (.ifc).");
        }
    }

    private void add(Path file, List<ModelFile> models) {
        try {
            if (filesSeen.add(file.toRealPath())) {
                String name = fileName(file);
                models.add(new ModelFile(
                        name, file, Files.size(file), ModelFile.Kind.of(name).orElseThrow()));
            }
        } catch (IOException e) {
            noteUnreadable(file, e);
        }
    }

    private void noteUnreadable(Path path, IOException e) {
        notes.accept(path + ": passed over, it cannot be read (" + Reason.of(e) + ").");
    }

    private static Optional<Path> fileIn(Path folder, String name) {
        return Optional.of(folder.resolve(name)).filter(Files::isRegularFile);
    }

    private static Path folderOf(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of("") : parent;
    }

    private static String fileName(Path path) {
        Path name = path.getFileName();
        return name == null ? "" : name.toString();
    }

    private static boolean isHidden(Path path) {
        String name = fileName(path);
        return name.startsWith(".") || name.startsWith("~$") || name.equals("__MACOSX");
    }

    private static boolean isXml(Path path) {
        String name = fileName(path).toLowerCase(Locale.ROOT);
        return name.endsWith(".ifcxml") || name.endsWith(".xml");
    }

    private static String join(List<Path> paths) {
        return String.join(", ", paths.stream().map(Path::toString).toList());
    }
}
