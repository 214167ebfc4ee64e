package runtrue.bill.count;

import java.util.List;
import runtrue.rules.cel.Facts;

/**
 * Something that an item is counted on.
 *
 * @param plane id; empty for none
 * @param sharedWith other planes of an edge
 * @param name for people
 * @param times how many alike it stands for
 * @param zone of a rib on a support; empty where none is known
 * @param runs lengths of its unbroken stretches, metres; empty where it has no length
 * @param from ids that it is traced to
 */
public record Subject(
        String plane,
        List<String> sharedWith,
        String name,
        Facts facts,
        int times,
        String zone,
        List<Double> runs,
        List<String> from) {
    /** The same where its zone does not matter. */
    public Subject inNoZone() {
        return zone.isEmpty() ? this : new Subject(plane, sharedWith, name, facts, times, "", runs, from);
    }
}
