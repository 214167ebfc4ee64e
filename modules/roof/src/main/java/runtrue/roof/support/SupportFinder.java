package runtrue.roof.support;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.Surround;
import runtrue.roof.Surround.Box;
import runtrue.roof.Surround.Where;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.LineFaults;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Obstacles;
import runtrue.roof.bearing.TruePlane;
import runtrue.roof.bearing.TruePlanes;
import runtrue.roof.sheet.Cells;
import runtrue.roof.sheet.Cells.Cell;

/** Finds the support lines of planes among all members of a drop, and tells what the other things near a plane are. */
public final class SupportFinder {
    /** Members along the fall this much above those across it are what the sheets would rest on. */
    private static final double ABOVE = RoofTolerance.RAFTER_ABOVE.si();

    private final List<Member> members;
    private final List<ReadElement> layers;
    private final Surround surround;
    private final RoofSettings settings;

    /**
     * For one drop.
     *
     * @param layers of roofs that lie under others
     */
    public SupportFinder(
            List<ReadElement> members, List<ReadElement> layers, Surround surround, RoofSettings settings) {
        this.members = members.stream().flatMap(m -> Member.of(m).stream()).toList();
        this.layers = List.copyOf(layers);
        this.surround = surround;
        this.settings = settings;
    }

    /** Support lines from the eave up, what carries, and remarks that say why there are none or what was set aside. */
    public Supports below(RoofPlane plane) {
        Below below = near(plane);
        List<Candidate> carrying = ContactLevel.carrying(below.across());
        List<Candidate> rafters = ContactLevel.carrying(below.along());
        if (!rafters.isEmpty()
                && (carrying.isEmpty() || ContactLevel.level(rafters) > ContactLevel.level(carrying) + ABOVE)) {
            return onRafters(below, rafters);
        } else if (carrying.isEmpty()) {
            return onNothing(plane, below);
        }
        List<SupportLine> lines =
                SupportLines.chained(carrying, plane.id(), settings.tolerances().joint());
        if (plane.curve().isPresent()) {
            return new Supports(
                    lines,
                    Bearing.untrue(
                            BearingKind.PURLINS, List.of(), below.unread(), LineFaults.of(plane.outline(), lines)),
                    List.of("supports of a curved plane are not measured against its arc"));
        }
        return new Supports(lines, onLines(plane, lines, below, new HashSet<>(carrying)), List.of());
    }

    /**
     * What lies near a plane.
     *
     * @param box around the plane and whatever may carry it
     * @param members all that lie in the box
     * @param across those that may carry and run across the fall
     * @param along those that may carry and run along it
     * @param unread possible supports that may lie there, but could not be read
     */
    private record Below(
            Box box, List<Member> members, List<Candidate> across, List<Candidate> along, List<Element> unread) {
        List<Candidate> all() {
            List<Candidate> all = new ArrayList<>(across);
            all.addAll(along);
            return all;
        }
    }

    private Below near(RoofPlane plane) {
        List<Candidate> across = new ArrayList<>();
        List<Candidate> along = new ArrayList<>();
        List<Member> near = new ArrayList<>();
        Box box = box(plane);
        List<Cell> shell = Cells.ofShell(plane.outline());
        for (Member member : members) {
            if (box.overlaps(new Box(member.low(), member.high()))) {
                near.add(member);
                Candidate.of(member, plane.frameNear(member.middle()), shell, settings.reach())
                        .ifPresent(c -> (c.along() ? along : across).add(c));
            }
        }
        return new Below(box, near, across, along, surround.unread(Surround.Role.SUPPORT, where(plane, box)));
    }

    /** Where a support of the plane can lie: under its outline, no deeper than the reach. */
    private Where where(RoofPlane plane, Box box) {
        if (plane.curve().isPresent()) {
            return box::overlaps;
        }
        PlaneFrame frame = plane.frame();
        Envelope outline = plane.outline().getEnvelopeInternal();
        return other -> box.overlaps(other)
                && meets(other.along(frame.normal(), frame.origin()), -settings.reach(), Candidate.PROUD)
                && meets(other.along(frame.across(), frame.origin()), outline.getMinX(), outline.getMaxX())
                && meets(other.along(frame.up(), frame.origin()), outline.getMinY(), outline.getMaxY());
    }

    private static boolean meets(Interval extent, double low, double high) {
        return extent.from() <= high && extent.to() >= low;
    }

    private static Supports onRafters(Below below, List<Candidate> rafters) {
        List<NearThing> near = NearMembers.under(below.all(), new HashSet<>(rafters), ContactLevel.level(rafters));
        String remark = String.format(
                Locale.ROOT,
                "%d members along the fall lie directly below; no support across the fall between them and the sheets is modelled",
                rafters.size());
        return new Supports(
                List.of(), Bearing.untrue(BearingKind.RAFTERS, near, below.unread(), List.of()), List.of(remark));
    }

    private Supports onNothing(RoofPlane plane, Below below) {
        boolean deck = Decks.lies(plane, layers, surround.within(Surround.Role.LAYER, below.box()::overlaps), settings);
        String remark = deck
                ? "a deck lies directly below; no support across the fall is modelled"
                : String.format(
                        Locale.ROOT, "no member lies across the fall within %.2f m below the plane", settings.reach());
        BearingKind kind = deck ? BearingKind.DECK : BearingKind.UNKNOWN;
        return new Supports(List.of(), Bearing.untrue(kind, List.of(), below.unread(), List.of()), List.of(remark));
    }

    private Bearing onLines(RoofPlane plane, List<SupportLine> lines, Below below, Set<Candidate> carrying) {
        TruePlane truePlane = TruePlanes.of(lines, settings.buildUpDepth());
        Obstacles obstacles = new Obstacles(plane, truePlane.level());
        Where where = obstacles.where(below.box());
        List<ReadElement> things = new ArrayList<>(surround.within(Surround.Role.THING, where));
        below.members().forEach(member -> things.add(member.element()));
        return new Bearing(
                Battens.are(lines) ? BearingKind.BATTENS : BearingKind.PURLINS,
                Optional.of(truePlane),
                NearMembers.around(obstacles, below.all(), carrying, things, truePlane.level()),
                surround.unread(Surround.Role.THING, where),
                below.unread(),
                LineFaults.of(plane.outline(), lines));
    }

    /** What {@link #below} gives. */
    public record Supports(List<SupportLine> lines, Bearing bearing, List<String> remarks) {
        public Supports {
            lines = List.copyOf(lines);
            remarks = List.copyOf(remarks);
        }
    }

    private Box box(RoofPlane plane) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vector3D corner : plane.lift(plane.outline().getExteriorRing())) {
            double[] p = corner.toArray();
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], p[i]);
                high[i] = Math.max(high[i], p[i]);
            }
        }
        Vector3D reach = Vector3D.of(settings.reach(), settings.reach(), settings.reach());
        return new Box(Vector3D.of(low).subtract(reach), Vector3D.of(high).add(reach));
    }
}
