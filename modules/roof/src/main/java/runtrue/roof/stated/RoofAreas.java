package runtrue.roof.stated;

/**
 * Areas of a roof element or of a whole roof, square metres.
 *
 * @param net true area of the upper skin, openings taken off
 * @param gross true area, openings not taken off
 * @param netPlan in plan, openings taken off
 * @param grossPlan in plan, openings not taken off
 * @param underside true area of all downward faces; 0 when not known
 * @param allFaces of the whole body; 0 when not known
 * @param shadow in plan, of the whole body with its cut edges; 0 when not known
 */
record RoofAreas(
        double net, double gross, double netPlan, double grossPlan, double underside, double allFaces, double shadow) {
    static final RoofAreas NONE = new RoofAreas(0, 0, 0, 0, 0, 0, 0);

    /** Of a surface seen from above, without a body to it. */
    static RoofAreas ofSurface(double net, double gross, double netPlan, double grossPlan) {
        return new RoofAreas(net, gross, netPlan, grossPlan, 0, 0, 0);
    }

    RoofAreas plus(RoofAreas other) {
        return new RoofAreas(
                net + other.net,
                gross + other.gross,
                netPlan + other.netPlan,
                grossPlan + other.grossPlan,
                underside + other.underside,
                allFaces + other.allFaces,
                shadow + other.shadow);
    }
}
