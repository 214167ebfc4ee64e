package runtrue.bill.count;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.Zone;
import runtrue.rules.DropSettings;
import runtrue.rules.OrderLengths;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.CountedOn;
import runtrue.rules.buildup.LayoutFacts;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.StatedFacts;

/** A whole roof taken apart into what items are counted on. */
public final class RoofSubjects {
    private final Roof roof;
    private final Facts drop;
    private final Map<String, Ribs> ribs = new LinkedHashMap<>();
    private final List<PlaneSubjects> planes = new ArrayList<>();

    /** Takes a roof apart; zones as far as any could be formed. */
    public RoofSubjects(Roof roof, List<Zone> zones, RoofSystem system, DropSettings settings, BuildUp buildUp) {
        this.roof = roof;
        drop = StatedFacts.of(FactCatalogue.standard(), system, settings)
                .know("drop.planes", roof.planes().size(), "")
                .know(
                        "drop.roof_area",
                        roof.planes().stream()
                                .mapToDouble(p -> p.plane().area())
                                .sum(),
                        "");
        for (Map.Entry<String, Quantity> value : buildUp.values().entrySet()) {
            drop.know(LayoutFacts.BUILD_UP + value.getKey(), value.getValue().si(), buildUp.file());
        }
        for (PlaneLayout layout : roof.planes()) {
            Optional<Ribs> own = system.si("clip_spacing")
                    .map(s -> Ribs.of(layout.plane(), roof.settings().coverWidth(), s, settings.setOut()));
            own.ifPresent(r -> ribs.put(layout.plane().id(), r));
            planes.add(new PlaneSubjects(
                    layout,
                    new OrderLengths(layout, roof.edges(), system),
                    own,
                    new ZoneMap(zones, layout.plane().id()),
                    drop));
        }
    }

    /** In the order of the roof. */
    public List<PlaneSubjects> planes() {
        return planes;
    }

    /** Facts that hold for the whole drop. */
    public Facts drop() {
        return drop;
    }

    /** Everything that an item is counted on. */
    public List<Subject> of(BuildUpItem item) {
        return switch (item.on()) {
            case DROP -> List.of(new Subject("", List.of(), "the drop", drop, 1, "", List.of(), List.of()));
            case EDGE -> edges(item);
            default -> planes.stream().flatMap(p -> p.of(item.on()).stream()).toList();
        };
    }

    private List<Subject> edges(BuildUpItem item) {
        List<RoofEdge> edges = roof.edges().stream()
                .filter(edge -> item.edges().contains(edge.kind()))
                .sorted(Comparator.comparing(RoofEdge::id))
                .toList();
        EdgeEnds ends = new EdgeEnds(edges);
        return edges.stream().map(edge -> edge(edge, ends)).toList();
    }

    private Subject edge(RoofEdge edge, EdgeEnds ends) {
        Facts own = drop.inner()
                .know("edge.kind", edge.kind().label(), "")
                .know("edge.length", edge.length(), "")
                .know("edge.planes", edge.planes().size(), "")
                .know("edge.free_ends", ends.free(edge), "")
                .know("edge.corners", ends.corners(edge), "");
        if (ribs.keySet().containsAll(edge.planes())) {
            int count = edge.planes().stream()
                    .map(ribs::get)
                    .mapToInt(r -> r == null ? 0 : r.endingOn(edge))
                    .sum();
            own.know("edge.ribs", count, "");
        } else {
            own.miss("edge.ribs", "is not known: the roof system states no clip_spacing");
        }
        List<String> planes = edge.planes();
        return new Subject(
                planes.isEmpty() ? "" : planes.get(0),
                planes.size() > 1 ? planes.subList(1, planes.size()) : List.of(),
                edge.kind().label() + " " + edge.id(),
                own,
                1,
                "",
                List.of(edge.length()),
                List.of(edge.id()));
    }

    /** Why an item that is counted on parts of planes cannot be counted on one of them. */
    public List<String> lacking(CountedOn on) {
        return planes.stream()
                .flatMap(p -> p.lacking(on).stream()
                        .map(reason -> "plane " + p.layout().plane().name() + ": " + reason))
                .toList();
    }
}
