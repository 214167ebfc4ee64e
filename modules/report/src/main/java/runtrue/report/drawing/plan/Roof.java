package runtrue.report.drawing.plan;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import runtrue.report.drawing.svg.Figures;
import runtrue.result.BodyResult.Zone;
import runtrue.result.CheckResult;
import runtrue.result.EdgeResult;
import runtrue.result.PlaneResult;

/**
 * What one drawing shows: planes that lie together, with their edges and what was found of them.
 *
 * @param planes largest first
 * @param zones of the wind, where its suction is known
 */
public record Roof(List<PlaneResult> planes, List<EdgeResult> edges, List<Zone> zones, List<Mark> marks) {
    /** Largest first: the order in which things are worth their room on paper. */
    private static final Comparator<PlaneResult> BY_SIZE = Comparator.comparingDouble(
                    PlaneResult::grossAreaSquareMetres)
            .reversed()
            .thenComparing(PlaneResult::id);

    /** A GlobalId in place of a name tells people nothing. */
    private static final String GLOBAL_ID = "[0-3][0-9A-Za-z_$]{21}";

    public Roof {
        planes = planes.stream().sorted(BY_SIZE).toList();
        edges = List.copyOf(edges);
        zones = List.copyOf(zones);
        marks = List.copyOf(marks);
    }

    static Roof of(CheckResult result, List<PlaneResult> planes) {
        Set<String> ids = new HashSet<>();
        planes.forEach(p -> ids.add(p.id()));
        return new Roof(
                planes,
                result.edges().stream()
                        .filter(e -> e.planes().stream().anyMatch(ids::contains))
                        .toList(),
                result.bodies().stream()
                        .flatMap(b -> b.zones().stream())
                        .filter(z -> ids.contains(z.plane())
                                && z.uplift().suctionKilopascals().isPresent())
                        .toList(),
                Mark.of(result, ids));
    }

    /** Names of its buildings, or of the drop when the models name none. */
    public String name(CheckResult result) {
        String buildings = planes.stream()
                .map(PlaneResult::building)
                .filter(b -> !b.isBlank() && !b.matches(GLOBAL_ID))
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return buildings.isEmpty() ? result.drop() : buildings;
    }

    double grossArea() {
        return planes.stream().mapToDouble(PlaneResult::grossAreaSquareMetres).sum();
    }

    /** {@code 6.0°}, or {@code 0.0 to 22.0°} along a curve. */
    public static String pitch(PlaneResult plane) {
        return plane.curve()
                        .map(c -> Figures.fixed(c.leastPitchDegrees(), 1) + " to "
                                + Figures.fixed(c.greatestPitchDegrees(), 1))
                        .orElse(Figures.fixed(plane.pitchDegrees(), 1))
                + "°";
    }

    /** A plane's name without the building, which stands in the title. */
    public static String shortName(String planeName) {
        int slash = planeName.lastIndexOf(" / ");
        return slash < 0 ? planeName : planeName.substring(slash + 3);
    }
}
