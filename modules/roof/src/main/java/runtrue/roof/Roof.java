package runtrue.roof;

import java.util.List;
import runtrue.roof.above.Above;

/** All roofs of a drop, laid out. Start with {@link Roofs}. */
public record Roof(
        List<PlaneLayout> planes,
        List<RoofEdge> edges,
        List<RoofBody> bodies,
        List<Unplaced> unplaced,
        RoofSettings settings,
        Above above) {
    /** One above which nothing is known. */
    public Roof(
            List<PlaneLayout> planes,
            List<RoofEdge> edges,
            List<RoofBody> bodies,
            List<Unplaced> unplaced,
            RoofSettings settings) {
        this(planes, edges, bodies, unplaced, settings, Above.NONE);
    }

    public Roof {
        planes = List.copyOf(planes);
        edges = List.copyOf(edges);
        bodies = List.copyOf(bodies);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * An element that gave no plane, with the reason.
     *
     * @param counted whether it is accounted for all the same, for example as a layer under the one that gave the plane
     */
    public record Unplaced(ReadElement element, String reason, boolean counted) {
        /** What to do about one that is not accounted for, at the end of a reason. */
        public static final String OR_EXCLUDE =
                "; if it is no part of the roof, exclude it under selectors in runtrue.yaml";

        /** One that is not accounted for: part of the roof that nothing is said about. */
        public Unplaced(ReadElement element, String reason) {
            this(element, reason, false);
        }
    }
}
