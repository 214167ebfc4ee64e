package runtrue.roof;

import java.util.List;

/** The way from read elements to a laid-out roof. */
public final class Roofs {
    private Roofs() {}

    /** Planes, edges, sheets and supports of one drop. Same input, same output, whatever the order of the elements. */
    public static Roof layOut(List<ReadElement> roofs, List<ReadElement> members, RoofSettings settings) {
        return new Roof(List.of(), List.of(), List.of(), List.of(), settings);
    }

    /** Corner, edge and interior zones of one roof body for a zone width in plan (metres). */
    public static List<Zone> zones(Roof roof, RoofBody body, double width) {
        return List.of();
    }
}
