package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

/** Elements that share a GlobalId or have none. Only elements are looked at: nothing else is ever reported by its id. */
final class DuplicateIds {
    /** More than this are counted, not listed. */
    private static final int LISTED = 10;

    private DuplicateIds() {}

    static List<String> in(StepModel model) {
        Map<String, Integer> first = new LinkedHashMap<>();
        Map<String, StringBuilder> repeated = new TreeMap<>();
        for (int id : model.idsOf("IfcElement")) {
            IfcEntity element = model.entity(id);
            String globalId = globalId(element, model);
            Integer earlier = first.putIfAbsent(globalId, id);
            if (earlier != null) {
                repeated.computeIfAbsent(
                                globalId,
                                key -> new StringBuilder(model.entity(earlier).label()))
                        .append(", ")
                        .append(element.label());
            }
        }
        List<String> notes = new ArrayList<>();
        repeated.forEach((globalId, labels) -> {
            if (notes.size() < LISTED) {
                notes.add("GlobalId " + (globalId.isEmpty() ? "(none)" : globalId) + " is shared by " + labels + ".");
            }
        });
        if (repeated.size() > LISTED) {
            notes.add("In all, " + repeated.size() + " GlobalIds are shared by several elements.");
        }
        return notes;
    }

    /** A record that cannot be read is told apart by its number. */
    private static String globalId(IfcEntity element, StepModel model) {
        try {
            return element.text("GlobalId");
        } catch (IfcException e) {
            model.note(element.label() + " cannot be read: " + e.getMessage());
            return element.label();
        }
    }
}
