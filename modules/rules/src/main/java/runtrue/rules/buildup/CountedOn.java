package runtrue.rules.buildup;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the quantity of an item is worked out for, one by one, and the groups of facts that it may then use. */
@SuppressWarnings("ImmutableEnumChecker") // List.of is immutable, but carries no annotation
public enum CountedOn {
    DROP(List.of("drop")),
    PLANE(List.of("drop", "plane")),
    SHEET(List.of("drop", "plane", "sheet")),
    /** Where a sheet lies over a support line. */
    SUPPORT_CROSSING(List.of("drop", "plane", "sheet", "support")),
    /** Where a rib lies over a support line: the place of a clip. */
    RIB_ON_SUPPORT(List.of("drop", "plane", "support", "rib")),
    SUPPORT_LINE_ON_PLANE(List.of("drop", "plane", "support")),
    /** An edge of the kinds that the item names; one that two planes share is one edge. */
    EDGE(List.of("drop", "edge")),
    PENETRATION(List.of("drop", "plane", "penetration"));

    private final List<String> groups;

    CountedOn(List<String> groups) {
        this.groups = groups;
    }

    public static Optional<CountedOn> find(String text) {
        return Arrays.stream(values()).filter(on -> on.label().equals(text)).findFirst();
    }

    /** As build-up files say it: {@code rib on support}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    List<String> groups() {
        return groups;
    }
}
