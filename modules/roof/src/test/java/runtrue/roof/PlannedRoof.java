package runtrue.roof;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Roofs of one pitch and one eaves level over a plan, made without the code under test. Over a convex plan each eave's plane
 * reaches as far as its eave is the nearest. Over a plan made of rectangles the roof is the uppermost of the hip roofs of
 * the largest rectangles within it: each point's height is that of the largest square about it that stays inside.
 *
 * @param plan footprint, metres
 * @param pieces of planes, in plan, each with the line of its eave
 */
record PlannedRoof(Geometry plan, List<Piece> pieces) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Cuts between equal heights would else leave spikes of no width. */
    private static final PrecisionModel MICROMETRES = new PrecisionModel(1e6);

    /** A part of a plane in plan. */
    record Piece(Eave eave, Polygon plan) {}

    /** Distance from an eave into the building: {@code a x + b y + c}, metres. */
    record Eave(double a, double b, double c) {
        static Eave between(Coordinate from, Coordinate to) {
            double length = from.distance(to);
            double a = -(to.y - from.y) / length;
            double b = (to.x - from.x) / length;
            return new Eave(a, b, -a * from.x - b * from.y);
        }

        double at(Coordinate p) {
            return a * p.x + b * p.y + c;
        }

        /** Positive where this eave is farther than another. */
        Eave less(Eave other) {
            return new Eave(a - other.a, b - other.b, c - other.c);
        }
    }

    /** Over a convex plan, corners counter-clockwise. */
    static PlannedRoof convex(List<Coordinate> corners) {
        List<Piece> pieces = new ArrayList<>();
        for (Eave eave : eaves(corners)) {
            List<Coordinate> region = corners;
            for (Eave other : eaves(corners)) {
                region = other.equals(eave) ? region : clipped(region, other.less(eave));
            }
            pieces.add(new Piece(eave, polygon(region)));
        }
        return new PlannedRoof(polygon(corners), pieces);
    }

    /** Over the union of rectangles, each as large as the plan lets it be: {@code x0, y0, x1, y1}. */
    static PlannedRoof ofRectangles(List<double[]> rectangles) {
        List<List<Coordinate>> corners = rectangles.stream()
                .map(r -> List.of(
                        new Coordinate(r[0], r[1]),
                        new Coordinate(r[2], r[1]),
                        new Coordinate(r[2], r[3]),
                        new Coordinate(r[0], r[3])))
                .toList();
        Geometry plan = FACTORY.createPolygon();
        List<Piece> pieces = new ArrayList<>();
        for (List<Coordinate> rectangle : corners) {
            for (Piece face : convex(rectangle).pieces()) {
                Geometry visible = face.plan();
                for (List<Coordinate> other : corners) {
                    // Where two roofs share a plane, the earlier one has it.
                    boolean later = corners.indexOf(other) > corners.indexOf(rectangle);
                    if (other != rectangle && !(later && eaves(other).contains(face.eave()))) {
                        visible = OverlayNG.overlay(
                                visible, higher(other, face.eave()), OverlayNG.DIFFERENCE, MICROMETRES);
                    }
                }
                for (int i = 0; i < visible.getNumGeometries(); i++) {
                    // Two roofs of one width leave a sliver of rounding between them.
                    if (visible.getGeometryN(i) instanceof Polygon part && part.getArea() > 1e-6) {
                        pieces.add(new Piece(face.eave(), part));
                    }
                }
            }
            plan = OverlayNG.overlay(plan, polygon(rectangle), OverlayNG.UNION, MICROMETRES);
        }
        return new PlannedRoof(plan, pieces);
    }

    /** Slabs of one thickness with these pieces as upper faces. */
    List<ReadElement> slabs(double pitch, double thickness) {
        List<ReadElement> slabs = new ArrayList<>();
        for (Piece piece : pieces) {
            Coordinate[] ring = piece.plan().norm().getCoordinates();
            Vector3D[] top = new Vector3D[ring.length - 1];
            for (int i = 0; i < top.length; i++) {
                // A normalised ring runs clockwise.
                Coordinate p = ring[top.length - i];
                top[i] = Vector3D.of(p.x, p.y, piece.eave().at(p) * Math.tan(pitch));
            }
            slabs.add(RoofFixtures.slab("piece " + slabs.size(), thickness, top));
        }
        return slabs;
    }

    /** Where a rectangle's hip roof is higher than a plane. */
    private static Polygon higher(List<Coordinate> rectangle, Eave than) {
        List<Coordinate> region = rectangle;
        for (Eave eave : eaves(rectangle)) {
            region = clipped(region, eave.less(than));
        }
        return polygon(region);
    }

    private static List<Eave> eaves(List<Coordinate> corners) {
        List<Eave> eaves = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            eaves.add(Eave.between(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return eaves;
    }

    /** The part of a convex polygon where a linear function is not negative. */
    private static List<Coordinate> clipped(List<Coordinate> corners, Eave function) {
        List<Coordinate> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Coordinate a = corners.get(i);
            Coordinate b = corners.get((i + 1) % corners.size());
            double atA = function.at(a);
            double atB = function.at(b);
            if (atA >= 0) {
                kept.add(a);
            }
            if (atA * atB < 0) {
                double share = atA / (atA - atB);
                kept.add(new Coordinate(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)));
            }
        }
        // A corner that lies on the line of the cut comes twice but for rounding.
        List<Coordinate> apart = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).distance(kept.get((i + 1) % kept.size())) > 1e-9) {
                apart.add(kept.get(i));
            }
        }
        return apart;
    }

    private static Polygon polygon(List<Coordinate> corners) {
        if (corners.size() < 3) {
            return FACTORY.createPolygon();
        }
        List<Coordinate> ring = new ArrayList<>(corners);
        ring.add(corners.get(0));
        LinearRing shell = FACTORY.createLinearRing(ring.toArray(Coordinate[]::new));
        return FACTORY.createPolygon(shell);
    }
}
