package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import runtrue.ifc.Element;
import runtrue.roof.Roof;
import runtrue.roof.SupportPiece;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.subject.SupportPieces;

/** Facts that hold for a whole drop: the system's, the settings', the drop's own. */
final class BaseFacts {
    /** Common practice, no source: nobody falls through less, metres. */
    private static final double BODY = 0.3;

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
                .know("drop.has_grid", drop.hasGrid(), "")
                .know("drop.openings", openings(roof), "penetrations of at least 0.3 m both ways");
        List<SupportPiece> supports = SupportPieces.of(roof.planes());
        return facts.know("drop.supports", supports.size(), "pieces of support lines")
                .know("drop.supports_of_unknown_metal", (double) SupportPieces.ofUnknownMetal(roof.planes(), facts), "")
                .know(
                        "drop.supports_of_unknown_thickness",
                        (double) supports.stream()
                                .filter(p -> p.thickness().isEmpty())
                                .count(),
                        "")
                .know("drop.lapped_supports", (double) SupportPieces.lapped(roof.planes()), "");
    }

    private static double openings(Roof roof) {
        return roof.planes().stream()
                .flatMap(l -> l.plane().penetrations().stream())
                .filter(p -> Math.min(p.width(), p.length()) >= BODY)
                .count();
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
