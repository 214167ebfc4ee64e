package runtrue.report.quantities;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.report.sheet.Link;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** Names of planes by id, for sheets that refer to them. */
final class PlaneNames {
    private final Map<String, String> byId = new HashMap<>();
    private final Map<String, Link> rows;
    private final Map<String, Integer> lines = new HashMap<>();

    PlaneNames(CheckResult result) {
        rows = Link.toRows(PlanesSheet.NAME, result.planes(), PlaneResult::id);
        for (PlaneResult plane : result.planes()) {
            byId.put(plane.id(), plane.name());
            plane.supports().forEach(line -> lines.put(line.id(), line.number()));
        }
    }

    /** The name, or the id of a plane that is not in the result; empty for none. */
    String of(String id) {
        return byId.getOrDefault(id, id);
    }

    /** The row of a plane in the sheet of planes; empty for what is none. */
    Optional<Link> row(String id) {
        return Optional.ofNullable(rows.get(id));
    }

    /** Of several, the first. */
    Optional<Link> row(List<String> ids) {
        return ids.stream().map(this::row).flatMap(Optional::stream).findFirst();
    }

    String of(List<String> ids) {
        return String.join("\n", ids.stream().map(this::of).toList());
    }

    /** Where a part of the bill comes from: its support lines by number, and ids of the rest. */
    String sources(List<String> from) {
        List<Integer> numbers = from.stream()
                .filter(lines::containsKey)
                .map(lines::get)
                .sorted()
                .distinct()
                .toList();
        Stream<String> supports =
                numbers.isEmpty() ? Stream.of() : Stream.of("support lines " + NumberRuns.of(numbers));
        Stream<String> others = from.stream().filter(id -> !lines.containsKey(id));
        return Stream.concat(supports, others).collect(Collectors.joining(", "));
    }
}
