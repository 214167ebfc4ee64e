package runtrue.rules.cel;

import static runtrue.rules.units.Dimension.ANGLE;
import static runtrue.rules.units.Dimension.AREA;
import static runtrue.rules.units.Dimension.FORCE;
import static runtrue.rules.units.Dimension.LENGTH;
import static runtrue.rules.units.Dimension.MASS;
import static runtrue.rules.units.Dimension.NONE;
import static runtrue.rules.units.Dimension.PRESSURE;
import static runtrue.rules.units.Dimension.TEMPERATURE;
import static runtrue.rules.units.Dimension.VELOCITY;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runtrue.rules.units.Dimension;

/** All facts, in one list: what rules are checked against and what the judge must offer. */
public final class FactCatalogue {
    private final Map<String, FactSpec> facts = new LinkedHashMap<>();

    private FactCatalogue() {}

    /** The facts of this version. */
    public static FactCatalogue standard() {
        FactCatalogue catalogue = new FactCatalogue();
        catalogue.drop();
        catalogue.building();
        catalogue.plane();
        catalogue.partsOfPlane();
        catalogue.element();
        catalogue.stated();
        catalogue.system();
        catalogue.settings();
        return catalogue;
    }

    public List<FactSpec> all() {
        return List.copyOf(facts.values());
    }

    /** The facts that a rule for this kind of subject may use. */
    public List<FactSpec> offeredTo(SubjectKind kind) {
        return facts.values().stream().filter(f -> kind.offers(f.group())).toList();
    }

    /** Names after {@code group.} with what they are, in order. */
    public Map<String, FactSpec> group(String group) {
        Map<String, FactSpec> found = new LinkedHashMap<>();
        for (FactSpec fact : new ArrayList<>(facts.values())) {
            if (fact.group().equals(group)) {
                found.put(fact.name().substring(group.length() + 1), fact);
            }
        }
        return found;
    }

    private void drop() {
        text("drop.name", "name of the drop");
        number("drop.files", NONE, "model files in the drop");
        number("drop.planes", NONE, "roof planes found");
        number("drop.roof_area", AREA, "true area of all planes, penetrations off");
        number("drop.unread_roofs", NONE, "roof elements whose shape could not be read");
        number("drop.unread_supports", NONE, "members whose shape could not be read");
        number("drop.unlocated_supports", NONE, "those of them of which nothing tells how far they extend");
        number("drop.unlocated_things", NONE, "other things of which neither shape nor extent could be read");
        text("drop.unlocated_names", "names of both, the first few");
        truth("drop.has_true_north", "whether the model states true north");
        truth("drop.has_grid", "whether the model has a grid");
        number("drop.openings", NONE, "penetrations that a person may fall through: at least 0.3 m both ways");
        number("drop.supports", NONE, "supports found, piece by piece");
        number(
                "drop.supports_of_unknown_metal",
                NONE,
                "those of which neither a material nor settings.support_metal tells the surface");
        number(
                "drop.supports_of_unknown_thickness",
                NONE,
                "those of which no thickness under the flange can be measured");
        number("drop.lapped_supports", NONE, "those that lie alongside the next one on their line");
    }

    private void building() {
        number("building.plan_width", LENGTH, "short side of the least rectangle around the roof in plan");
        number("building.plan_length", LENGTH, "long side of it");
        number("building.plan_area", AREA, "area of the roof in plan");
        number("building.eave_level", LENGTH, "lowest level of the roof");
        number("building.ridge_level", LENGTH, "highest level of the roof");
        number("building.height", LENGTH, "height above ground that the settings state");
    }

