package runtrue.report.quantities;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.result.BillResult.Cut;
import runtrue.result.BillResult.Pattern;
import runtrue.result.BillResult.Use;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** What the pieces of a cutting pattern are for, in a few words: support lines of one plane stand together. */
final class CutUses {
    private static final int NAMED = 6;

    private final Map<String, Place> lines = new HashMap<>();

    private record Place(String plane, int number) {}

    CutUses(CheckResult result) {
        for (PlaneResult plane : result.planes()) {
            plane.supports().forEach(line -> lines.put(line.id(), new Place(plane.name(), line.number())));
        }
    }

    String of(Pattern pattern) {
        return pattern.cuts().stream().map(this::of).collect(Collectors.joining("\n"));
    }

    private String of(Cut cut) {
        Map<String, Map<Integer, Long>> onLines = new LinkedHashMap<>();
        Map<String, Long> others = new LinkedHashMap<>();
        for (Use use : cut.uses()) {
            Place place = lines.get(use.from());
            if (place == null) {
                others.merge(use.what(), use.count(), Long::sum);
            } else {
                onLines.computeIfAbsent(place.plane(), p -> new TreeMap<>())
                        .merge(place.number(), use.count(), Long::sum);
            }
        }
        List<String> all = Stream.concat(
                        onLines.entrySet().stream().map(e -> counted(total(e.getValue()), supports(e))),
                        others.entrySet().stream().map(e -> counted(e.getValue(), e.getKey())))
                .toList();
        String some = all.stream().limit(NAMED).collect(Collectors.joining("; "));
        return all.size() > NAMED ? some + "; and " + (all.size() - NAMED) + " more" : some;
    }

    private static String supports(Map.Entry<String, Map<Integer, Long>> lines) {
        List<Integer> numbers = List.copyOf(lines.getValue().keySet());
        return lines.getKey() + ", lines " + NumberRuns.of(numbers);
    }

    private static long total(Map<Integer, Long> counts) {
        return counts.values().stream().mapToLong(c -> c).sum();
    }

    private static String counted(long count, String what) {
        return count + " for " + what;
    }
}
