package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.roof.plane.Bearings;
import runtrue.roof.plane.Outlines;
import runtrue.roof.plane.Penetrations;

/**
 * Facets of a curved surface that hang together, as one plane to sheet.
 *
 * @param curve its own arc: from the lowest to the highest v of the outline, no more and no less
 * @param outline in the development of that curve
 */
record CurvedPart(Curve curve, Polygon outline, List<RoofPlane> facets) {
    private static final double SAME_LEVEL = RoofTolerance.CIRCLE.si();

    /**
     * One part of a surface.
     *
     * <p>Its arc is measured on the outline, not taken over from the folds that the circle was fitted to: a facet askew to
     * the axis is sheeted like any other, though its corners are no folds; and a rooflight along the crown leaves two
     * planes with half an arc each.
     *
     * @param joined outline in the development of the whole surface
     */
    static CurvedPart of(Polygon joined, Curve whole, List<RoofPlane> facets) {
        Envelope extent = joined.getEnvelopeInternal();
        double[] pitches =
                facets.stream().mapToDouble(RoofPlane::pitch).sorted().toArray();
        Curve curve = whole.part(extent.getMinX(), extent.getMinY(), extent.getMaxY(), pitches, facets.size());
        Polygon outline = moved(joined, 1, -extent.getMinX(), -extent.getMinY());
        if (startsRight(curve)) {
            return new CurvedPart(curve, outline, facets);
        }
        Curve turned = curve.turned();
        // Looked at from the other side, what was its right end is its left one.
        Curve fromLeft = turned.part(-extent.getWidth(), 0, extent.getHeight(), pitches, facets.size());
        return new CurvedPart(fromLeft, moved(outline, -1, extent.getWidth(), extent.getHeight()), facets);
    }

    private static Polygon moved(Polygon outline, int scale, double u, double v) {
        return (Polygon) new AffineTransformation(scale, 0, u, 0, scale, v).transform(outline);
    }

    /** A curve starts at its lower end; at ends alike, at the one that the compass names first. */
    private static boolean startsRight(Curve curve) {
        Vector2D end = curve.section().at(curve.section().length());
        double rise = end.getY() - curve.section().at(0).getY();
        return Math.abs(rise) > SAME_LEVEL ? rise > 0 : Bearings.isNamedFirst(curve.side());
    }

    /** The plane, still without id and name. */
    RoofPlane plane(RoofSettings settings) {
        PlaneFrame frame = curve.touching(curve.section().length() / 2);
        OptionalDouble azimuth =
                curve.fallsBothWays() ? OptionalDouble.empty() : OptionalDouble.of(Bearings.downslope(frame));
        RoofPlane main =
                facets.stream().max(Comparator.comparingDouble(RoofPlane::area)).orElseThrow();
        double[] levels = levels(outline, curve);
        Polygon shell = Outlines.shell(outline);
        return new RoofPlane(
                "",
                "",
                frame,
                outline,
                curve.greatestPitch(),
                azimuth,
                fromTrueNorth(azimuth, settings.trueNorth()),
                outline.getArea(),
                shell.getArea(),
                Development.plan(outline, curve).getArea(),
                Development.plan(shell, curve).getArea(),
                levels[0] + settings.origin().getZ(),
                levels[1] + settings.origin().getZ(),
                facets.stream().flatMapToDouble(f -> f.thickness().stream()).max(),
                main.building(),
                main.storey(),
                Penetrations.of(outline),
                elements(facets),
                remarks(),
                Optional.of(curve));
    }

    private static OptionalDouble fromTrueNorth(OptionalDouble azimuth, OptionalDouble trueNorth) {
        return azimuth.isPresent() && trueNorth.isPresent()
                ? OptionalDouble.of(Bearings.turn(azimuth.getAsDouble() - trueNorth.getAsDouble()))
                : OptionalDouble.empty();
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>(List.of(remark(curve)));
        facets.stream().flatMap(f -> f.remarks().stream()).distinct().forEach(remarks::add);
        return remarks;
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
