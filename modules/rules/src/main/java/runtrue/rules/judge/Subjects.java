package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Point;
import runtrue.ifc.Element;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofPlane;
import runtrue.roof.above.Fixture;
import runtrue.rules.DropSettings;
import runtrue.rules.OrderLengths;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.subject.BearingParts;
import runtrue.rules.judge.subject.Drainage;
import runtrue.rules.judge.subject.Feeders;
import runtrue.rules.judge.subject.FixtureParts;
import runtrue.rules.judge.subject.PenetrationParts;
import runtrue.rules.judge.subject.PlaneFacts;
import runtrue.rules.judge.subject.PlaneParts;
import runtrue.rules.judge.subject.StatedSubject;
import runtrue.rules.judge.subject.Subject;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;

/** Takes a roof apart into subjects with their facts. */
final class Subjects {
    private final Roof roof;
    private final DropFacts drop;
    private final RoofSystem system;
    private final DropSettings settings;
    private final Facts base;
    private final Map<String, BodyZones> zones = new HashMap<>();
    private final List<Fixture> fixtures;
    private final Feeders feeders;
    private final List<Subject> all = new ArrayList<>();
    private final Map<String, Subject> planes = new LinkedHashMap<>();

    /** Prepares; zones are those of the roof's bodies. */
    Subjects(Roof roof, DropFacts drop, RoofSystem system, DropSettings settings, Facts base, List<BodyZones> zones) {
        this.roof = roof;
        this.drop = drop;
        this.system = system;
        this.settings = settings;
        this.base = base;
        zones.forEach(z -> this.zones.put(z.body(), z));
        feeders = new Feeders(roof);
        fixtures = FixtureParts.chosen(roof.above().fixtures(), settings);
    }

    List<Subject> all() {
        all.add(new Subject(SubjectKind.DROP, "the drop", "", List.of(), Optional.empty(), "drop", base));
        drop.unreadRoofs().forEach(u -> element(u.element(), u.reason(), "roof", false));
        drop.unreadSupports().forEach(u -> element(u.element(), u.reason(), "support", false));
        roof.unplaced().stream()
                .filter(u -> !u.counted())
                .forEach(u -> element(u.element().element(), u.reason(), "roof", true));
        drop.stated().forEach(value -> all.add(StatedSubject.of(value, base)));
        for (RoofBody body : roof.bodies()) {
            body(body);
        }
        for (PlaneLayout layout : roof.planes()) {
            if (!planes.containsKey(layout.plane().id())) {
                Facts facts = base.inner();
                for (String name :
                        List.of("plan_width", "plan_length", "plan_area", "eave_level", "ridge_level", "height")) {
                    facts.miss("building." + name, "is not known: the plane belongs to no building");
                }
                plane(layout, facts);
                String reason = "the plane belongs to no building";
                lackZones(layout.plane().id(), reason);
                fixtures(layout, List.of(), reason);
            }
        }
        return all;
    }

    /** Only elements that something is amiss with: those of a plane are judged with it. */
    private void element(Element element, String reason, String role, boolean hasBody) {
        Facts facts = base.inner()
                .know("element.id", element.globalId(), "")
                .know("element.class", element.ifcClass(), "")
                .know("element.name", element.name(), "")
                .know("element.role", role, "")
                .know("element.has_body", hasBody, "")
                .know("element.placed", false, "")
                .know("element.reason", reason, "");
        String name = role + " element " + element.ifcClass() + " \"" + element.name() + "\"";
        String key = element.file() + "#" + element.globalId() + "#" + element.stepId();
        all.add(new Subject(SubjectKind.ELEMENT, name, "", List.of(element), Optional.empty(), key, facts));
    }

    private void body(RoofBody body) {
        Facts facts = building(body, settings, base);
        List<PlaneLayout> layouts = roof.planes().stream()
                .filter(layout -> body.planes().contains(layout.plane().id()))
                .toList();
        List<Element> elements =
                layouts.stream().flatMap(l -> elements(l.plane()).stream()).toList();
        Point middle = body.plan().getInteriorPoint();
        Optional<Vector3D> place = middle.isEmpty()
                ? Optional.empty()
                : Optional.of(Vector3D.of(middle.getX(), middle.getY(), 0)
                        .add(flat(roof.settings().origin()))
                        .add(Vector3D.of(0, 0, body.ridgeLevel())));
        all.add(new Subject(SubjectKind.BUILDING, "the roof " + body.id(), "", elements, place, body.id(), facts));
        layouts.forEach(layout -> plane(layout, facts));
        zones(body, layouts);
    }

