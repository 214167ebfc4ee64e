package runtrue.roof.health;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runtrue.ifc.Element;
import runtrue.roof.health.HealthLine.Item;

/** Gathers what is amiss into one line for each kind and file. */
final class Lines {
    private final Map<HealthKind, Map<String, List<Item>>> items = new EnumMap<>(HealthKind.class);
    private final List<HealthLine> ofFiles = new ArrayList<>();

    void add(HealthKind kind, Element element, String detail) {
        items.computeIfAbsent(kind, k -> new TreeMap<>())
                .computeIfAbsent(element.file(), f -> new ArrayList<>())
                .add(new Item(element, detail));
    }

    void add(HealthKind kind, String file, String detail) {
        ofFiles.add(new HealthLine(kind, file, detail, List.of()));
    }

    /** By kind, which stand by importance, then by file. */
    List<HealthLine> sorted() {
        List<HealthLine> all = new ArrayList<>(ofFiles);
        items.forEach((kind, byFile) -> byFile.forEach((file, found) -> all.add(new HealthLine(
                kind,
                file,
                "",
                found.stream()
                        .sorted(Comparator.comparingInt(i -> i.element().stepId()))
                        .toList()))));
        all.sort(Comparator.comparing(HealthLine::kind).thenComparing(HealthLine::file));
        return all;
    }
}
