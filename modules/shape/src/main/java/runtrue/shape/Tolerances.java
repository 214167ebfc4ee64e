package runtrue.shape;

/**
 * Every geometric tolerance of the program, in one place; printed with each result. Metres and radians.
 *
 * @param point below this, two points are one: exporters write millimetres with up to three decimals
 * @param plane faces no farther than this from a common plane are one plane: slab joints and rounding of placements
 * @param angle planes whose normals differ less than this are parallel: 0.2 degrees, a tenth of the least pitch sheeted
 * @param joint gaps in a plane up to this are bridged: movement joints between panels
 * @param edge two planes meet in an edge when both come this near to their line of intersection
 * @param chord greatest distance between a curve and its facets: as much as the plane tolerance, so that facets say no
 *     less than the planes they become; an arc of 10 m has facets 0.4 m wide
 * @param round greatest share of a circle's area that its chords may leave out, so that rods and pipes keep their volume:
 *     1 %, which is 28 sides of a whole circle, and governs below a radius of 0.3 m; above, the chord tolerance asks for
 *     more sides
 * @param sliver areas under this (square metres) are no roof
 */
public record Tolerances(
        double point,
        double plane,
        double angle,
        double joint,
        double edge,
        double chord,
        double round,
        double sliver) {
    public static Tolerances standard() {
        return new Tolerances(1e-5, 2e-3, Math.toRadians(0.2), 0.06, 0.30, 2e-3, 0.01, 0.05);
    }
}