    static Facts building(RoofBody body, DropSettings settings, Facts base) {
        Facts facts = base.inner()
                .know("building.plan_width", body.width(), "least rectangle around the plan")
                .know("building.plan_length", body.length(), "least rectangle around the plan")
                .know("building.plan_area", body.plan().getArea(), "union of the planes in plan")
                .know("building.eave_level", body.eaveLevel(), "")
                .know("building.ridge_level", body.ridgeLevel(), "");
        settings.si("building_height")
                .ifPresentOrElse(
                        height -> facts.know(
                                "building.height", height, settings.origins().getOrDefault("building_height", "")),
                        () -> facts.miss(
                                "building.height",
                                "is not stated in the settings; add building_height to runtrue.yaml"));
        return facts;
    }

    private static Vector3D flat(Vector3D origin) {
        return Vector3D.of(origin.getX(), origin.getY(), 0);
    }

    private void plane(PlaneLayout layout, Facts building) {
        RoofPlane plane = layout.plane();
        Drainage drainage = Drainage.of(layout, roof, feeders);
        long fixed = fixtures.stream().filter(f -> f.plane().equals(plane.id())).count();
        Facts facts = PlaneFacts.of(layout, drainage, fixed, building);
        Point middle = plane.outline().getInteriorPoint();
        Subject subject = new Subject(
                SubjectKind.PLANE,
                "plane " + plane.name(),
                plane.id(),
                elements(plane),
                Optional.of(world(plane, middle.getX(), middle.getY())),
                "plane",
                facts);
        all.add(subject);
        planes.put(plane.id(), subject);
        PlaneParts parts = new PlaneParts(
                layout, subject, roof.settings().origin(), new OrderLengths(layout, roof.edges(), system), drainage);
        List<Subject> sheets = parts.sheets();
        List<Subject> spans = parts.spans();
        all.addAll(
                sheets.isEmpty()
                        ? List.of(
                                Subject.lacking(SubjectKind.SHEET, subject, because("no sheets were laid out", layout)))
                        : sheets);
        all.addAll(
                spans.isEmpty()
                        ? List.of(Subject.lacking(
                                SubjectKind.SPAN,
                                subject,
                                because("its spans are not known: no supports found", layout)))
                        : spans);
        bearing(layout, subject);
        all.addAll(new PenetrationParts(
                        layout,
                        subject,
                        roof.settings().origin(),
                        roof.settings().coverWidth())
                .penetrations());
    }

    private void fixtures(PlaneLayout layout, List<PlaneZone> zones, String lack) {
        Subject plane = planes.get(layout.plane().id());
        if (plane != null) {
            all.addAll(FixtureParts.subjects(
                    fixtures, layout, plane, roof.settings().origin(), zones, lack));
        }
    }

    private void bearing(PlaneLayout layout, Subject plane) {
        BearingParts parts = new BearingParts(
                layout, plane, roof.settings().origin(), !drop.unlocatedThings().isEmpty());
        all.addAll(parts.supports());
        all.addAll(parts.obstacles());
    }

    private static String because(String what, PlaneLayout layout) {
        return layout.remarks().isEmpty() ? what : what + " (" + String.join("; ", layout.remarks()) + ")";
    }

    private void zones(RoofBody body, List<PlaneLayout> layouts) {
        BodyZones made = zones.getOrDefault(body.id(), new BodyZones(body.id(), List.of(), Map.of(), List.of()));
        for (PlaneLayout layout : layouts) {
            String id = layout.plane().id();
            List<PlaneZone> own = made.zones().stream()
                    .filter(z -> z.zone().plane().equals(id))
                    .toList();
            String lack = made.lacking().getOrDefault(id, "no zones could be formed on its plan outline");
            if (own.isEmpty()) {
                lackZones(id, lack);
            }
            fixtures(layout, own, lack);
            own.forEach(zone -> zone(layout, zone, own));
        }
    }

    private void lackZones(String plane, String reason) {
        Subject subject = planes.get(plane);
        if (subject != null) {
            all.add(Subject.lacking(SubjectKind.ZONE, subject, reason));
        }
    }

    private void zone(PlaneLayout layout, PlaneZone zone, List<PlaneZone> ofPlane) {
        Subject plane = planes.get(zone.zone().plane());
        if (plane == null) {
            return;
        }
        Point middle = zone.zone().region().getInteriorPoint();
        Optional<Vector3D> place =
                middle.isEmpty() ? plane.place() : Optional.of(world(layout.plane(), middle.getX(), middle.getY()));
        ZoneName name = ZoneName.of(zone, ofPlane);
        all.add(new Subject(
                SubjectKind.ZONE,
                name.words() + " of " + plane.name(),
                zone.zone().plane(),
                plane.elements(),
                place,
                name.key(),
                ZoneFacts.of(zone, system, plane.facts())));
    }

    private Vector3D world(RoofPlane plane, double u, double v) {
        return plane.at(u, v).add(roof.settings().origin());
    }

    private static List<Element> elements(RoofPlane plane) {
        return plane.elements().stream().map(ReadElement::element).toList();
    }
}
