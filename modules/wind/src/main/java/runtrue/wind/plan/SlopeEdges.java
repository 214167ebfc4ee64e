package runtrue.wind.plan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;

/** Which edges of planes are edges of the roof, and which are ridges, hips and valleys within it. */
public final class SlopeEdges {
    /** A plane may end this far from the outline and still reach it: gaps and rounding of models, metres. */
    private static final double REACH = 0.1;

    /** Shorter contact is that of a corner alone, metres. */
    private static final double CONTACT = 0.25;

    private final PlanOutline outline;

    public SlopeEdges(PlanOutline outline) {
        this.outline = outline;
    }

    /** Edges of the outline that bound the plane. */
    public List<PlanEdge> outer(WindSlope slope) {
        Geometry near = slope.plan().buffer(REACH, 2);
        return outline.edges().stream()
                .filter(e -> near.intersection(e.line()).getLength() > CONTACT)
                .toList();
    }

    /** Edges of the plane that lie within the roof. */
    public List<PlanEdge> inner(WindSlope slope) {
        LineString ring = outline.polygon().getExteriorRing();
        List<PlanEdge> inner = new ArrayList<>();
        for (PlanOutline part : PlanOutline.each(slope.plan())) {
            for (PlanEdge edge : part.edges()) {
                double middle = Regions.FACTORY
                        .createPoint(edge.line().getCentroid().getCoordinate())
                        .distance(ring);
                if (edge.length() > CONTACT && middle > REACH) {
                    inner.add(edge);
                }
            }
        }
        return inner;
    }

    /** Inner edges that the plane falls away from, where it meets another that does so too: ridges and hips. */
    public List<PlanEdge> highEdges(WindRoof roof, WindSlope slope) {
        return inner(slope).stream()
                .filter(e -> e.facing(slope.fallX(), slope.fallY()) > 0.1)
                .filter(e -> roof.slopes().stream()
                        .filter(other -> !other.id().equals(slope.id()))
                        .filter(other -> other.plan().distance(e.line().getCentroid()) < REACH)
                        .anyMatch(other -> -e.facing(other.fallX(), other.fallY()) > 0.1))
                .toList();
    }
}