    private void plane() {
        text("plane.name", "name for people");
        text("plane.id", "stable id");
        number("plane.pitch", ANGLE, "angle to the horizontal; not known of a curved plane");
        number("plane.least_pitch", ANGLE, "least pitch along the arc of a curved plane; the pitch of a flat one");
        number(
                "plane.greatest_pitch",
                ANGLE,
                "greatest pitch along the arc of a curved plane; the pitch of a flat one");
        truth("plane.curved", "whether sheets have to be curved along the fall");
        number(
                "plane.eave_pitch",
                ANGLE,
                "pitch where water leaves a curved plane, the lesser of two; the pitch of a flat one");
        number("plane.sag", LENGTH, "depth of the water that a hollow in a curved plane's arc holds; 0 for a flat one");
        number(
                "plane.flat_stretch",
                LENGTH,
                "longest stretch of a curved plane's arc flatter than system.minimum_pitch");
        number("plane.radius", LENGTH, "radius of a curved plane's arc");
        number("plane.azimuth", ANGLE, "downslope direction, clockwise from the model's north axis");
        number("plane.area", AREA, "true area, penetrations off");
        number("plane.plan_area", AREA, "area in plan, penetrations off");
        number("plane.longest_run", LENGTH, "longest sheet");
        number("plane.width_across", LENGTH, "extent across the fall");
        number("plane.eave_level", LENGTH, "lowest level");
        number("plane.ridge_level", LENGTH, "highest level");
        number("plane.thickness", LENGTH, "thickness of the modelled elements");
        number("plane.support_lines", NONE, "support lines found");
        number("plane.elements", NONE, "elements that the plane is made of");
        number("plane.penetrations", NONE, "holes");
        number("plane.fixtures", NONE, "things fixed on it");
        text("plane.metal_stated", "surface of the sheet as the model's material says; unknown where it does not");
        text("plane.metal", "surface of the sheet: as the model's material says, or else the system");
        truth("plane.drained_on", "whether a roof above it may drain on to it");
        text("plane.metal_above", "surface of that roof's sheets, known in the same way");
        truth("plane.level", "whether the pitch is below 0.2 degrees");
        bearing();
    }

    private void bearing() {
        number("plane.depth_to_supports", LENGTH, "sheet's skin down to the supports' contact plane, as modelled");
        number(
                "plane.gap_to_supports",
                LENGTH,
                "stated build-up's underside down to the contact plane; negative for a clash");
        number(
                "plane.support_deviation",
                LENGTH,
                "greatest distance of a support's contact face from the contact plane");
        number("plane.support_step", LENGTH, "greatest step between neighbouring supports along the fall");
        number("plane.support_twist", LENGTH, "greatest lean of a support against the next, over the width they share");
        number("plane.support_tilt", ANGLE, "between the plane that fits the contact faces best and the roof plane");
        number("plane.proud_items", NONE, "things that stand above the contact plane within the sheeted area");
        number("plane.proud_height", LENGTH, "how far the highest of them does; 0 when there is none");
        number(
                "plane.unread_things",
                NONE,
                "things that may reach the supports' contact plane, but whose shape could not be read");
        number(
                "plane.unread_supports",
                NONE,
                "members that may lie under the plane, but whose shape could not be read");
        text("plane.carried_by", "purlins, battens, rafters, deck or unknown");
    }

    private void partsOfPlane() {
        number("sheet.number", NONE, "strip from the set-out verge, from 1");
        number("sheet.length", LENGTH, "longest line along the fall");
        number(
                "sheet.order_length",
                LENGTH,
                "that it is ordered in: into the gutter, short of the ridge, in cutting steps");
        number("sheet.width", LENGTH, "width covered");
        number("sheet.area", AREA, "net area covered");
        truth("sheet.trimmed", "whether it is narrower than the cover width");
        truth("sheet.tapered", "whether an end is not square");
        truth("sheet.cut", "whether a penetration cuts it");
        rain();
        text("span.kind", "end span, internal span, eave overhang or ridge overhang");
        number("span.length", LENGTH, "greatest length along the fall");
        text("span.lower", "support line below");
        text("span.upper", "support line above");
        text("support.name", "name in the model");
        number("support.line", NONE, "its line's number from the eave");
        number("support.deviation", LENGTH, "greatest distance of its contact face from the contact plane");
        number("support.difference", LENGTH, "greatest distance between its contact face and that of any of the plane");
        text("support.side", "high or low");
        number("support.flange", LENGTH, "width along the fall of the face that clips are screwed to");
        number("support.thickness", LENGTH, "of the metal or timber under that face");
        number("support.lap", LENGTH, "length that it lies alongside the next one on its line; 0 where it does not");
        truth("support.carrying", "whether sheets reach it: not so where it is a little off the level of the others");
        text("support.metal", "surface, or timber: as the model's material says, or else the settings; or unknown");
        text("obstacle.name", "name in the model");
        text("obstacle.class", "class in the model");
        number("obstacle.height", LENGTH, "how far it stands above the supports' contact plane; 0 when nothing does");
        truth("obstacle.through", "whether it rises out of the sheets' skin");
        penetration();
        fixture();
        zone();
    }

