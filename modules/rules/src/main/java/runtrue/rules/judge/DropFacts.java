package runtrue.rules.judge;

import java.util.List;
import runtrue.ifc.Element;
import runtrue.roof.stated.StatedValue;

/**
 * What is known of a drop besides its roof.
 *
 * @param unreadRoofs roof elements whose shape could not be read
 * @param unreadSupports members whose shape could not be read
 * @param unlocatedSupports those of the unread supports of which nothing tells how far they extend
 * @param unlocatedThings other things of which neither the shape nor the extent could be read
 * @param stated values that the model states, beside the derived ones
 */
public record DropFacts(
        String name,
        int files,
        List<Unread> unreadRoofs,
        List<Unread> unreadSupports,
        List<Element> unlocatedSupports,
        List<Element> unlocatedThings,
        boolean hasTrueNorth,
        boolean hasGrid,
        List<StatedValue> stated) {
    public DropFacts {
        unreadRoofs = List.copyOf(unreadRoofs);
        unreadSupports = List.copyOf(unreadSupports);
        unlocatedSupports = List.copyOf(unlocatedSupports);
        unlocatedThings = List.copyOf(unlocatedThings);
        stated = List.copyOf(stated);
    }

    /** Of a drop that states nothing that could be compared, and of which all extents are known. */
    public DropFacts(
            String name,
            int files,
            List<Unread> unreadRoofs,
            List<Unread> unreadSupports,
            boolean hasTrueNorth,
            boolean hasGrid) {
        this(name, files, unreadRoofs, unreadSupports, List.of(), List.of(), hasTrueNorth, hasGrid, List.of());
    }

    /** An element that was not read, and why. */
    public record Unread(Element element, String reason) {}
}
