package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.plane.Bearings;
import runtrue.roof.plane.Outlines;
import runtrue.roof.plane.Penetrations;

/** Makes curved planes, still without names, of the facets of roofs that are curved one way. */
public final class CurvedReader {
    private static final double MOSTLY = RoofTolerance.MOSTLY_ALONG.si();
    private static final double SAME_LEVEL = RoofTolerance.CIRCLE.si();

    private static final double OFF = RoofTolerance.CIRCLE.si();

    private final RoofSettings settings;

    public CurvedReader(RoofSettings settings) {
        this.settings = settings;
    }

    /** One plane, or more where the facets do not hang together; none when they are not curved one way only. */
    public List<RoofPlane> read(List<RoofPlane> facets) {
        Vector3D axis = Axis.of(facets);
        double all = facets.stream().mapToDouble(RoofPlane::area).sum();
        if (Axis.areaAlong(axis, facets) < MOSTLY * all) {
            return List.of();
        }
        Curve curve = curve(facets, axis);
        double joint = settings.tolerances().joint();
        if (!curve.isSmooth() || !facets.stream().allMatch(f -> liesOn(curve, f))) {
            return List.of();
        }
        List<Polygon> developed =
                facets.stream().map(f -> Development.of(f, curve)).toList();
        return Outlines.join(developed, joint).stream()
                .map(outline -> (Polygon) TopologyPreservingSimplifier.simplify(
                        outline, settings.tolerances().plane()))
                .filter(outline -> outline.getArea() > settings.tolerances().sliver())
                .map(outline -> measured(outline, curve, facets, developed))
                .toList();
    }

    /** Whether a facet's corners lie on the curve or, where something cuts it between two folds, on the chord below it. */
    private static boolean liesOn(Curve curve, RoofPlane facet) {
        return facet.lift(facet.outline().getExteriorRing()).stream().allMatch(p -> {
            double v = curve.v(p);
            double off = curve.touching(v).w(p);
            return Math.abs(off) < OFF || Math.abs(off + curve.sagitta(v)) < OFF;
        });
    }

    /** A curve that starts at its lower end; at ends alike, at the one that the compass names first. */
    private static Curve curve(List<RoofPlane> facets, Vector3D axis) {
        Curve one = along(facets, axis);
        Vector2D end = one.section().at(one.section().length());
        double rise = end.getY() - one.section().at(0).getY();
        boolean low = Math.abs(rise) > SAME_LEVEL ? rise > 0 : Bearings.isNamedFirst(one.side());
        return low ? one : along(facets, axis.negate());
    }

    private static Curve along(List<RoofPlane> facets, Vector3D axis) {
        Vector3D side = Vector3D.Unit.PLUS_Z.cross(axis).normalize();
        Vector3D top = axis.cross(side);
        List<Vector2D> ends = new ArrayList<>();
        facets.stream().filter(f -> Axis.runsAlong(axis, f)).forEach(f -> {
            List<Vector2D> ring = f.lift(f.outline().getExteriorRing()).stream()
                    .map(p -> Vector2D.of(p.dot(side), p.dot(top)))
                    .sorted((a, b) -> Double.compare(a.getX(), b.getX()))
                    .toList();
            ends.add(ring.get(0));
            ends.add(ring.get(ring.size() - 1));
        });
        List<Vector2D> folds = Sections.folds(ends);
        Vector2D first = folds.get(0);
        List<Vector2D> fromFirst = folds.stream().map(p -> p.subtract(first)).toList();
        Optional<CircleFit> fit = CircleFit.of(fromFirst);
        Section section = Sections.arc(fromFirst, fit).<Section>map(a -> a).orElseGet(() -> new Folds(fromFirst));
        Vector3D origin = side.multiply(first.getX()).add(top.multiply(first.getY()));
        double least = facets.stream().mapToDouble(RoofPlane::pitch).min().orElseThrow();
        double greatest = facets.stream().mapToDouble(RoofPlane::pitch).max().orElseThrow();
        double deviation = fit.map(CircleFit::deviation).orElse(Double.POSITIVE_INFINITY);
        Curve curve =
                new Curve(origin, axis, side, section, deviation, least, greatest, least, greatest, facets.size());
        return section instanceof Arc arc ? curve.withPitches(pitches(curve, arc)) : curve;
    }

