package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;
import runtrue.rules.cel.Facts;

/** Areas that drain through the sheets of one plane: their own, walls that it ends against, and roofs above it. */
public final class Drainage {
    /** The Code of Practice of the New Zealand metal roofing industry takes no more of a wall into account. */
    private static final double HIGHEST_WALL = 10;

    /** A sheet's end or side this near to an edge is at it. */
    private static final double AT_EDGE = 0.05;

    private final PlaneLayout layout;
    private final List<Wall> walls;
    private final List<Feeder> feeders;

    /** A wall in the plane's u, v; along it when it stands beside a sheet. */
    private record Wall(boolean beside, Interval u, Interval v, OptionalDouble height) {}

    /**
     * A roof that ends above the plane, over a stretch of its width.
     *
     * @param v where its water lands
     */
    record Feeder(PlaneLayout upper, Interval u, double v, Slope slope) {
        /** What lies below a penetration gets none of it: that runs off on either side. */
        boolean feeds(Sheet sheet) {
            return overlap(u, sheet.u()) > 0 && sheet.v().to() > v - AT_EDGE;
        }
    }

    private Drainage(PlaneLayout layout, List<Wall> walls, List<Feeder> feeders) {
        this.layout = layout;
        this.walls = walls;
        this.feeders = feeders;
    }

    /**
     * Of one plane.
     *
     * @param feeders of all planes
     */
    public static Drainage of(PlaneLayout layout, Roof roof, Feeders feeders) {
        List<Wall> walls = roof.edges().stream()
                .filter(e -> e.kind() == EdgeKind.ABUTMENT
                        && e.planes().contains(layout.plane().id()))
                .map(e -> wall(e, layout.plane(), roof))
                .toList();
        return new Drainage(layout, walls, feeders.of(layout.plane().id()));
    }

    /** Roofs above whose water may run on to the plane. */
    List<PlaneLayout> above() {
        return feeders.stream().map(Feeder::upper).distinct().toList();
    }

    private static Wall wall(RoofEdge edge, RoofPlane plane, Roof roof) {
        Interval u = between(plane.u(edge.from()), plane.u(edge.to()));
        Interval v = between(plane.v(edge.from()), plane.v(edge.to()));
        Double height = roof.above().walls().get(edge.id());
        return new Wall(
                v.length() > u.length(),
                u,
                v,
                height == null ? OptionalDouble.empty() : OptionalDouble.of(Math.min(height, HIGHEST_WALL)));
    }

    static Interval between(double a, double b) {
        return new Interval(Math.min(a, b), Math.max(a, b));
    }

    /** What rains on a sheet and what else drains on to it. */
    void add(Sheet sheet, Facts facts) {
        double middle = (sheet.u().from() + sheet.u().to()) / 2;
        Interval line = new Interval(sheet.v().from(), sheet.v().from() + sheet.length());
        Slope own = Slope.of(layout.plane(), middle, line);
        double width = sheet.u().length();
        facts.know("sheet.catchment", own.plan() * width, "longest line in plan x width")
                .know("sheet.catchment_rise", own.rise() * width, "rise of that line x width");
        walls(sheet, own.plan() / sheet.length(), facts);
        roofs(sheet, facts);
    }

    private void walls(Sheet sheet, double inPlan, Facts facts) {
        double area = 0;
        for (Wall wall : walls) {
            double shared = wall.beside() ? beside(wall, sheet) * inPlan : above(wall, sheet);
            if (shared > 0 && wall.height().isEmpty()) {
                facts.miss(
                        "sheet.wall_above",
                        "is not known: how high the wall is that the plane ends against was not read");
                return;
            }
            area += shared * wall.height().orElse(0);
        }
        facts.know("sheet.wall_above", area, "length along the sheet x height of the wall");
    }

    /** Length along the fall that a wall stands beside a sheet. */
    private static double beside(Wall wall, Sheet sheet) {
        double u = (wall.u().from() + wall.u().to()) / 2;
        boolean at = u > sheet.u().from() - AT_EDGE && u < sheet.u().to() + AT_EDGE;
        boolean nearer =
                Math.min(Math.abs(u - sheet.u().from()), Math.abs(u - sheet.u().to())) < AT_EDGE;
        return at && nearer ? overlap(wall.v(), sheet.v()) : 0;
    }

    /** Width that a wall stands across a sheet's upper end. */
    private static double above(Wall wall, Sheet sheet) {
        boolean at = sheet.v().to() > wall.v().from() - AT_EDGE
                && sheet.v().to() < wall.v().to() + AT_EDGE;
        return at ? overlap(wall.u(), sheet.u()) : 0;
    }

    static double overlap(Interval a, Interval b) {
        return Math.max(0, Math.min(a.to(), b.to()) - Math.max(a.from(), b.from()));
    }

    private void roofs(Sheet sheet, Facts facts) {
        List<Feeder> over = feeders.stream().filter(f -> f.feeds(sheet)).toList();
        Optional<Facts.Fact> stated = facts.find("settings.upper_roofs");
        boolean spill = stated.orElse(null) instanceof Facts.Known known
                && known.value().equals("spill");
        boolean gutters = stated.orElse(null) instanceof Facts.Known known
                && known.value().equals("gutters");
        if (!over.isEmpty() && !spill && !gutters) {
            String reason = "is not known: " + over.get(0).upper().plane().name()
                    + " ends above it; state upper_roofs in runtrue.yaml: gutters, or spill where its water runs down on to"
                    + " this plane";
            facts.miss("sheet.roof_above", reason).miss("sheet.roof_above_rise", reason);
            return;
        }
        double plan = 0;
        double rise = 0;
        for (Feeder feeder : spill ? over : new ArrayList<Feeder>()) {
            double width = overlap(feeder.u(), sheet.u());
            plan += feeder.slope().plan() * width;
            rise += feeder.slope().rise() * width;
        }
        String how = over.isEmpty() ? "no roof ends above it" : spill ? "longest run of that roof x width" : "gutters";
        facts.know("sheet.roof_above", plan, how).know("sheet.roof_above_rise", rise, how);
    }

    /** A level vector of unit length; zero for an upright one. */
    static Vector3D level(Vector3D way) {
        Vector3D flat = Vector3D.of(way.getX(), way.getY(), 0);
        return flat.norm() > 0 ? flat.normalize() : Vector3D.ZERO;
    }
}
