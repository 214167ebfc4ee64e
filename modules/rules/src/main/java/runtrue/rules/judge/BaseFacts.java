package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import runtrue.ifc.Element;
import runtrue.roof.Roof;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;

/** Facts that hold for a whole drop: the system's, the settings', the drop's own. */
final class BaseFacts {
    private BaseFacts() {}

    static Facts of(FactCatalogue catalogue, RoofSystem system, DropSettings settings, Roof roof, DropFacts drop) {
        Facts facts = StatedFacts.of(catalogue, system, settings);
        double area = roof.planes().stream().mapToDouble(p -> p.plane().area()).sum();
        facts.know("drop.name", drop.name(), "")
                .know("drop.files", drop.files(), "")
                .know("drop.planes", roof.planes().size(), "")
                .know("drop.roof_area", area, "sum of the planes")
                .know("drop.unread_roofs", drop.unreadRoofs().size(), "")
                .know("drop.unread_supports", drop.unreadSupports().size(), "")
                .know("drop.unlocated_supports", drop.unlocatedSupports().size(), "")
                .know("drop.unlocated_things", drop.unlocatedThings().size(), "")
                .know("drop.unlocated_names", names(drop), "")
                .know("drop.has_true_north", drop.hasTrueNorth(), "")
                .know("drop.has_grid", drop.hasGrid(), "");
        return facts;
    }

    /** Enough of them to find the rest by. */
    private static String names(DropFacts drop) {
        List<Element> all = new ArrayList<>(drop.unlocatedSupports());
        all.addAll(drop.unlocatedThings());
        String names = all.stream()
                .limit(3)
                .map(e -> e.ifcClass() + " \"" + e.name() + "\" (" + e.file() + " #" + e.stepId() + ")")
                .collect(Collectors.joining(", "));
        return all.size() > 3 ? names + " and " + (all.size() - 3) + " more" : names;
    }
}