    /** Pitch of the tangents at both ends and, where it lies between them, at the crown. */
    private static double[] pitches(Curve curve, Arc arc) {
        boolean crown = arc.crown() > 0 && arc.crown() < arc.length();
        return Stream.of(0.0, arc.length(), crown ? arc.crown() : 0)
                .mapToDouble(
                        v -> Math.acos(Math.min(1, curve.touching(v).normal().getZ())))
                .sorted()
                .toArray();
    }

    private RoofPlane measured(Polygon joined, Curve bare, List<RoofPlane> facets, List<Polygon> developed) {
        Envelope extent = joined.getEnvelopeInternal();
        Curve curve = bare.movedAlong(extent.getMinX());
        Polygon outline = (Polygon)
                AffineTransformation.translationInstance(-extent.getMinX(), 0).transform(joined);
        List<RoofPlane> own = new ArrayList<>();
        for (int i = 0; i < facets.size(); i++) {
            if (joined.isWithinDistance(
                    developed.get(i).getInteriorPoint(), settings.tolerances().joint())) {
                own.add(facets.get(i));
            }
        }
        PlaneFrame frame = curve.touching(curve.section().length() / 2);
        OptionalDouble azimuth =
                curve.fallsBothWays() ? OptionalDouble.empty() : OptionalDouble.of(Bearings.downslope(frame));
        RoofPlane main =
                own.stream().max((a, b) -> Double.compare(a.area(), b.area())).orElseThrow();
        double[] levels = levels(outline, curve);
        List<String> remarks = new ArrayList<>();
        remarks.add(remark(curve));
        own.stream().flatMap(f -> f.remarks().stream()).distinct().forEach(remarks::add);
        return new RoofPlane(
                "",
                "",
                frame,
                outline,
                curve.greatestPitch(),
                azimuth,
                settings.trueNorth().isEmpty()
                        ? OptionalDouble.empty()
                        : azimuth.stream()
                                .map(a -> Bearings.turn(a - settings.trueNorth().getAsDouble()))
                                .findFirst(),
                outline.getArea(),
                Outlines.shell(outline).getArea(),
                Development.plan(outline, curve).getArea(),
                Development.plan(Outlines.shell(outline), curve).getArea(),
                levels[0] + settings.origin().getZ(),
                levels[1] + settings.origin().getZ(),
                own.stream().flatMapToDouble(f -> f.thickness().stream()).max(),
                main.building(),
                main.storey(),
                Penetrations.of(outline),
                elements(own),
                remarks,
                Optional.of(curve));
    }

    private static double[] levels(Polygon outline, Curve curve) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vector3D p : curve.lift(outline.getExteriorRing())) {
            low = Math.min(low, p.getZ());
            high = Math.max(high, p.getZ());
        }
        if (curve.section() instanceof Arc arc) {
            Envelope extent = outline.getEnvelopeInternal();
            if (extent.getMinY() < arc.crown() && arc.crown() < extent.getMaxY()) {
                double left = curve.at(extent.getMinX(), arc.crown()).getZ();
                double right = curve.at(extent.getMaxX(), arc.crown()).getZ();
                low = arc.convex() ? low : Math.min(low, Math.min(left, right));
                high = arc.convex() ? Math.max(high, Math.max(left, right)) : high;
            }
        }
        return new double[] {low, high};
    }

    private static List<ReadElement> elements(List<RoofPlane> facets) {
        Set<ReadElement> sources = Collections.newSetFromMap(new IdentityHashMap<>());
        facets.forEach(f -> sources.addAll(f.elements()));
        return Bearings.ordered(sources);
    }

    private static String remark(Curve curve) {
        String facets = String.format(
                Locale.ROOT,
                "curved plane of %d facets that fall at %.2f to %.2f degrees",
                curve.facets(),
                Math.toDegrees(curve.leastFacetPitch()),
                Math.toDegrees(curve.greatestFacetPitch()));
        if (curve.section() instanceof Arc arc) {
            return String.format(
                    Locale.ROOT,
                    "%s: circle of %.3f m radius fitted to their folds, greatest deviation %.1f mm; it falls at %.2f to %.2f degrees along the arc, and lengths are along it",
                    facets,
                    arc.radius(),
                    1000 * curve.deviation(),
                    Math.toDegrees(curve.leastPitch()),
                    Math.toDegrees(curve.greatestPitch()));
        }
        return facets + ": not circular, lengths are along the facets";
    }
}
