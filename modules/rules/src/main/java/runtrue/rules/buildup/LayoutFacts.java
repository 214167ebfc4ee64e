package runtrue.rules.buildup;

import static runtrue.rules.units.Dimension.ANGLE;
import static runtrue.rules.units.Dimension.AREA;
import static runtrue.rules.units.Dimension.LENGTH;
import static runtrue.rules.units.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.units.Dimension;

/** All facts of a laid-out roof that quantities may rest on, in one list: what build-ups are checked against. */
public final class LayoutFacts {
    /** The group of the values that a build-up states itself. */
    public static final String BUILD_UP = "build_up.";

    private final List<FactSpec> layout = new ArrayList<>();
    private final List<FactSpec> stated = new ArrayList<>();

    private LayoutFacts() {}

    /** The facts of this version. */
    public static LayoutFacts standard() {
        LayoutFacts facts = new LayoutFacts();
        facts.number("drop.planes", NONE, "roof planes found");
        facts.number("drop.roof_area", AREA, "true area of all planes, openings off");
        facts.plane();
        facts.partsOfPlane();
        facts.edges();
        Map<String, FactSpec> system = FactCatalogue.standard().group("system");
        Map<String, FactSpec> settings = FactCatalogue.standard().group("settings");
        facts.stated.addAll(system.values());
        facts.stated.addAll(settings.values());
        return facts;
    }

    /** Those of the layout, without the system's and the settings', which the catalogue of rules lists. */
    public List<FactSpec> ofLayout() {
        return List.copyOf(layout);
    }

    /** Those of roof systems and settings. */
    public List<FactSpec> stated() {
        return List.copyOf(stated);
    }

    /** The facts that an item for this kind of subject may use, besides the build-up's own values. */
    public List<FactSpec> offeredTo(CountedOn on) {
        List<FactSpec> offered = new ArrayList<>(stated);
        layout.stream()
                .filter(f -> on.groups().contains(f.name().substring(0, f.name().indexOf('.'))))
                .forEach(offered::add);
        return offered;
    }

    private void plane() {
        text("plane.name", "name for people");
        number("plane.pitch", ANGLE, "angle to the horizontal; the greatest of a curved plane");
        truth("plane.curved", "whether sheets have to be curved along the fall");
        number("plane.area", AREA, "true area, openings off");
        number("plane.gross_area", AREA, "true area, openings not taken off");
        number("plane.plan_area", AREA, "area in plan, openings off");
        number("plane.width_across", LENGTH, "extent across the fall");
        number("plane.length_along", LENGTH, "extent along the fall");
        number("plane.ribs", NONE, "ribs side by side, those at both edges included");
        number("plane.sheets", NONE, "sheets laid out");
        number("plane.support_lines", NONE, "support lines found");
        number("plane.support_length", LENGTH, "supports under the plane, all lines together");
    }

    private void partsOfPlane() {
        number("sheet.number", NONE, "strip from the set-out verge, from 1");
        number("sheet.length", LENGTH, "square-cut strip that it is cut from, no allowance");
        number(
                "sheet.order_length",
                LENGTH,
                "that it is ordered in: into the gutter, short of the ridge, in cutting steps");
        number("sheet.width", LENGTH, "width covered");
        number("sheet.area", AREA, "net area covered");
        truth("sheet.trimmed", "whether it is narrower than the cover width");
        truth("sheet.tapered", "whether an end is not square");
        truth("sheet.cut", "whether an opening cuts it");
        number("support.line", NONE, "number from the eave, from 1");
        number("support.length", LENGTH, "of the line under the plane, gaps and openings off");
        number("support.ribs", NONE, "ribs that lie over it");
        text("rib.zone", "corner, edge or interior; not known where no zones were formed");
        truth("rib.at_edge", "whether it is the first or last rib of the plane");
        number("penetration.width", LENGTH, "extent across the fall");
        number("penetration.length", LENGTH, "extent along the fall");
        number("penetration.area", AREA, "true area");
        number("penetration.perimeter", LENGTH, "around it");
    }

    private void edges() {
        text("edge.kind", "ridge, hip, valley, verge, eave, head, abutment, box gutter, pitch change or step");
        number("edge.length", LENGTH, "along the edge");
        number("edge.planes", NONE, "planes that share it, 1 or 2");
        number("edge.ribs", NONE, "ribs that end on it, those of both planes");
        number("edge.free_ends", NONE, "its ends where no edge of the item's kinds goes on, 0 to 2");
        number(
                "edge.corners",
                NONE,
                "its ends where one of the item's kinds goes on round a corner, each counted once");
    }

    private void number(String name, Dimension dimension, String about) {
        layout.add(new FactSpec(name, FactType.NUMBER, dimension, about));
    }

    private void text(String name, String about) {
        layout.add(new FactSpec(name, FactType.TEXT, NONE, about));
    }

    private void truth(String name, String about) {
        layout.add(new FactSpec(name, FactType.TRUTH, NONE, about));
    }
}