    private void rain() {
        number("sheet.catchment", AREA, "plan area of the sheet that rain falls on: longest line in plan x width");
        number("sheet.catchment_rise", AREA, "the same seen from the front: rise of that line x width");
        number("sheet.wall_above", AREA, "area of walls that drain on to it, each no higher than 10 m");
        number("sheet.roof_above", AREA, "plan area of roofs that drain on to it");
        number("sheet.roof_above_rise", AREA, "the same seen from the front");
    }

    private void penetration() {
        number("penetration.width", LENGTH, "extent across the fall");
        number("penetration.length", LENGTH, "extent along the fall");
        number("penetration.area", AREA, "true area");
        number("penetration.pans", NONE, "sheets side by side that it cuts or takes the place of");
        number("penetration.to_ridge", LENGTH, "least distance up the fall to the edge of the plane");
        number("penetration.to_eave", LENGTH, "least distance down the fall to it");
        number("penetration.to_side", LENGTH, "least distance across the fall to it");
        number("penetration.catchment", AREA, "plan area above it whose water it holds up");
        number(
                "penetration.beside",
                AREA,
                "plan area that a pan beside it drains: its own and half of what is held up");
        number("penetration.beside_rise", AREA, "the same seen from the front");
        number("penetration.from_fixed_point", LENGTH, "of sheet between settings.fixed_point and its far end");
    }

    private void fixture() {
        text("fixture.name", "name in the model");
        text("fixture.class", "class in the model");
        number("fixture.width", LENGTH, "extent across the fall");
        number("fixture.length", LENGTH, "extent along the fall");
        number("fixture.foot", LENGTH, "its lowest point above the skin");
        number("fixture.height", LENGTH, "its highest point above the skin");
        number("fixture.ribs", NONE, "ribs under it");
        text("fixture.metal", "surface as the model's material says; unknown where it does not");
        text("fixture.zone", "corner, edge or interior: the worst of those that it reaches into");
        number("fixture.to_opening", LENGTH, "least distance to a penetration of the plane, along the plane");
    }

    private void zone() {
        text("zone.kind", "corner, edge or interior: where it lies, whatever a standard calls it");
        text("zone.name", "as the standard or the engineer names it, for example F");
        number("zone.width", LENGTH, "width of the strip in plan; not known of a standard's zones");
        number("zone.area", AREA, "true area");
        number("zone.tributary_length", LENGTH, "greatest length of sheet that one support carries");
        number("zone.clip_area", AREA, "area that one clip holds down: tributary length x clip spacing");
        number("zone.suction", PRESSURE, "wind away from the roof on that area, as given or by the standard");
        number("zone.pressing", PRESSURE, "wind on to the roof");
        number("zone.load_factor", NONE, "what suction is multiplied by: wind.load_factor, 1 for given pressures");
        number("zone.clip_force", FORCE, "suction x load factor x clip area");
        number(
                "zone.spacing_allowed",
                LENGTH,
                "greatest length of sheet on one support that overloads no clip, clips spaced as they are");
        number("zone.clip_density", NONE.per(AREA), "clips on a square metre that go with it");
        truth("zone.given", "whether the project's engineer gives the suction");
        text("zone.standard", "standard that the suction is worked out by, or who gives it");
        text("zone.source", "where it stands");
        text("zone.how", "the figures it came from");
    }

