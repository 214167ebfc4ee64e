package runtrue.roof.health;

import java.util.List;
import runtrue.ifc.Element;

/**
 * One thing amiss in one file, with all elements that it concerns.
 *
 * @param detail of the file as a whole; empty where the items tell it
 * @param items elements in the order of the file; empty when it concerns the whole file
 */
public record HealthLine(HealthKind kind, String file, String detail, List<Item> items) {
    public HealthLine {
        items = List.copyOf(items);
    }

    /** An element with what is amiss with it in particular; empty where the kind says it all. */
    public record Item(Element element, String detail) {}
}
