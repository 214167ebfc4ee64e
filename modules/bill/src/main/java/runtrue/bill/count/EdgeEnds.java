package runtrue.bill.count;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import runtrue.roof.RoofEdge;

/** How one flashing's edges meet: at a free end it stops, at a corner it goes on at an angle. */
final class EdgeEnds {
    /** Ends as near as this are one place to a flashing; the layout joins edges within less. */
    private static final double SAME_PLACE = 0.02;

    /** Cosine of one degree: edges in line go on without a corner. */
    private static final double IN_LINE = Math.cos(Math.toRadians(1));

    /** Edges by the places of their ends in plan: a drop of hundreds of roofs has thousands of edges. */
    private final STRtree places = new STRtree();

    /** @param edges that the flashing runs along */
    EdgeEnds(List<RoofEdge> edges) {
        for (RoofEdge edge : edges) {
            places.insert(around(edge.from()), edge);
            places.insert(around(edge.to()), edge);
        }
        places.build();
    }

    private static Envelope around(Vector3D end) {
        return new Envelope(new Coordinate(end.getX(), end.getY()));
    }

    /** Ends of this edge where none of the others goes on. */
    int free(RoofEdge edge) {
        return (others(edge, edge.from()).isEmpty() ? 1 : 0)
                + (others(edge, edge.to()).isEmpty() ? 1 : 0);
    }

    /** Corners at the ends of this edge; each is counted at the first of the edges that meet there. */
    int corners(RoofEdge edge) {
        return (corner(edge, edge.from(), edge.to()) ? 1 : 0) + (corner(edge, edge.to(), edge.from()) ? 1 : 0);
    }

    private boolean corner(RoofEdge edge, Vector3D end, Vector3D far) {
        List<RoofEdge> others = others(edge, end);
        if (others.isEmpty() || near(end, far) || others.stream().anyMatch(o -> o.id().compareTo(edge.id()) < 0)) {
            return false;
        }
        Vector3D.Unit away = far.subtract(end).normalize();
        return others.stream().anyMatch(o -> {
            Vector3D next =
                    near(o.from(), end) ? o.to().subtract(end) : o.from().subtract(end);
            return next.norm() > SAME_PLACE && -away.dot(next.normalize()) < IN_LINE;
        });
    }

    private List<RoofEdge> others(RoofEdge edge, Vector3D end) {
        Envelope reach = around(end);
        reach.expandBy(SAME_PLACE);
        List<RoofEdge> others = new ArrayList<>();
        places.query(reach, found -> {
            RoofEdge o = (RoofEdge) found;
            if (!o.id().equals(edge.id()) && (near(o.from(), end) || near(o.to(), end))) {
                others.add(o);
            }
        });
        return others;
    }

    private static boolean near(Vector3D a, Vector3D b) {
        return a.distance(b) < SAME_PLACE;
    }
}
