package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof.Unplaced;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/**
 * Sets aside what is too narrow to be sheeted: elements chosen as roof of which every plane is a strip, such as
 * mouldings at the eaves, and strips that cuts have left beside the plane of an element. An element with one plane to
 * sheet keeps its narrow ones: a small dormer or the upstand of a step belongs to the roof it is drawn with.
 *
 * @param kept planes to sheet, in their order
 */
public record NarrowPlanes(List<RoofPlane> kept, List<Unplaced> unplaced) {
    private static final double LEAST_WIDTH = RoofTolerance.LEAST_WIDTH.si();

    public NarrowPlanes {
        kept = List.copyOf(kept);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * What is kept of flat planes that are no facets of a curved roof.
     *
     * @param beside planes that are kept whatever their width: curved ones and their facets
     * @param joint planes narrower than this are left over from cuts, metres
     */
    public static NarrowPlanes of(List<RoofPlane> flat, Collection<RoofPlane> beside, double joint) {
        Set<ReadElement> sheeted = identities();
        beside.forEach(p -> sheeted.addAll(p.elements()));
        flat.stream().filter(p -> holds(p, LEAST_WIDTH)).forEach(p -> sheeted.addAll(p.elements()));
        List<RoofPlane> kept = new ArrayList<>();
        Set<ReadElement> narrow = identities();
        for (RoofPlane plane : flat) {
            boolean roof = plane.elements().stream().anyMatch(sheeted::contains) && holds(plane, joint);
            if (roof) {
                kept.add(plane);
            } else {
                narrow.addAll(plane.elements());
            }
        }
        narrow.removeAll(sheeted);
        String reason =
                String.format(Locale.ROOT, "narrower than %.1f m everywhere: a moulding, gutter or fascia", LEAST_WIDTH)
                        + Unplaced.OR_EXCLUDE;
        return new NarrowPlanes(
                kept,
                Bearings.ordered(narrow).stream()
                        .map(e -> new Unplaced(e, reason))
                        .toList());
    }

    /** Whether a strip of a width fits somewhere; openings in the plane do not make it a strip. */
    private static boolean holds(RoofPlane plane, double width) {
        return !Outlines.opened(Outlines.shell(plane.outline()), width / 2).isEmpty();
    }

    private static Set<ReadElement> identities() {
        return Collections.newSetFromMap(new IdentityHashMap<>());
    }
}
