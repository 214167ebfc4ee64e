package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Station;
import runtrue.shape.curve.Track;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.ProfileReader;
import runtrue.step.StepValue;

/**
 * Bodies through cross sections. Of the horizontal kind, y of a section is up and x to the left of the way, square to
 * it: the axes of its linear placement as programs read them, though the standard's text names the way itself as x.
 */
final class Sectioned {
    private final Workshop workshop;
    private final ProfileReader profiles;
    private final Fineness fineness;

    Sectioned(Workshop workshop, ProfileReader profiles, Fineness fineness) {
        this.workshop = workshop;
        this.profiles = profiles;
        this.fineness = fineness;
    }

    List<Swept> read(IfcEntity item, AffineTransformMatrix3D frame) {
        List<IfcEntity> positions = item.refs("CrossSectionPositions");
        List<IfcEntity> profileEntities = item.refs("CrossSections");
        if (positions.size() < 2 || positions.size() != profileEntities.size()) {
            throw new ShapeException("The body " + item.label() + " has " + profileEntities.size()
                    + " cross sections for " + positions.size() + " positions.");
        }
        List<Section> sections = new ArrayList<>();
        for (IfcEntity entity : profileEntities) {
            List<Profile> profile = profiles.read(entity);
            if (profile.size() != 1) {
                throw new ShapeException(
                        "Composite cross sections are not read (" + item.label() + "); export it as a faceted body.");
            }
            sections.add(Section.of(profile.get(0)));
        }
        List<Section> matched = Section.matched(sections, item.label());
        Loft loft = new Loft(workshop, matched.get(0).rings());
        if (item.isA("IfcSectionedSpine")) {
            placed(item, matched, positions, frame, loft);
        } else {
            horizontal(item, matched, positions, frame, loft);
        }
        return List.of(new Swept(loft.mesh(false), Optional.empty()));
    }

    /** The standard leaves open what is between the sections of a spine; straight lines are the plainest reading. */
    private void placed(
            IfcEntity item,
            List<Section> sections,
            List<IfcEntity> positions,
            AffineTransformMatrix3D frame,
            Loft loft) {
        for (int i = 0; i < sections.size(); i++) {
            AffineTransformMatrix3D seat = item.model().transform(positions.get(i));
            loft.add(sections.get(i).placed((x, y) -> seat.apply(Vector3D.of(x, y, 0))), frame);
        }
        workshop.remarks()
                .accept("The body " + item.label() + " was drawn with straight lines between its cross sections");
    }

    private void horizontal(
            IfcEntity item,
            List<Section> sections,
            List<IfcEntity> positions,
            AffineTransformMatrix3D frame,
            Loft loft) {
        Chain chain = new CurveReader(fineness).read(item.ref("Directrix"));
        List<Position> stops = new ArrayList<>();
        double reach = 0;
        for (int i = 0; i < sections.size(); i++) {
            Position stop = Position.of(positions.get(i), chain, fineness, item.label());
            if (i > 0 && !(stop.distance() > stops.get(i - 1).distance())) {
                throw new ShapeException("The cross sections of " + item.label() + " do not follow each other.");
            }
            stops.add(stop);
            reach = Math.max(
                    reach, sections.get(i).moved(stop.left(), stop.up()).reach());
        }
        Chain byLength = chain.byLength(fineness);
        for (int i = 0; i + 1 < sections.size(); i++) {
            Chain part = byLength.part(stops.get(i).distance(), stops.get(i + 1).distance());
            Track track = part.track(fineness.carrying(reach));
            List<Station> stations = new ArrayList<>(track.stations());
            if (stations.size() < 2) {
                throw new ShapeException("The cross sections of " + item.label() + " lie beyond its directrix.");
            }
            List<Seat> seats =
                    Seats.referenced(new Track(stations, false), place -> Vector3D.Unit.PLUS_Z, item.label());
            Section from =
                    sections.get(i).moved(stops.get(i).left(), stops.get(i).up());
            Section to = sections.get(i + 1)
                    .moved(stops.get(i + 1).left(), stops.get(i + 1).up());
            add(from, to, seats, i == 0, frame, loft);
        }
    }

    private static void add(
            Section from, Section to, List<Seat> seats, boolean first, AffineTransformMatrix3D frame, Loft loft) {
        double[] way = new double[seats.size()];
        for (int s = 1; s < way.length; s++) {
            way[s] =
                    way[s - 1] + seats.get(s).origin().distance(seats.get(s - 1).origin());
        }
        for (int s = first ? 0 : 1; s < way.length; s++) {
            Seat seat = seats.get(s);
            Section section = from.towards(to, way[s] / way[way.length - 1]);
            // A seat's x axis keeps to its reference, here up; the section's is to the left, so that its y is up.
            loft.add(section.placed((x, y) -> seat.at(y, -x)), frame);
        }
    }

    /**
     * Where a section stands.
     *
     * @param distance along the directrix, as a length
     * @param left sideways off it
     */
    private record Position(double distance, double left, double up) {
        static Position of(IfcEntity placement, Chain chain, Fineness fineness, String label) {
            IfcEntity at = placement.isA("IfcAxis2PlacementLinear") ? placement.ref("Location") : placement;
            boolean turned = !along(placement, "Axis", 2) || !along(placement, "RefDirection", 0);
            if (turned || at.optionalReal("OffsetLongitudinal").orElse(0) != 0) {
                throw new ShapeException("Cross sections that stand askew to the directrix are not read (" + label
                        + "); export it as a faceted body.");
            }
            double distance = at.real("DistanceAlong");
            boolean parameter = at.value("DistanceAlong") instanceof StepValue.Typed typed
                    && typed.keyword().equals("IFCPARAMETERVALUE");
            if (parameter) {
                distance = chain.part(0, distance).byLength(fineness).span();
            }
            return new Position(
                    distance,
                    at.optionalReal("OffsetLateral").orElse(0),
                    at.optionalReal("OffsetVertical").orElse(0));
        }

        /** Whether a direction is omitted or the given axis of the directrix itself. */
        private static boolean along(IfcEntity placement, String attribute, int axis) {
            if (!placement.has(attribute)) {
                return true;
            }
            double[] r = placement.ref(attribute).reals("DirectionRatios");
            double norm = r.length == 3 ? Math.hypot(Math.hypot(r[0], r[1]), r[2]) : 0;
            return norm > 0 && r[axis] > (1 - 1e-9) * norm;
        }
    }
}
