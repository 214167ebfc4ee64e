package runtrue.result;

import java.util.List;

/**
 * Something amiss with a model file.
 *
 * @param kind stable word for it, for example {@code open-body}
 * @param title a few words for people
 * @param file display name of the file
 * @param detail of the file as a whole; empty where the items tell it
 * @param why it matters for the roof, one sentence
 * @param action what the authoring team can do, one sentence
 * @param items elements that it concerns; empty when it concerns the whole file
 */
public record HealthLine(
        String kind,
        Importance importance,
        String title,
        String file,
        String detail,
        String why,
        String action,
        List<Item> items) {
    public HealthLine {
        items = List.copyOf(items);
    }

    /**
     * One element.
     *
     * @param detail what is amiss with it in particular; empty where the title says it all
     */
    public record Item(ElementRef element, String detail) {}
}
