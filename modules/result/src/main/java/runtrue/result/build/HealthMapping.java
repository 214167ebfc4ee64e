package runtrue.result.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import runtrue.result.FileInfo;
import runtrue.result.HealthLine;
import runtrue.result.Importance;
import runtrue.roof.health.HealthKind;

/** What is amiss with the models, with what the files themselves gave rise to. */
final class HealthMapping {
    private HealthMapping() {}

    /** Most important first; within that as the kinds stand, then by file. */
    static List<HealthLine> of(List<FileInfo> files, List<runtrue.roof.health.HealthLine> found) {
        List<HealthLine> lines = new ArrayList<>();
        files.stream().filter(f -> !f.opened()).forEach(f -> lines.add(unopened(f)));
        found.forEach(line -> lines.add(line(line)));
        files.stream()
                .filter(FileInfo::opened)
                .forEach(f -> f.notes().stream()
                        .filter(note -> !told(note, f, found))
                        .forEach(note -> lines.add(note(f, note))));
        lines.sort(Comparator.comparing(HealthLine::importance));
        return lines;
    }

    private static HealthLine line(runtrue.roof.health.HealthLine line) {
        HealthKind kind = line.kind();
        return new HealthLine(
                kind.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                Importance.valueOf(kind.importance().name()),
                kind.title(),
                line.file(),
                line.detail(),
                kind.why(),
                kind.action(),
                line.items().stream()
                        .map(i -> new HealthLine.Item(PlaneMapping.element(i.element(), ""), i.detail()))
                        .toList());
    }

    private static HealthLine unopened(FileInfo file) {
        return new HealthLine(
                "file-not-opened",
                Importance.HIGH,
                "File not opened",
                file.name(),
                String.join("; ", file.notes()),
                "Nothing in it is in the results.",
                "Export the file again as IFC2X3, IFC4 or IFC4X3, and send it whole.",
                List.of());
    }

    private static HealthLine note(FileInfo file, String note) {
        return new HealthLine(
                "oddity",
                Importance.MEDIUM,
                "Oddity in the file",
                file.name(),
                note,
                "The file says something that it should not, or leaves out what it should say.",
                "Look whether it is what was meant; if not, put it right in the model or in the export's settings.",
                List.of());
    }

    /** A shared GlobalId that is listed with its elements need not be told twice. */
    private static boolean told(String note, FileInfo file, List<runtrue.roof.health.HealthLine> found) {
        return found.stream()
                .filter(l -> l.kind() == HealthKind.SAME_GLOBAL_ID && l.file().equals(file.name()))
                .flatMap(l -> l.items().stream())
                .anyMatch(i -> note.startsWith("GlobalId " + i.element().globalId() + " is shared by "));
    }
}
