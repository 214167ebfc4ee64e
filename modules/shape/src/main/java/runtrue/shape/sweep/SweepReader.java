package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Sweep;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Track;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.ProfileReader;

/**
 * Every swept solid that is no plain extrusion: start with {@link #read}. The profile and the way it takes each keep to
 * half the chord tolerance, because what both leave out adds up.
 */
public final class SweepReader {
    private final Workshop workshop;
    private final Fineness fineness;
    private final ProfileReader profiles;

    /**
     * @param whole fineness in file units, of which the profile and the way get half each
     */
    public SweepReader(Workshop workshop, Fineness whole) {
        this.workshop = workshop;
        this.fineness = whole.halved();
        this.profiles = new ProfileReader(fineness);
    }

    /** Whether items of a class are read here. */
    public static boolean reads(String type) {
        return switch (type) {
            case "IfcExtrudedAreaSolidTapered",
                    "IfcRevolvedAreaSolid",
                    "IfcRevolvedAreaSolidTapered",
                    "IfcSurfaceCurveSweptAreaSolid",
                    "IfcFixedReferenceSweptAreaSolid",
                    "IfcDirectrixDerivedReferenceSweptAreaSolid",
                    "IfcSweptDiskSolid",
                    "IfcSweptDiskSolidPolygonal",
                    "IfcSectionedSolidHorizontal",
                    "IfcSectionedSpine" -> true;
            default -> false;
        };
    }

    /**
     * The bodies of an item: one, or several for a composite profile.
     *
     * @param frame from the item's own axes and file units, its position applied, to metres
     * @throws ShapeException when what it says makes no shape
     */
    public List<Swept> read(IfcEntity item, AffineTransformMatrix3D frame) {
        return switch (item.type()) {
            case "IfcExtrudedAreaSolidTapered" -> new Tapered(workshop, profiles).read(item, frame);
            case "IfcRevolvedAreaSolid", "IfcRevolvedAreaSolidTapered" ->
                new Revolution(workshop, profiles, fineness).read(item, frame);
            case "IfcSectionedSolidHorizontal", "IfcSectionedSpine" ->
                new Sectioned(workshop, profiles, fineness).read(item, frame);
            case "IfcSweptDiskSolid", "IfcSweptDiskSolidPolygonal" -> disk(item, frame);
            default -> along(item, frame);
        };
    }

    private List<Swept> along(IfcEntity item, AffineTransformMatrix3D frame) {
        Directrix directrix = new Directrix(item, fineness, workshop.remarks());
        UnaryOperator<Vector3D> reference = ReferenceDirections.of(item, fineness);
        return along(profiles.read(item.ref("SweptArea")), directrix.chain(), reference, item, frame);
    }

    /**
     * Bodies of profiles along a way, square to it.
     *
     * @param reference the direction at a place that the x axes of the profiles keep to, as far as the way lets them
     * @param item what to name when that makes no shape
     */
    public List<Swept> along(
            List<Profile> areas,
            Chain way,
            UnaryOperator<Vector3D> reference,
            IfcEntity item,
            AffineTransformMatrix3D frame) {
        List<Swept> bodies = new ArrayList<>(1);
        for (Profile profile : areas) {
            Section section = Section.of(profile);
            Track track = way.track(fineness.carrying(section.reach()));
            checkLength(track, item);
            List<Seat> seats = Seats.referenced(track, reference, item.label());
            if (Seats.turnOver(seats)) {
                workshop.remarks()
                        .accept("The profile of " + item.label() + " would turn over where its directrix passes the"
                                + " direction that it is to keep to, and was carried along without turning");
                seats = Seats.unturned(track, seats.get(0).before().x(), item.label());
            }
            bodies.add(body(item, profile.name(), section, seats, track.closed(), frame));
        }
        return bodies;
    }

