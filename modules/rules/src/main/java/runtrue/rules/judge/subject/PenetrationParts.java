package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import runtrue.roof.Interval;
import runtrue.roof.Penetration;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofPlane;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;

/** Penetrations of a plane as subjects. */
public final class PenetrationParts {
    /** What a sheet shares with a penetration by less is a drawn line, not a cut. */
    private static final double MILLIMETRE = 1e-3;

    private final PlaneLayout layout;
    private final Subject plane;
    private final Vector3D origin;
    private final double cover;
    private final Reach reach;

    /**
     * For one plane.
     *
     * @param cover width of a sheet, metres
     */
    public PenetrationParts(PlaneLayout layout, Subject plane, Vector3D origin, double cover) {
        this.layout = layout;
        this.plane = plane;
        this.origin = origin;
        this.cover = cover;
        reach = new Reach(layout.plane().outline());
    }

    public List<Subject> penetrations() {
        List<Subject> subjects = new ArrayList<>();
        List<Penetration> all = layout.plane().penetrations();
        for (int i = 0; i < all.size(); i++) {
            subjects.add(penetration(all.get(i), i + 1));
        }
        return subjects;
    }

    private Subject penetration(Penetration hole, int number) {
        Envelope box = hole.outline().getEnvelopeInternal();
        Interval u = new Interval(box.getMinX(), box.getMaxX());
        Interval v = new Interval(box.getMinY(), box.getMaxY());
        Reach.Distances to = reach.from(u, v);
        Facts facts = plane.facts()
                .inner()
                .know("penetration.width", hole.width(), "extent across the fall")
                .know("penetration.length", hole.length(), "extent along the fall")
                .know("penetration.area", hole.area(), "")
                .know("penetration.pans", pans(u), "sheets that share width with it")
                .know("penetration.to_ridge", to.up(), "along the fall")
                .know("penetration.to_eave", to.down(), "along the fall")
                .know("penetration.to_side", to.side(), "across the fall");
        water(facts, u, v, to);
        fromFixedPoint(facts, v, to);
        Point middle = hole.outline().getInteriorPoint();
        return new Subject(
                        SubjectKind.PENETRATION,
                        "penetration " + number + " of " + plane.name(),
                        plane.plane(),
                        plane.elements(),
                        Optional.of(
                                layout.plane().at(middle.getX(), middle.getY()).add(origin)),
                        String.format(
                                Locale.ROOT,
                                "penetration|%d|%d",
                                Math.round(u.from() + u.to()),
                                Math.round(v.from() + v.to())),
                        facts)
                .inSeries("penetration", number);
    }

    private int pans(Interval u) {
        return (int) layout.sheets().stream()
                .filter(s -> Drainage.overlap(s.u(), u) > MILLIMETRE)
                .mapToInt(s -> s.number())
                .distinct()
                .count();
    }

    /** Rain on the plane above it parts in the middle and runs off in the pans on either side. */
    private void water(Facts facts, Interval u, Interval v, Reach.Distances to) {
        RoofPlane roof = layout.plane();
        double middle = (u.from() + u.to()) / 2;
        Slope held = Slope.of(roof, middle, new Interval(v.to(), v.to() + to.up()));
        Slope run = Slope.of(roof, middle, new Interval(v.from() - to.down(), v.to() + to.up()));
        String how = "own run x cover width, and half of what is held up";
        facts.know("penetration.catchment", held.plan() * u.length(), "width x plan length above it")
                .know("penetration.beside", run.plan() * cover + held.plan() * u.length() / 2, how)
                .know("penetration.beside_rise", run.rise() * cover + held.rise() * u.length() / 2, how);
    }

    private void fromFixedPoint(Facts facts, Interval v, Reach.Distances to) {
        String name = "penetration.from_fixed_point";
        double below = to.down() + v.length();
        double above = to.up() + v.length();
        if (!(facts.find("settings.fixed_point").orElse(null) instanceof Facts.Known point)) {
            facts.miss(name, "is not known: the settings state no fixed_point");
        } else if (point.value().equals("middle")) {
            double half = (to.down() + v.length() + to.up()) / 2;
            facts.know(name, Math.max(half - to.down(), half - to.up()), "from the middle of the run to its far end");
        } else if (point.value().equals("eave")) {
            facts.know(name, below, "from the eave to its upper end");
        } else {
            facts.know(name, above, "from the ridge to its lower end");
        }
    }
}
