package runtrue.roof.curved;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryEditor;
import runtrue.roof.RoofPlane;

/** Between a curved plane's development, its facets and its plan. */
public final class Development {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** How closely lines of the plan are followed on the curve, metres. */
    private static final double STEP = 0.25;

    private Development() {}

    /** A facet with its holes as it lies in the development. */
    static Polygon of(RoofPlane facet, Curve curve) {
        Polygon outline = facet.outline();
        return FACTORY.createPolygon(
                developed(facet, outline.getExteriorRing(), curve),
                IntStream.range(0, outline.getNumInteriorRing())
                        .mapToObj(i -> developed(facet, outline.getInteriorRingN(i), curve))
                        .toArray(LinearRing[]::new));
    }

    private static LinearRing developed(RoofPlane facet, LinearRing ring, Curve curve) {
        return ring(facet.lift(ring).stream()
                .map(p -> new Coordinate(curve.u(p), curve.v(p)))
                .toList());
    }

    /** A polygon of the development seen from above, x and y moved by the drop origin. */
    public static Polygon plan(Polygon outline, Curve curve) {
        return FACTORY.createPolygon(
                seen(outline.getExteriorRing(), curve),
                IntStream.range(0, outline.getNumInteriorRing())
                        .mapToObj(i -> seen(outline.getInteriorRingN(i), curve))
                        .toArray(LinearRing[]::new));
    }

    private static LinearRing seen(LinearRing ring, Curve curve) {
        return ring(curve.lift(ring).stream().map(Development::flat).toList());
    }

    private static Coordinate flat(Vector3D p) {
        return new Coordinate(p.getX(), p.getY());
    }

    private static LinearRing ring(List<Coordinate> corners) {
        Coordinate[] closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            closed[i] = corners.get(i % corners.size()).copy();
        }
        return FACTORY.createLinearRing(closed);
    }

    /** A region of the plan as it lies in the development. */
    public static Geometry onCurve(Geometry plan, Curve curve) {
        Geometry close = Densifier.densify(plan, STEP);
        return new GeometryEditor(FACTORY).edit(close, new GeometryEditor.CoordinateOperation() {
            @Override
            public Coordinate[] edit(Coordinate[] coordinates, Geometry geometry) {
                Coordinate[] moved = new Coordinate[coordinates.length];
                for (int i = 0; i < moved.length; i++) {
                    moved[i] = curve.below(coordinates[i].x, coordinates[i].y);
                }
                return moved;
            }
        });
    }
}
