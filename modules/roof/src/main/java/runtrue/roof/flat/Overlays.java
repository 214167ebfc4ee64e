package runtrue.roof.flat;

import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Overlays of areas in metres, on a grid of a micrometre: snap rounding cannot fail on edges that nearly coincide, as
 * those of neighbouring slabs do, and a micrometre is far below what any exporter writes. Coordinates are near the drop
 * origin, so that the grid costs no digits.
 */
public final class Overlays {
    private static final PrecisionModel MICROMETRE = new PrecisionModel(1e6);

    private Overlays() {}

    public static Geometry union(Collection<? extends Geometry> areas) {
        return UnaryUnionNG.union(List.copyOf(areas), MICROMETRE);
    }

    public static Geometry intersection(Geometry a, Geometry b) {
        return OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, MICROMETRE);
    }

    public static Geometry difference(Geometry a, Geometry b) {
        return OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, MICROMETRE);
    }
}
