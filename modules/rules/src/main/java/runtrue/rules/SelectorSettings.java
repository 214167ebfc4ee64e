package runtrue.rules;

import java.util.List;
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

    /** What a pattern is held against. */
    public enum Subject {
        NAME,
        TYPE_NAME,
        CLASS,
        CLASSIFICATION,
        PROPERTY
    }

    /**
     * A selector.
     *
     * @param property as {@code Set.Property}; empty unless the subject is a property
     * @param pattern regular expression that must be found in the text, case ignored
     */
    public record Selector(Subject subject, String property, Pattern pattern) {}
}