    /**
     * Bodies of profiles that change along a straight way from those at its beginning to those at its end.
     *
     * @throws ShapeException when the way is not straight: what stands in between is nobody's statement
     */
    public List<Swept> tapered(
            List<Profile> first,
            List<Profile> last,
            Chain way,
            UnaryOperator<Vector3D> reference,
            IfcEntity item,
            AffineTransformMatrix3D frame) {
        Track track = way.track(fineness);
        checkLength(track, item);
        if (track.stations().size() > 2) {
            throw new ShapeException(
                    "the profile of " + item.label() + " tapers along an axis that is no straight line");
        }
        List<Seat> seats = Seats.referenced(track, reference, item.label());
        List<Swept> bodies = new ArrayList<>(1);
        for (List<Section> ends : Tapered.ends(first, last, item)) {
            Loft loft = new Loft(workshop, ends.get(0).rings());
            for (int i = 0; i < 2; i++) {
                loft.add(ends.get(i).placed(seats.get(i)::at), frame);
            }
            bodies.add(new Swept(loft.mesh(false), Optional.empty()));
        }
        return bodies;
    }

    private List<Swept> disk(IfcEntity item, AffineTransformMatrix3D frame) {
        double radius = item.real("Radius");
        double hole = item.optionalReal("InnerRadius").orElse(0);
        if (!(radius > 0) || !(hole < radius)) {
            throw new ShapeException("The radius of " + item.label() + " is not above 0 and its inner radius.");
        }
        Profile outer = Profile.circle(item.type(), radius, fineness);
        Profile pipe = hole > 0
                ? new Profile(
                        item.type(),
                        outer.outer(),
                        List.of(Profile.circle("", hole, fineness).outer()))
                : outer;
        Directrix directrix = new Directrix(item, fineness, workshop.remarks());
        Track track =
                directrix.filleted(item.optionalReal("FilletRadius").orElse(0)).track(fineness.carrying(radius));
        checkLength(track, item);
        List<Seat> seats = Seats.unturned(track, item.label());
        return List.of(body(item, item.type(), Section.of(pipe), seats, track.closed(), frame));
    }

    private static void checkLength(Track track, IfcEntity item) {
        if (track.stations().size() < 2) {
            throw new ShapeException("The directrix of " + item.label() + " has no length.");
        }
    }

    private Swept body(
            IfcEntity item,
            String name,
            Section section,
            List<Seat> seats,
            boolean closed,
            AffineTransformMatrix3D frame) {
        Loft loft = new Loft(workshop, section.rings());
        List<List<Vector3D>> placed = new ArrayList<>(seats.size());
        for (Seat seat : seats) {
            placed.add(section.placed(seat::at));
            loft.add(placed.get(placed.size() - 1), frame);
        }
        if (crossesItself(seats, placed, closed)) {
            workshop.remarks()
                    .accept("The sweep " + item.label() + " crosses itself where its directrix bends more tightly than"
                            + " its profile allows: its volume is not exact");
        }
        Optional<Sweep> straight =
                seats.size() == 2 ? Optional.of(facts(name, section, seats, frame)) : Optional.empty();
        return new Swept(loft.mesh(closed), straight);
    }

    /** Whether somewhere a corner of the profile runs backward between two seats. */
    private boolean crossesItself(List<Seat> seats, List<List<Vector3D>> placed, boolean closed) {
        int n = seats.size();
        for (int s = 0; s < (closed ? n : n - 1); s++) {
            int next = (s + 1) % n;
            Vector3D way = seats.get(next).origin().subtract(seats.get(s).origin());
            for (int i = 0; i < placed.get(s).size(); i++) {
                Vector3D edge = placed.get(next).get(i).subtract(placed.get(s).get(i));
                if (edge.dot(way) < -fineness.point() * way.norm()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Sweep facts(String name, Section section, List<Seat> seats, AffineTransformMatrix3D frame) {
        List<Vector3D> outline = section.placed(seats.get(0)::at).subList(0, section.rings()[0]);
        Vector3D path = seats.get(1).origin().subtract(seats.get(0).origin());
        return new Sweep(name, outline.stream().map(frame).toList(), frame.applyVector(path));
    }
}
