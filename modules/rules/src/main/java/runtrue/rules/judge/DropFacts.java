package runtrue.rules.judge;

import java.util.List;
import runtrue.ifc.Element;
import runtrue.roof.stated.StatedValue;

/**
 * What is known of a drop besides its roof.
 *
 * @param unreadRoofs roof elements whose shape could not be read
 * @param unreadSupports members whose shape could not be read
 * @param stated values that the model states, beside the derived ones
 */
public record DropFacts(
        String name,
        int files,
        List<Unread> unreadRoofs,
        List<Unread> unreadSupports,
        boolean hasTrueNorth,
        boolean hasGrid,
        List<StatedValue> stated) {
    public DropFacts {
        unreadRoofs = List.copyOf(unreadRoofs);
        unreadSupports = List.copyOf(unreadSupports);
        stated = List.copyOf(stated);
    }

    /** Of a drop that states nothing that could be compared. */
    public DropFacts(
            String name,
            int files,
            List<Unread> unreadRoofs,
            List<Unread> unreadSupports,
            boolean hasTrueNorth,
            boolean hasGrid) {
        this(name, files, unreadRoofs, unreadSupports, hasTrueNorth, hasGrid, List.of());
    }

    /** An element that was not read, and why. */
    public record Unread(Element element, String reason) {}
}
