package runtrue.wind.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Overlays of areas in plan on a grid of a micrometre, where snap rounding cannot fail on edges that nearly coincide. */
public final class Regions {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private static final PrecisionModel MICROMETRE = new PrecisionModel(1e6);

    private Regions() {}

    public static Geometry none() {
        return FACTORY.createPolygon();
    }

    public static Geometry union(Collection<? extends Geometry> areas) {
        return areas.isEmpty() ? none() : areal(UnaryUnionNG.union(List.copyOf(areas), MICROMETRE));
    }

    public static Geometry intersection(Geometry a, Geometry b) {
        if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
            return none();
        }
        return areal(OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, MICROMETRE));
    }

    public static Geometry difference(Geometry a, Geometry b) {
        if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
            return a;
        }
        return areal(OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, MICROMETRE));
    }

    /** The polygons alone: areas that touch in a line or a point have no area in common. */
    private static Geometry areal(Geometry mixed) {
        if (mixed.isEmpty()) {
            return none();
        }
        List<Polygon> polygons = new ArrayList<>();
        for (Object polygon : PolygonExtracter.getPolygons(mixed)) {
            polygons.add((Polygon) polygon);
        }
        return FACTORY.buildGeometry(polygons);
    }
}
