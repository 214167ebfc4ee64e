package runtrue.ifc.select;

import java.util.List;

/**
 * What was found in one model, by instance number.
 *
 * @param roofs with a shape of their own, or without one and without parts (so that somebody hears of them)
 * @param supports possible supports; none of them is in {@code roofs}
 * @param notes one sentence each
 */
public record FoundElements(List<FoundElement> roofs, List<FoundElement> supports, List<String> notes) {
    public FoundElements {
        roofs = List.copyOf(roofs);
        supports = List.copyOf(supports);
        notes = List.copyOf(notes);
    }
}
