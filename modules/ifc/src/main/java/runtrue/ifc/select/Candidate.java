package runtrue.ifc.select;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.PropertyValue;

/** An element under test. What costs more (its full description) is worked out only when a selector asks for it. */
final class Candidate {
    private final IfcEntity entity;
    private final FoundWords words;
    private final @Nullable IfcEntity type;
    private @Nullable Element described;

    Candidate(IfcEntity entity, FoundWords words) {
        this.entity = entity;
        this.words = words;
        type = entity.model().typeOf(entity);
    }

    /** Why the first selector that holds does so; empty when none does. */
    Optional<String> evidence(List<Selector> selectors) {
        for (Selector selector : selectors) {
            Optional<String> evidence = evidence(selector);
            if (evidence.isPresent()) {
                return evidence;
            }
        }
        return Optional.empty();
    }

    private Optional<String> evidence(Selector selector) {
        if (!selector.classes().isEmpty() && selector.classes().stream().noneMatch(entity::isA)) {
            return Optional.empty();
        }
        Set<String> reasons = new LinkedHashSet<>();
        boolean holds = typed(selector.predefinedTypes(), reasons)
                && selector.name().map(pattern -> named(pattern, reasons)).orElse(true)
                && selector.property().map(match -> hasProperty(match, reasons)).orElse(true)
                && selector.classification()
                        .map(pattern -> classified(pattern, reasons))
                        .orElse(true);
        if (!holds) {
            return Optional.empty();
        }
        return Optional.of(reasons.isEmpty() ? "class only" : String.join(", ", reasons));
    }

    private boolean typed(Set<String> wanted, Set<String> reasons) {
        if (wanted.isEmpty()) {
            return true;
        }
        String stated = entity.model().predefinedType(entity);
        if (wanted.contains(stated) && !stated.isEmpty() && !stated.equals("NOTDEFINED")) {
            reasons.add("predefined type " + stated);
        }
        return wanted.contains(stated);
    }

    private boolean named(Pattern pattern, Set<String> reasons) {
        for (String text : names()) {
            String word = text.isEmpty() ? "" : words.in(text, pattern);
            if (!word.isEmpty()) {
                reasons.add("name matches \"" + word + "\"");
                return true;
            }
        }
        return false;
    }

    private List<String> names() {
        String typeName = type == null ? "" : type.text("Name");
        return List.of(entity.text("Name"), entity.text("ObjectType"), typeName, entity.text("Tag"));
    }

    private boolean hasProperty(PropertyMatch match, Set<String> reasons) {
        PropertyValue value = described().properties().get(match.property());
        if (value == null || !match.pattern().matcher(value.text()).find()) {
            return false;
        }
        reasons.add("property " + match.property() + " is \"" + value.text() + "\"");
        return true;
    }

    private boolean classified(Pattern pattern, Set<String> reasons) {
        for (String text : described().classifications()) {
            if (pattern.matcher(text).find()) {
                reasons.add("classification \"" + text + "\"");
                return true;
            }
        }
        return false;
    }

    private Element described() {
        Element known = described;
        if (known == null) {
            known = entity.model().describe(entity);
            described = known;
        }
        return known;
    }
}
