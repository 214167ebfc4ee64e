package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import runtrue.roof.PlaneLayout;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.TruePlane;
import runtrue.rules.cel.Facts;

/** Facts of how truly a plane's supports lie, and of what stands above them. */
final class BearingFacts {
    private static final List<String> OF_SUPPORTS = List.of(
            "depth_to_supports",
            "gap_to_supports",
            "support_deviation",
            "support_step",
            "support_twist",
            "support_tilt",
            "proud_items",
            "proud_height",
            "unread_things");

    private BearingFacts() {}

    static void add(PlaneLayout layout, Facts facts) {
        Bearing bearing = layout.bearing();
        facts.know("plane.carried_by", bearing.kind().name().toLowerCase(Locale.ROOT), "members and layers below");
        Optional<TruePlane> measured = bearing.truePlane();
        if (measured.isEmpty()) {
            OF_SUPPORTS.forEach(name -> facts.miss("plane." + name, lack(layout)));
            return;
        }
        TruePlane truth = measured.get();
        facts.know("plane.depth_to_supports", -truth.level(), "skin to the median level of the supports")
                .know("plane.support_deviation", truth.deviation(), "contact faces against the contact plane")
                .know("plane.proud_items", bearing.proud().size(), "")
                .know("plane.proud_height", highest(bearing), "above the contact plane")
                .know("plane.unread_things", bearing.unread().size(), "");
        truth.gap()
                .ifPresentOrElse(
                        gap -> facts.know("plane.gap_to_supports", gap, "modelled depth less the stated one"),
                        () -> facts.miss(
                                "plane.gap_to_supports", "is not known: the drop's settings state no build_up_depth"));
        String alone = "does not exist: no two supports follow each other along the fall";
        truth.step()
                .ifPresentOrElse(
                        step -> facts.know("plane.support_step", step, "neighbours along the fall"),
                        () -> facts.miss("plane.support_step", alone));
        truth.twist()
                .ifPresentOrElse(
                        twist -> facts.know("plane.support_twist", twist, "neighbours along the fall"),
                        () -> facts.miss("plane.support_twist", alone));
        truth.tilt()
                .ifPresentOrElse(
                        tilt -> facts.know("plane.support_tilt", tilt, "least squares through the contact faces"),
                        () -> facts.miss("plane.support_tilt", "does not exist: it takes two lines"));
    }

    /** Why nothing is known of the supports' contact faces. */
    static String lack(PlaneLayout layout) {
        String remarks = String.join("; ", layout.remarks());
        if (!layout.supports().isEmpty()) {
            return "is not known: " + remarks;
        }
        return "is not known: no supports across the fall were found" + (remarks.isEmpty() ? "" : " (" + remarks + ")");
    }

    private static double highest(Bearing bearing) {
        return bearing.proud().stream().mapToDouble(NearThing::above).max().orElse(0);
    }
}
