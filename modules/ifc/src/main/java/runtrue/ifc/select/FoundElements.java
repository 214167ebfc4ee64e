package runtrue.ifc.select;

import java.util.List;

/**
 * What was found in one model, by instance number.
 *
 * @param roofs with a shape of their own, or without one and without parts (so that somebody hears of them)
 * @param supports possible supports; none of them is in {@code roofs}
 * @param broken elements that might belong to either list: they count as not read
 * @param notes one sentence each
 */
public record FoundElements(
        List<FoundElement> roofs, List<FoundElement> supports, List<BrokenElement> broken, List<String> notes) {
    public FoundElements {
        roofs = List.copyOf(roofs);
        supports = List.copyOf(supports);
        broken = List.copyOf(broken);
        notes = List.copyOf(notes);
    }
}
