package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.plane.Outlines;

/** Makes curved planes, still without names, of the facets of roofs that are curved one way. */
public final class CurvedReader {
    private static final double MOSTLY = RoofTolerance.MOSTLY_ALONG.si();
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
        Curve curve = along(facets, axis);
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
                .map(outline -> CurvedPart.of(outline, curve, own(outline, facets, developed)))
                .map(part -> part.plane(settings))
                .toList();
    }

    /** Facets that an outline is made of. */
    private List<RoofPlane> own(Polygon outline, List<RoofPlane> facets, List<Polygon> developed) {
        return IntStream.range(0, facets.size())
                .filter(i -> outline.isWithinDistance(
                        developed.get(i).getInteriorPoint(),
                        settings.tolerances().joint()))
                .mapToObj(facets::get)
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
        return new Curve(origin, axis, side, section, deviation, least, greatest, least, greatest, facets.size())
                .withPitchesOfTangents();
    }
}