    private void element() {
        text("element.id", "GlobalId");
        text("element.class", "class in the model");
        text("element.name", "name in the model");
        text("element.role", "roof or support");
        truth("element.has_body", "whether its shape could be read");
        truth("element.placed", "whether it became part of a plane");
        text("element.reason", "why it was not read or not placed");
    }

    private void stated() {
        text("stated.quantity", "pitch, area, length or thickness: which of the facts below are known");
        text("stated.source", "set and property that states it, or material layers");
        text("stated.element", "name of the element that states it");
        text("stated.role", "roof or support");
        truth("stated.unit_stated", "whether the file gives the value a unit");
        truth("stated.compared", "whether the geometry gives a value to compare with");
        text("stated.reason", "why it was not compared; empty when it was");
        text("stated.derived_from", "what was measured to compare with");
        text("stated.mistake", "what is wrong with it, as a sentence; empty when that cannot be told");
        statedPair("pitch", ANGLE);
        statedPair("area", AREA);
        statedPair("length", LENGTH);
        statedPair("thickness", LENGTH);
    }

    private void statedPair(String quantity, Dimension dimension) {
        String name = "stated." + quantity;
        number(name, dimension, quantity + " as stated");
        number(name + "_derived", dimension, quantity + " by the geometry");
        number(name + "_difference", dimension, "distance between the two");
        number(name + "_tolerance", dimension, "distance that rounding explains, by the program's tolerances");
    }

    private void system() {
        number("system.minimum_pitch", ANGLE, "least pitch that the profile drains at");
        number("system.least_curving_radius", LENGTH, "least radius that the profile can be curved to along the fall");
        number(
                "system.flat_stretch",
                LENGTH,
                "longest stretch over the crown of a curved sheet flatter than minimum_pitch");
        number("system.cover_width", LENGTH, "width that one sheet covers");
        number("system.clip_spacing", LENGTH, "distance across the fall between clips on one support");
        number("system.thickness", LENGTH, "base metal thickness");
        number("system.girth", LENGTH, "width of the strip that one sheet is rolled from");
        number("system.density", MASS.per(AREA).per(LENGTH), "of the metal");
        number("system.expansion", NONE.per(TEMPERATURE), "coefficient of linear thermal expansion");
        number("system.clip_travel", LENGTH, "movement that a clip lets the sheet make");
        number("system.clip_resistance", FORCE, "design resistance of one clip to uplift");
        number("system.screws_per_clip", NONE, "screws that hold one clip");
        number("system.gutter_overhang", LENGTH, "how far sheets reach past the modelled eave into the gutter");
        number("system.ridge_set_back", LENGTH, "how far sheets stop short of the modelled ridge, head or wall");
        number("system.end_lap", LENGTH, "how far two sheets overlap where one run is made of two");
        number("system.cutting_step", LENGTH, "step that the lengths of sheets are rounded up to");
        number("system.build_up_depth", LENGTH, "sheet's skin down to the supports' contact face");
        number("system.support_deviation", LENGTH, "how far a support may be off the contact plane");
        number("system.proud_height", LENGTH, "how far a thing may stand above the contact plane");
        number("system.build_up_tolerance", LENGTH, "how far the supports may be off the build-up's underside");
        number("system.least_strip", LENGTH, "narrowest trimmed sheet that can be fixed");
        number("system.end_lap_pitch", ANGLE, "least pitch for sheets with end laps");
        number("system.penetration_width", LENGTH, "widest penetration that needs no saddle of its own");
        number("system.penetration_clearance", LENGTH, "least distance of a penetration from the edges of a plane");
        number("system.penetration_travel", LENGTH, "movement that the flashing of a penetration takes up");
        number("system.support_flange", LENGTH, "least width of the face that clips are screwed to");
        number("system.support_thickness", LENGTH, "least thickness that the clips' screws hold in");
        number("system.walkable_span", LENGTH, "greatest span that a person may step on between supports");
        text("system.metal", "surface of the sheet, for example zinc-coated steel");
        text("system.fixing_metal", "surface of clips and screws");
        text("system.rib_clamps", "whether loads may be clamped to the ribs: allowed or not allowed");
        text("system.material", "of the sheet");
        text("system.finish", "of the sheet");
        text("system.build_up", "name of the build-up that its quantities are taken off by");
    }

