package runtrue.report.quantities;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import runtrue.result.BillResult.Part;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.PlaneResult;

/** Elements of the models behind a part of the bill: members of its support lines, else those of its planes. */
final class ModelElements {
    private static final int NAMED = 3;

    private final Map<String, List<ElementRef>> ofPlane = new HashMap<>();
    private final Map<String, List<ElementRef>> ofLine = new HashMap<>();

    ModelElements(CheckResult result) {
        for (PlaneResult plane : result.planes()) {
            ofPlane.put(plane.id(), plane.elements());
            plane.supports()
                    .forEach(line -> ofLine.put(
                            line.id(),
                            line.pieces().stream().map(p -> p.element()).toList()));
        }
    }

    /** Some by name and GlobalId: a plane may be made of hundreds. */
    String of(Part part) {
        Set<String> names = new LinkedHashSet<>();
        part.from().stream()
                .flatMap(id -> ofLine.getOrDefault(id, List.of()).stream())
                .forEach(e -> names.add(name(e)));
        if (names.isEmpty()) {
            Stream.concat(Stream.of(part.plane()), part.sharedWith().stream())
                    .flatMap(id -> ofPlane.getOrDefault(id, List.of()).stream())
                    .forEach(e -> names.add(name(e)));
        }
        String some = String.join("\n", names.stream().limit(NAMED).toList());
        return names.size() > NAMED ? some + "\nand " + (names.size() - NAMED) + " more" : some;
    }

    private static String name(ElementRef element) {
        return element.name().isEmpty() ? element.globalId() : element.name() + " (" + element.globalId() + ")";
    }
}
