package runtrue.rules;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which elements are roofs or supports when classes and types do not tell, and which are neither. An element is chosen
 * when one selector of the list fits.
 */
public record SelectorSettings(List<Selector> roofs, List<Selector> supports, List<Selector> excluded) {
    public static final SelectorSettings NONE = new SelectorSettings(List.of(), List.of(), List.of());

    public SelectorSettings {
        roofs = List.copyOf(roofs);
        supports = List.copyOf(supports);
        excluded = List.copyOf(excluded);
    }

    /**
     * A selector: an element must meet every condition that is given. Patterns are regular expressions that must be found
     * in the text, case ignored.
     *
     * @param name of the element, its object type, its type or its tag
     * @param className IFC class, subtypes included; empty for any
     * @param classification code or name of a classification reference
     * @param property as {@code Set.Property}; empty when no property is asked for
     * @param value of that property
     */
    public record Selector(
            Optional<Pattern> name,
            String className,
            Optional<Pattern> classification,
            String property,
            Optional<Pattern> value) {}
}
