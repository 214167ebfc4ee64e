package runtrue.roof.bearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Surround.Box;
import runtrue.roof.Surround.Where;
import runtrue.roof.flat.Overlays;
import runtrue.roof.plane.Outlines;
import runtrue.shape.Face;

/**
 * Finds what stands above a plane's contact plane: bodies that begin at or below it and rise above it within the sheeted
 * area, a rim along its edges and openings left out. What begins higher is part of the build-up or stands upon the roof.
 */
public final class Obstacles {
    /** Models are drawn to whole millimetres. */
    private static final double LEAST = RoofTolerance.PROUD.si();

    /** Within this of the contact plane a thing is seated on it or on a plate that is. */
    private static final double SEAT = RoofTolerance.CONTACT.si();

    /** At edges, flashings, trimmers and members of the next plane meet. */
    private static final double RIM = RoofTolerance.PROUD_RIM.si();

    /** Parapets and gables stand along an edge: planes end against them. */
    private static final double WALL_RIM = RoofTolerance.WALL_RIM.si();

    /** What rises out of the skin by more passes through the roof. */
    private static final double OUT = RoofTolerance.SUPPORT_ABOVE.si();

    /** Broader bodies are layers: decks, liner trays, boards. */
    private static final double LAYER_WIDTH = RoofTolerance.LAYER_WIDTH.si();

    /** A face nearer to upright than this shows its highest points on the faces beside it. */
    private static final double UPRIGHT = 0.02;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PlaneFrame frame;
    private final Geometry sheeted;
    private final Geometry insideWalls;
    private final double level;

    /**
     * Prepares for one plane.
     *
     * @param level w of its contact plane, metres
     */
    public Obstacles(RoofPlane plane, double level) {
        frame = plane.frame();
        sheeted = plane.outline().buffer(-RIM);
        insideWalls = plane.outline().buffer(-WALL_RIM);
        this.level = level;
    }

    /** Where a body has to reach to stand above the contact plane: through its level, under or in the sheeted area. */
    public Where where(Box around) {
        Envelope area = sheeted.getEnvelopeInternal();
        return box -> around.overlaps(box)
                && meets(box.along(frame.normal(), frame.origin()), level + LEAST, level + SEAT)
                && meets(box.along(frame.across(), frame.origin()), area.getMinX(), area.getMaxX())
                && meets(box.along(frame.up(), frame.origin()), area.getMinY(), area.getMaxY());
    }

    private static boolean meets(Interval extent, double low, double high) {
        return extent.from() <= high && extent.to() >= low;
    }

    /** The thing, if it stands above the contact plane. */
    public Optional<NearThing> find(ReadElement thing) {
        boolean wall = thing.element().ifcClass().startsWith("IfcWall");
        Geometry within = wall ? insideWalls : sheeted;
        Envelope area = within.getEnvelopeInternal();
        List<Raised> seated = new ArrayList<>();
        List<Raised> raised = new ArrayList<>();
        for (Face face : thing.body().faces()) {
            Raised own = raised(face);
            if (Math.abs(face.normal().dot(frame.normal())) > UPRIGHT
                    && own.box().intersects(area)) {
                if (own.lowest() <= level + SEAT) {
                    seated.add(own);
                }
                if (own.highest() > level + LEAST) {
                    raised.add(own);
                }
            }
        }
        if (seated.isEmpty() || raised.isEmpty() || !isSeated(seated, within)) {
            return Optional.empty();
        }
        raised.sort(Comparator.comparingDouble(Raised::highest).reversed());
        // Walls are seldom trimmed to the roof that they meet: one that ends below the skin says nothing.
        return highest(raised, within).filter(top -> !wall || top.w() > OUT).map(top -> near(thing, top));
    }

    /** A face that lies over the sheeted area or beside it, between two heights. */
    private record Raised(Face face, double lowest, double highest, Envelope box) {}

    private Raised raised(Face face) {
        Envelope box = new Envelope();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (Vector3D p : face.outline()) {
            double w = frame.w(p);
            lowest = Math.min(lowest, w);
            highest = Math.max(highest, w);
            box.expandToInclude(frame.u(p), frame.v(p));
        }
        return new Raised(face, lowest, highest, box);
    }

    /** Whether it begins low enough within the sheeted area: what stands upon the roof may come down beside it. */
    private boolean isSeated(List<Raised> faces, Geometry within) {
        return faces.stream()
                .anyMatch(f -> Arrays.stream(
                                Overlays.intersection(within, polygon(f.face())).getCoordinates())
                        .anyMatch(c -> height(f.face(), c) <= level + SEAT));
    }

    /** The highest point within the sheeted area, and the part of the face there. */
    private record Top(double w, Geometry part) {}

    private Optional<Top> highest(List<Raised> raised, Geometry within) {
        Top top = null;
        for (Raised r : raised) {
            if (top != null && r.highest() <= top.w()) {
                break;
            }
            Geometry part = Overlays.intersection(within, polygon(r.face()));
            for (Coordinate c : part.getCoordinates()) {
                double w = height(r.face(), c);
                if (w > level + LEAST && (top == null || w > top.w())) {
                    top = new Top(w, part);
                }
            }
        }
        return Optional.ofNullable(top);
    }

    private Polygon polygon(Face face) {
        int n = face.outline().size();
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            Vector3D p = face.outline().get(i % n);
            ring[i] = new Coordinate(frame.u(p), frame.v(p));
        }
        return FACTORY.createPolygon(ring);
    }

    /** w of the face's plane at u, v. */
    private double height(Face face, Coordinate at) {
        Vector3D p = face.outline().get(0);
        Vector3D n = face.normal();
        double slope = n.dot(frame.across()) * (at.x - frame.u(p)) + n.dot(frame.up()) * (at.y - frame.v(p));
        return frame.w(p) - slope / n.dot(frame.normal());
    }

    private NearThing near(ReadElement thing, Top top) {
        Envelope box = top.part().getEnvelopeInternal();
        Standing standing = top.w() > OUT ? Standing.THROUGH : isBroad(top.part()) ? Standing.LAYER : Standing.PROUD;
        return new NearThing(
                thing.element(),
                standing,
                top.w() - level,
                new Interval(box.getMinX(), box.getMaxX()),
                new Interval(box.getMinY(), box.getMaxY()));
    }

    /** By area over length, so that a long brace laid askew is not broad. */
    private static boolean isBroad(Geometry part) {
        double length = part.getEnvelopeInternal().getDiameter();
        return Outlines.polygons(part).stream().mapToDouble(Polygon::getArea).sum() > LAYER_WIDTH * length;
    }
}
