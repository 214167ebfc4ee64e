package runtrue.roof;

import java.util.List;

/** All roofs of a drop, laid out. Start with {@link Roofs}. */
public record Roof(
        List<PlaneLayout> planes,
        List<RoofEdge> edges,
        List<RoofBody> bodies,
        List<Unplaced> unplaced,
        RoofSettings settings) {
    public Roof {
        planes = List.copyOf(planes);
        edges = List.copyOf(edges);
        bodies = List.copyOf(bodies);
        unplaced = List.copyOf(unplaced);
    }

    /** An element that gave no plane, with the reason; for example one that lies under another layer. */
    public record Unplaced(ReadElement element, String reason) {}
}
