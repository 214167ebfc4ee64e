package runtrue.ifc.select;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    Optional<Evidence> evidence(List<Selector> selectors) {
        for (Selector selector : selectors) {
            Optional<Evidence> evidence = evidence(selector);
            if (evidence.isPresent()) {
                return evidence;
            }
        }
        return Optional.empty();
    }

    private Optional<Evidence> evidence(Selector selector) {
        if (!selector.admits(entity)) {
            return Optional.empty();
        }
        Map<String, Grounds> reasons = new LinkedHashMap<>();
        boolean holds = typed(selector.predefinedTypes(), reasons)
                && selector.name().map(pattern -> named(pattern, reasons)).orElse(true)
                && selector.property().map(match -> hasProperty(match, reasons)).orElse(true)
                && selector.classification()
                        .map(pattern -> classified(pattern, reasons))
                        .orElse(true);
        if (!holds) {
            return Optional.empty();
        }
        if (reasons.isEmpty()) {
            return Optional.of(new Evidence(Grounds.CLASS, "class only"));
        }
        Grounds surest = Collections.min(reasons.values());
        return Optional.of(new Evidence(surest, String.join(", ", reasons.keySet())));
    }

    private boolean typed(Set<String> wanted, Map<String, Grounds> reasons) {
        if (wanted.isEmpty()) {
            return true;
        }
        String stated = entity.model().predefinedType(entity);
        if (wanted.contains(stated) && !stated.isEmpty() && !stated.equals("NOTDEFINED")) {
            reasons.put("predefined type " + stated, Grounds.TYPED);
        }
        return wanted.contains(stated);
    }

    private boolean named(Pattern pattern, Map<String, Grounds> reasons) {
        for (String text : names()) {
            String word = text.isEmpty() ? "" : words.in(text, pattern);
            if (!word.isEmpty()) {
                reasons.put("name matches \"" + word + "\"", Grounds.NAMED);
                return true;
            }
        }
        return false;
    }

    private List<String> names() {
        String typeName = type == null ? "" : type.text("Name");
        return List.of(entity.text("Name"), entity.text("ObjectType"), typeName, entity.text("Tag"));
    }

    private boolean hasProperty(PropertyMatch match, Map<String, Grounds> reasons) {
        PropertyValue value = described().properties().get(match.property());
        if (value == null || !match.pattern().matcher(value.text()).find()) {
            return false;
        }
        reasons.put("property " + match.property() + " is \"" + value.text() + "\"", Grounds.STATED);
        return true;
    }

    private boolean classified(Pattern pattern, Map<String, Grounds> reasons) {
        for (String text : described().classifications()) {
            if (pattern.matcher(text).find()) {
                reasons.put("classification \"" + text + "\"", Grounds.STATED);
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