    private void settings() {
        number("settings.uplift.corner", PRESSURE, "design uplift in corner zones");
        number("settings.uplift.edge", PRESSURE, "design uplift in edge zones");
        number("settings.uplift.interior", PRESSURE, "design uplift elsewhere");
        wind();
        number("settings.temperature_range", TEMPERATURE, "coldest to hottest sheet");
        truth("settings.rolled_on_site", "whether sheets are rolled on site");
        number("settings.rolling_limit", LENGTH, "longest sheet that can be rolled and lifted on this site");
        number("settings.transport_length", LENGTH, "longest sheet that can be brought to this site");
        text("settings.fixed_point", "ridge, eave or middle: where the sheet is held");
        number("settings.deflection_allowance", ANGLE, "pitch that deflection of the frame takes away");
        number("settings.rainfall", VELOCITY, "design intensity of rain");
        text("settings.upper_roofs", "gutters or spill: where water of roofs above others goes");
        text("settings.support_metal", "surface of supports whose material does not say it");
        text("settings.environment", "controlled, normal or harsh: how metals in contact are exposed");
        truth("settings.openings_guarded", "whether rooflights and openings bear a person or are guarded");
        text(
                "settings.fixtures",
                "pattern of names of things fixed on the sheets, besides solar devices and equipment");
        number("settings.purlin_lap", LENGTH, "least lap of purlins that are lapped, as their maker states it");
        number("settings.building_height", LENGTH, "above ground, as the declared edge-zone formula wants it");
        text("settings.build_up", "name of the build-up; goes before the system's");
        text("settings.colour", "of the sheets, as it is ordered");
        number("settings.sheets_per_pack", NONE, "sheets that are packed and lifted together");
        number("settings.build_up_depth", LENGTH, "as for the system; goes before it");
    }

    private void wind() {
        text("settings.wind.standard", "standard that zones and pressures are worked out by");
        number("settings.wind.velocity", VELOCITY, "vb,0 (EN), V (ASCE) or V des,theta (AS/NZS)");
        text("settings.wind.terrain", "terrain category of EN 1991-1-4");
        text("settings.wind.exposure", "exposure category of ASCE 7");
        number("settings.wind.orography", NONE, "orography factor co of EN 1991-1-4");
        number("settings.wind.topographic", NONE, "topographic factor Kzt of ASCE 7");
        number("settings.wind.directionality", NONE, "Kd of ASCE 7");
        number("settings.wind.elevation", NONE, "Ke of ASCE 7");
        text("settings.wind.enclosure", "enclosed or partially enclosed, for ASCE 7");
        number("settings.wind.internal.highest", NONE, "highest internal coefficient");
        number("settings.wind.internal.lowest", NONE, "lowest internal coefficient");
        number("settings.wind.external", NONE, "external coefficient of the whole surface, for AS/NZS 1170.2");
        number("settings.wind.eaves_height", LENGTH, "above ground, of the roof that building_height is of");
        number("settings.wind.parapet", LENGTH, "height of the parapet of flat roofs");
        text("settings.wind.form", "form of roofs whose planes do not tell it");
        number("settings.wind.load_factor", NONE, "partial factor on pressures worked out by a standard");
        text("settings.wind.national.values", "file of nationally determined values");
        text("settings.wind.national.coefficients", "file of national tables of coefficients");
        text("settings.wind.given.reference", "document that the engineer's pressures stand in");
        number("settings.wind.given.strip", LENGTH, "width of the engineer's edge strip in plan");
    }

    private void number(String name, Dimension dimension, String about) {
        add(name, FactType.NUMBER, dimension, about);
    }

    private void text(String name, String about) {
        add(name, FactType.TEXT, NONE, about);
    }

    private void truth(String name, String about) {
        add(name, FactType.TRUTH, NONE, about);
    }

    private void add(String name, FactType type, Dimension dimension, String about) {
        facts.put(name, new FactSpec(name, type, dimension, about));
    }
}
