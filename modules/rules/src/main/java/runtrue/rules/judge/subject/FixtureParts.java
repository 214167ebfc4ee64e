package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ZoneKind;
import runtrue.roof.above.Fixture;
import runtrue.rules.DropSettings;
import runtrue.rules.RuleException;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.wind.PlaneZone;

/** What is fixed on a plane as subjects. */
public final class FixtureParts {
    /** IFC2X3 has no class for solar panels; there they are told by name. */
    private static final Set<String> CLASSES = Set.of("IfcSolarDevice", "IfcUnitaryEquipment");

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A zone that a fixture shares less of than this it only touches, square metres. */
    private static final double TOUCHES = 1e-4;

    private FixtureParts() {}

    /**
     * Those of the things on planes that rules are about: by class, and by the pattern of names that the settings state.
     *
     * @throws RuleException when that is no pattern
     */
    public static List<Fixture> chosen(List<Fixture> found, DropSettings settings) {
        Optional<Pattern> names = Optional.ofNullable(settings.texts().get("fixtures"))
                .map(text -> {
                    try {
                        return Pattern.compile(text, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
                    } catch (PatternSyntaxException e) {
                        throw new RuleException(settings.origins().getOrDefault("fixtures", settings.file())
                                + ": fixtures is no pattern: " + e.getDescription());
                    }
                });
        return found.stream()
                .filter(f -> CLASSES.contains(f.element().ifcClass())
                        || names.filter(p -> isNamed(p, f.element())).isPresent())
                .toList();
    }

    private static boolean isNamed(Pattern pattern, Element element) {
        return List.of(element.name(), element.objectType(), element.typeName()).stream()
                .anyMatch(text -> pattern.matcher(text).find());
    }

    /**
     * Those on one plane.
     *
     * @param zones of the plane
     * @param lack why there are none
     */
    public static List<Subject> subjects(
            List<Fixture> chosen,
            PlaneLayout layout,
            Subject plane,
            Vector3D origin,
            List<PlaneZone> zones,
            String lack) {
        List<Subject> subjects = new ArrayList<>();
        for (Fixture fixture : chosen) {
            if (fixture.plane().equals(plane.plane())) {
                int number = subjects.size() + 1;
                subjects.add(subject(fixture, number, layout, plane, origin, zones, lack)
                        .inSeries("fixture", number));
            }
        }
        return subjects;
    }

    private static Subject subject(
            Fixture fixture,
            int number,
            PlaneLayout layout,
            Subject plane,
            Vector3D origin,
            List<PlaneZone> zones,
            String lack) {
        Element element = fixture.element();
        Interval u = fixture.u();
        Interval v = fixture.v();
        Geometry foot = FACTORY.toGeometry(new Envelope(u.from(), u.to(), v.from(), v.to()));
        Facts facts = plane.facts()
                .inner()
                .know("fixture.name", element.name(), "")
                .know("fixture.class", element.ifcClass(), "")
                .know("fixture.metal", Metals.of(element.layers()), "material in the model")
                .know("fixture.width", u.length(), "extent across the fall")
                .know("fixture.length", v.length(), "extent along the fall")
                .know("fixture.foot", fixture.w().from(), "square to the plane")
                .know("fixture.height", fixture.w().to(), "square to the plane")
                .know("fixture.ribs", ribs(layout, u), "sides of sheets under it");
        if (zones.isEmpty()) {
            facts.miss("fixture.zone", "is not known: " + lack);
        } else {
            facts.know("fixture.zone", worst(zones, foot), "zones that it reaches into");
        }
        layout.plane().penetrations().stream()
                .mapToDouble(p -> p.outline().distance(foot))
                .min()
                .ifPresentOrElse(
                        distance -> facts.know("fixture.to_opening", distance, "along the plane"),
                        () -> facts.miss("fixture.to_opening", "does not exist: the plane has no penetrations"));
        return new Subject(
                SubjectKind.FIXTURE,
                "fixture " + number + " on " + plane.name(),
                plane.plane(),
                List.of(element),
                Optional.of(layout.plane()
                        .at((u.from() + u.to()) / 2, (v.from() + v.to()) / 2)
                        .add(origin)),
                "fixture|" + element.globalId(),
                facts);
    }

    private static int ribs(PlaneLayout layout, Interval u) {
        return (int) layout.sheets().stream()
                .flatMap(s -> List.of(s.u().from(), s.u().to()).stream())
                .filter(rib -> rib > u.from() && rib < u.to())
                .map(rib -> Math.round(rib * 1000))
                .distinct()
                .count();
    }

    private static String worst(List<PlaneZone> zones, Geometry foot) {
        for (ZoneKind kind : List.of(ZoneKind.CORNER, ZoneKind.EDGE)) {
            if (zones.stream()
                    .filter(z -> z.zone().kind() == kind)
                    .anyMatch(z -> z.zone().region().intersection(foot).getArea() > TOUCHES)) {
                return kind.label();
            }
        }
        return ZoneKind.INTERIOR.label();
    }
}
