package runtrue.wind.eurocode;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.WindZone;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Partition;
import runtrue.wind.plan.PlanEdge;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.plan.Regions;
import runtrue.wind.plan.SlopeEdges;

/**
 * Zones of EN 1991-1-4:2005 7.2.3 to 7.2.6 for one wind. Strips are drawn along the real edges that face the wind (within
 * 45 degrees), and on a rectangle this is the standard's figure. On other plans b and d are those of the rectangle
 * around the plan, corners are outward corners only, and where zones lie over each other the worse has the place.
 */
final class EurocodeZones {
    /** Below this pitch a plane counts as flat, 7.2.3. */
    private static final double FLAT = Math.toRadians(5) - 1e-9;

    /** Cosine of 45 degrees, with room for rounding: each wind stands for a quarter of all directions. */
    private static final double FACES = Math.sqrt(0.5) - 1e-6;

    /** Ridges lie across the wind within 30 degrees; steeper turned lines are hips or valleys. */
    private static final double RIDGE = Math.cos(Math.toRadians(30));

    private final WindRoof roof;
    private final PlanOutline outline;
    private final SlopeEdges edges;
    private final WindDirection direction;
    private final WindDirection.Vector wind;
    private final double e;

    EurocodeZones(WindRoof roof, PlanOutline outline, WindDirection direction, double height) {
        this.roof = roof;
        this.outline = outline;
        this.edges = new SlopeEdges(outline);
        this.direction = direction;
        this.wind = direction.vector(roof, outline);
        this.e = Math.min(across(), 2 * height);
    }

    /** Where the wind comes from, degrees from 0 to below 360, clockwise from the y axis of the plan. */
    double bearing() {
        double degrees = Math.toDegrees(Math.atan2(-wind.x(), -wind.y()));
        return (Math.round(degrees) % 360 + 360) % 360;
    }

    /** b, metres. */
    double across() {
        return outline.width(-wind.y(), wind.x());
    }

    /** d, metres. */
    double along() {
        return outline.width(wind.x(), wind.y());
    }

    /** e = min(b, 2h), metres. */
    double reach() {
        return e;
    }

    boolean rectangular() {
        return outline.rectangular(wind.x(), wind.y());
    }

    static boolean level(WindSlope slope) {
        return slope.pitch() < FLAT;
    }

    /** How a plane lies to the wind; a trough counts by place, its upwind plane falls with the wind. */
    SlopeRole role(WindSlope slope) {
        if (roof.form() == RoofForm.FLAT || level(slope)) {
            return SlopeRole.FLAT;
        }
        double facing = -(slope.fallX() * wind.x() + slope.fallY() * wind.y());
        double upwind = roof.form() == RoofForm.TROUGHED ? -facing : facing;
        return upwind > FACES ? SlopeRole.WINDWARD : upwind < -FACES ? SlopeRole.LEEWARD : SlopeRole.SIDE;
    }

    /** Windward plane that governs the hipped table; empty where none faces the wind. */
    List<WindSlope> windward() {
        return roof.slopes().stream().filter(s -> role(s) == SlopeRole.WINDWARD).toList();
    }

    List<WindZone> zones() {
        return roof.slopes().stream().flatMap(s -> zones(s).stream()).toList();
    }

    private List<WindZone> zones(WindSlope slope) {
        SlopeRole role = role(slope);
        boolean mono = roof.form() == RoofForm.MONO_PITCH;
        boolean hipped = roof.form() == RoofForm.HIPPED;
        Partition partition = new Partition();
        return switch (role) {
            case FLAT -> rest(edgeZones(partition, slope).then("H", half(slope)), slope, "I");
            case WINDWARD -> rest(edgeZones(partition, slope), slope, "H");
            case LEEWARD ->
                mono
                        ? rest(edgeZones(partition, slope), slope, "H")
                        : rest(behindRidge(partition, slope, hipped), slope, "I");
            case SIDE ->
                mono
                        ? rest(verge(partition, slope).then("H", half(slope)), slope, "I")
                        : hipped
                                ? rest(besideHip(partition, slope).then("M", half(slope)), slope, "N")
                                : rest(edgeZones(partition, slope).then("H", half(slope)), slope, "I");
        };
    }

    private List<WindZone> rest(Partition partition, WindSlope slope, String name) {
        return partition.zones(slope, direction.label(), name);
    }

    /** F at outward corners of the edges that face the wind, G along the rest of them. */
    private Partition edgeZones(Partition partition, WindSlope slope) {
        for (PlanEdge edge : facing(slope)) {
            if (edge.cornerFrom()) {
                partition.then("F", edge.stripAtStart(e / 10, e / 4));
            }
            if (edge.cornerTo()) {
                partition.then("F", edge.stripAtEnd(e / 10, e / 4));
            }
        }
        for (PlanEdge edge : facing(slope)) {
            partition.then("G", edge.strip(e / 10));
        }
        return partition;
    }

    /** Wind along the eaves of a mono-pitch roof: the corner at the high end is another than that at the low end. */
    private Partition verge(Partition partition, WindSlope slope) {
        List<Geometry> high = new ArrayList<>();
        List<Geometry> low = new ArrayList<>();
        for (PlanEdge edge : facing(slope)) {
            double falls =
                    (edge.to().x - edge.from().x) * slope.fallX() + (edge.to().y - edge.from().y) * slope.fallY();
            if (edge.cornerFrom()) {
                (falls > 0 ? high : low).add(edge.stripAtStart(e / 10, e / 4));
            }
            if (edge.cornerTo()) {
                (falls > 0 ? low : high).add(edge.stripAtEnd(e / 10, e / 4));
            }
        }
        partition.then("Fup", Regions.union(high)).then("Flow", Regions.union(low));
        for (PlanEdge edge : facing(slope)) {
            partition.then("G", edge.strip(e / 10));
        }
        return partition;
    }

    /** J downwind of the ridge; on hipped roofs K downwind of the hips. */
    private Partition behindRidge(Partition partition, WindSlope slope, boolean hipped) {
        List<PlanEdge> inner = edges.inner(slope);
        for (PlanEdge edge : inner) {
            if (facing(edge) > RIDGE) {
                partition.then("J", edge.strip(e / 10));
            }
        }
        for (PlanEdge edge : hipped ? inner : List.<PlanEdge>of()) {
            if (facing(edge) > 0.1) {
                partition.then("K", edge.strip(e / 10));
            }
        }
        return partition;
    }

    /** L on the side planes of a hipped roof along the hips that face the wind. */
    private Partition besideHip(Partition partition, WindSlope slope) {
        for (PlanEdge edge : edges.inner(slope)) {
            if (facing(edge) > 0.1) {
                partition.then("L", edge.strip(e / 10));
            }
        }
        return partition;
    }

    /** Everything up to e/2 downwind of where the roof begins, and behind each edge that faces the wind. */
    private Geometry half(WindSlope slope) {
        double begin = outline.extent(wind.x(), wind.y())[0];
        List<Geometry> near = new ArrayList<>();
        near.add(outline.band(wind.x(), wind.y(), begin - 1, begin + e / 2));
        facing(slope).forEach(edge -> near.add(edge.strip(e / 2)));
        return Regions.union(near);
    }

    private List<PlanEdge> facing(WindSlope slope) {
        return edges.outer(slope).stream().filter(edge -> facing(edge) > FACES).toList();
    }

    private double facing(PlanEdge edge) {
        return edge.facing(wind.x(), wind.y());
    }
}
