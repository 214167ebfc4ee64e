package runtrue.roof.support;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.Surround;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.LineFaults;
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
        List<Candidate> across = new ArrayList<>();
        List<Candidate> along = new ArrayList<>();
        List<Member> near = new ArrayList<>();
        Vector3D[] box = box(plane);
        List<Cell> shell = Cells.ofShell(plane.outline());
        for (Member member : members) {
            if (isNear(member, box)) {
                near.add(member);
                Optional<Candidate> candidate =
                        Candidate.of(member, plane.frameNear(member.middle()), shell, settings.reach());
                candidate.ifPresent(c -> (c.along() ? along : across).add(c));
            }
        }
        List<Candidate> carrying = ContactLevel.carrying(across);
        List<Candidate> rafters = ContactLevel.carrying(along);
        List<Candidate> all = new ArrayList<>(across);
        all.addAll(along);
        if (!rafters.isEmpty()
                && (carrying.isEmpty() || ContactLevel.level(rafters) > ContactLevel.level(carrying) + ABOVE)) {
            Bearing bearing = new Bearing(
                    BearingKind.RAFTERS,
                    Optional.empty(),
                    NearMembers.under(all, new HashSet<>(rafters), ContactLevel.level(rafters)),
                    List.of(),
                    List.of());
            return new Supports(
                    List.of(),
                    bearing,
                    List.of(String.format(
                            Locale.ROOT,
                            "%d members along the fall lie directly below; no support across the fall between them and the sheets is modelled",
                            rafters.size())));
        }
        if (carrying.isEmpty()) {
            boolean deck = Decks.lies(plane, layers, surround.within(Surround.Role.LAYER, box[0], box[1]), settings);
            return new Supports(
                    List.of(),
                    new Bearing(
                            deck ? BearingKind.DECK : BearingKind.UNKNOWN,
                            Optional.empty(),
                            List.of(),
                            List.of(),
                            List.of()),
                    List.of(
                            deck
                                    ? "a deck lies directly below; no support across the fall is modelled"
                                    : String.format(
                                            Locale.ROOT,
                                            "no member lies across the fall within %.2f m below the plane",
                                            settings.reach())));
        }
        List<SupportLine> lines =
                SupportLines.chained(carrying, plane.id(), settings.tolerances().joint());
        if (plane.curve().isPresent()) {
            return new Supports(
                    lines,
                    new Bearing(
                            BearingKind.PURLINS,
                            Optional.empty(),
                            List.of(),
                            List.of(),
                            LineFaults.of(plane.outline(), lines)),
                    List.of("supports of a curved plane are not measured against its arc"));
        }
        return new Supports(lines, bearing(plane, lines, all, new HashSet<>(carrying), near, box), List.of());
    }

    private Bearing bearing(
            RoofPlane plane,
            List<SupportLine> lines,
            List<Candidate> all,
            Set<Candidate> carrying,
            List<Member> near,
            Vector3D[] box) {
        TruePlane truePlane = TruePlanes.of(lines, settings.buildUpDepth());
        List<ReadElement> things = new ArrayList<>(surround.within(Surround.Role.THING, box[0], box[1]));
        near.forEach(member -> things.add(member.element()));
        return new Bearing(
                Battens.are(lines) ? BearingKind.BATTENS : BearingKind.PURLINS,
                Optional.of(truePlane),
                NearMembers.around(plane, all, carrying, things, truePlane.level()),
                surround.unread(Surround.Role.THING, box[0], box[1]),
                LineFaults.of(plane.outline(), lines));
    }

    /** What {@link #below} gives. */
    public record Supports(List<SupportLine> lines, Bearing bearing, List<String> remarks) {
        public Supports {
            lines = List.copyOf(lines);
            remarks = List.copyOf(remarks);
        }
    }

    private Vector3D[] box(RoofPlane plane) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vector3D corner : plane.lift(plane.outline().getExteriorRing())) {
            double[] p = corner.toArray();
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], p[i]);
                high[i] = Math.max(high[i], p[i]);
            }
        }
        double reach = settings.reach();
        return new Vector3D[] {
            Vector3D.of(low[0] - reach, low[1] - reach, low[2] - reach),
            Vector3D.of(high[0] + reach, high[1] + reach, high[2] + reach)
        };
    }

    private static boolean isNear(Member member, Vector3D[] box) {
        return member.low().getX() < box[1].getX()
                && member.high().getX() > box[0].getX()
                && member.low().getY() < box[1].getY()
                && member.high().getY() > box[0].getY()
                && member.low().getZ() < box[1].getZ()
                && member.high().getZ() > box[0].getZ();
    }
}
