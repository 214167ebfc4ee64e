package runtrue.rules.wind;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofPlane;
import runtrue.wind.form.WindSlope;

/** Flat planes as seen from above; metres, moved by the drop origin. */
final class PlanViews {
    /** Below this a plane has no fall that the wind would know of, radians. */
    private static final double LEVEL = 1e-3;

    private static final PrecisionModel MICROMETRE = new PrecisionModel(1e6);

    private PlanViews() {}

    /** Outline with penetrations; of a curved plane as if it were flat, which is enough to tell where it lies. */
    static Geometry plan(RoofPlane plane) {
        PlaneFrame f = plane.frame();
        AffineTransformation toPlan = new AffineTransformation(
                f.across().getX(),
                f.up().getX(),
                f.origin().getX(),
                f.across().getY(),
                f.up().getY(),
                f.origin().getY());
        return toPlan.transform(plane.outline());
    }

    static Geometry shared(Geometry a, Geometry b) {
        return OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, MICROMETRE);
    }

    static WindSlope slope(RoofPlane plane) {
        double x = -plane.frame().up().getX();
        double y = -plane.frame().up().getY();
        double length = Math.hypot(x, y);
        return plane.pitch() < LEVEL
                ? new WindSlope(plane.id(), plan(plane), 0, 0, plane.pitch())
                : new WindSlope(plane.id(), plan(plane), x / length, y / length, plane.pitch());
    }
}
