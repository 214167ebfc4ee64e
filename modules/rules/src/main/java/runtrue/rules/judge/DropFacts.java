package runtrue.rules.judge;

import java.util.List;
import runtrue.ifc.Element;

/**
 * What is known of a drop besides its roof.
 *
 * @param unreadRoofs roof elements whose shape could not be read
 * @param unreadSupports members whose shape could not be read
 */
public record DropFacts(
        String name,
        int files,
        List<Unread> unreadRoofs,
        List<Unread> unreadSupports,
        boolean hasTrueNorth,
        boolean hasGrid) {
    public DropFacts {
        unreadRoofs = List.copyOf(unreadRoofs);
        unreadSupports = List.copyOf(unreadSupports);
    }

    /** An element that was not read, and why. */
    public record Unread(Element element, String reason) {}
}
