package runtrue.rules.cel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a rule can be for, and the groups of facts that it may then use. */
@SuppressWarnings("ImmutableEnumChecker") // records and List.of are immutable, but carry no annotation
public enum SubjectKind {
    DROP(List.of("drop")),
    BUILDING(List.of("drop", "building")),
    PLANE(List.of("drop", "building", "plane")),
    SHEET(List.of("drop", "building", "plane", "sheet")),
    SPAN(List.of("drop", "building", "plane", "span")),
    SUPPORT(List.of("drop", "building", "plane", "support")),
    OBSTACLE(List.of("drop", "building", "plane", "obstacle")),
    PENETRATION(List.of("drop", "building", "plane", "penetration")),
    /** A device, equipment or the like that is fixed on the sheets. */
    FIXTURE(List.of("drop", "building", "plane", "fixture")),
    ZONE(List.of("drop", "building", "plane", "zone")),
    ELEMENT(List.of("drop", "element")),
    /** A value that the model states, beside the one that the geometry gives. */
    STATED(List.of("drop", "stated"));

    private final List<String> groups;

    SubjectKind(List<String> groups) {
        this.groups = groups;
    }

    public static Optional<SubjectKind> find(String text) {
        return Arrays.stream(values()).filter(kind -> kind.label().equals(text)).findFirst();
    }

    /** As rule files say it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a fact of that group (the word before the dot) is offered. System and settings always are. */
    boolean offers(String group) {
        return groups.contains(group) || group.equals("system") || group.equals("settings");
    }
}
